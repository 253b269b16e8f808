#pragma once
#include <optional>

#include "core/record/job.h"
#include "tests/rules_walk/dice.h"

namespace cw::test {

/// The entry with one thing of its text altered; nothing where that can no longer be read.
std::optional<Entry> forgedEntry(const Entry& entry, Dice& dice);

/// The same entry as a line would state it: of a correction only what a line may state.
Entry asIfStated(const Job& job, Entry entry);

}  // namespace cw::test

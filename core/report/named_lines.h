#pragma once
#include <span>
#include <vector>

#include "core/report/content.h"

namespace cw {

/// Everybody a job's entries name, in the order they first appear, and what they did in it.
std::vector<PersonLine> peopleOf(const Job& job, std::span<const Person> people, const Wording& wording);

/// Every tool that was set, once for each state it was in when used.
std::vector<ToolLine> toolsOf(const Job& job, std::span<const Person> people, const Wording& wording);

/// The sheet's parts and consumables, and what the entries say of them.
std::vector<PartLine> partsOf(const Job& job, std::span<const Person> people, const Wording& wording);

}  // namespace cw

#pragma once
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/message.h"
#include "core/record/job.h"
#include "core/shop/person.h"

namespace cw {

/// What an entry states, in whole sentences, without who and when: "Position 3 clicked at 65 in·lbf."
/// The same words on screen, on the command line and on paper. `job` is the job it belongs to, or is
/// about to be appended to; a correction repeats what the corrected entry should have said. Whoever's word the
/// entry rests on is named with the way they gave it.
std::vector<Message> describe(const Entry& entry, const Job& job, std::span<const Person> people);

/// Printed name of that sign; the sign itself if nobody has it.
std::string nameOf(std::string_view sign, std::span<const Person> people);

/// Who did it, one or more, each once.
std::string doersOf(const Entry& entry, std::span<const Person> people);

/// "Step 5"'s number: its place on the sheet, from 1; 0 if the sheet has no such step.
int stepNumber(const Job& job, std::string_view step);

/// Local time with its offset: "2026-03-04 08:00:05 +01:00".
std::string timeText(const Moment& moment);

}  // namespace cw

#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/job.h"
#include "core/record/rules.h"

namespace cw {

/// What somebody says of the work, before the job has put it in its place: an entry without sequence,
/// hash and time, and with all that the job knows left out.
struct Draft {
  Id id;
  std::string enteredBy;
  std::vector<Doer> by;  ///< empty: who entered it, with the tool in hand
  std::string supervisor;
  std::optional<Moment> done;
  Body body;
};

/// Fills in what the job knows: the step whose turn it is, pass and round, target and setting in force,
/// whether a reading is within tolerance and two entries agree, the tool in hand and its page of the crib.
/// What was stated stays, so that a wrong statement is refused by the rules and not mended.
Entry compose(const Job& job, const Draft& draft, const ShopFloor& floor, const Moment& now);

/// One line of a `job enter` file.
struct DraftLine {
  Draft draft;
  std::optional<std::string> pin;  ///< with kind "signed-in" and "resumed"
};

/// Reads one line: a JSON object with `kind`, `by` (a sign, or a list of {person, tool}), optionally
/// `entered_by`, `supervisor`, `done`, `id`, `pin`, and the body's own fields beside them. A torque may be
/// written as text ("65 lbf.in"). Without an id the line gets one made from job, line number and text, so
/// that the same file entered twice doubles nothing. InvalidInput with "line N" as place.
Result<DraftLine> readDraftLine(std::string_view line, int number, const Id& job);

}  // namespace cw

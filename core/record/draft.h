#pragma once
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "core/record/fold.h"
#include "core/record/judge.h"
#include "core/record/shop_floor.h"

namespace cw {

/// What somebody says of the work, before the job has put it in its place: an entry without sequence,
/// hash and time, and with all that the job knows left out.
struct Draft {
  Id id;
  std::string enteredBy;
  std::vector<Doer> by;  ///< empty: who entered it, with the tool in hand
  std::string supervisor;
  std::optional<Moment> done;
  bool byPhone = false;  ///< whoever's word the body names gave it by phone
  Body body;
};

/// Signs of those who stand behind a draft themselves.
struct Present {
  std::set<std::string> withPin;   ///< gave the PIN for this entry
  std::set<std::string> signedIn;  ///< have signed in and are at work
};

/// Puts a draft in its place: whose step it is where it names none, the tool in hand, and the shop's pages of
/// its people and its tool as they stand now. What was stated stays, so that a wrong statement is refused by
/// the rules and not mended. NotFound or NotPermitted for a person whom the shop does not know or who left.
Result<Entry> compose(const Job& job, const Draft& draft, const ShopFloor& floor, const Present& present,
                      const Moment& now);

/// Why a wrench in use must not be used on: the program's own entry, if the crib says so of one that is in
/// hand in this job. Asked before anything else is entered.
std::optional<ToolStopped> stoppedTool(const Job& job, const ShopFloor& floor);

/// PINs that were given for one entry, by sign.
using Pins = std::map<std::string, std::string>;

/// One line of a `job enter` file.
struct DraftLine {
  Draft draft;
  Pins pins;
};

/// Reads one line: a JSON object with `kind`, `by` (a sign, or a list of {person, tool}), optionally
/// `entered_by`, `supervisor`, `done`, `id`, `by_phone`, `pin` (of who enters it), `supervisor_pin`,
/// `allowed_pin` (of whose word the body names), and the body's own fields beside them. A torque may be
/// written as text ("65 lbf.in"). Without an id the line gets one made from job, line number and text, so that
/// the same file entered twice doubles nothing. InvalidInput with "line N" as place.
Result<DraftLine> readDraftLine(std::string_view line, int number, const Id& job);

}  // namespace cw

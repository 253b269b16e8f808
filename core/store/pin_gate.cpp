#include "core/store/pin_gate.h"

#include <algorithm>

#include "core/store/connection.h"
#include "core/store/database.h"
#include "core/store/people.h"

namespace cw {

Result<void> PinGate::check(const std::string& sign, std::string_view pin, const Id& job, const Moment& now) {
  CW_TRY(person, m_people.find(sign));
  if (pin.empty())  // nobody guesses with nothing: it is no attempt
    return fail(ErrorCode::WrongPin, "pin", "", {"the PIN of %1 is missing", {person.name}}, "enter name and PIN");
  CW_CHECK(checkLockOut(sign, job, now));
  const bool good = pinMatches(person.pinHash, pin);
  CW_CHECK(log(sign, job, now, good ? "accepted" : "wrong-pin"));
  if (good) return {};
  return fail(ErrorCode::WrongPin, "pin", "", {"this is not the PIN of %1", {person.name}},
              "enter name and PIN again; the attempt was noted");
}

Result<void> PinGate::checkLockOut(const std::string& sign, const Id& job, const Moment& now) {
  struct Attempt {
    std::string outcome, at;
  };
  CW_TRY(last, collect(m_database.connection(),
                       "SELECT outcome, at FROM sign_in WHERE sign = ? AND outcome <> 'locked-out'"
                       " ORDER BY number DESC LIMIT ?",
                       {sign, kWrongPins}, [](const SqlRows& row) {
                         return Attempt{row.text(0), row.text(1)};
                       }));
  const bool allWrong =
      std::all_of(last.begin(), last.end(), [](const Attempt& a) { return a.outcome == "wrong-pin"; });
  if (static_cast<int>(last.size()) < kWrongPins || !allWrong) return {};
  CW_TRY(latest, parseRfc3339(last.front().at));
  // Either way round, so that setting the clock back does not lengthen the wait without end.
  if (std::chrono::abs(now.utc - latest.utc) >= kLockOut) return {};
  CW_CHECK(log(sign, job, now, "locked-out"));
  return fail(ErrorCode::NotPermitted, "pin", sign,
              {"%1 wrong PINs in a row were entered for “%2”", {std::to_string(kWrongPins), sign}},
              {"wait until %1", {rfc3339({latest.utc + kLockOut, now.offset})}});
}

Result<void> PinGate::log(const std::string& sign, const Id& job, const Moment& now,
                          std::string_view outcome) {
  return m_database.connection().run("INSERT INTO sign_in(sign, at, job, outcome) VALUES (?, ?, ?, ?)",
                                     {sign, rfc3339(now), job.text(), outcome});
}

}  // namespace cw

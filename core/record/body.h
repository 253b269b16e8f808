#pragma once
#include <array>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "core/base/json.h"
#include "core/units/stated.h"

namespace cw {

/// Why the job is done.
enum class Reason { NewWork, Warranty, Comeback, RetorqueDue };
/// How a tightening is known. A click says that the setting was reached, never a value.
enum class Known { Clicked, Read, Instrument };
/// What became of a check.
enum class Answer { Yes, No };
/// Why a step has nothing written against it.
enum class Absence { NotApplicable, NotRecorded };
/// How a second person took part. Self is the check after a break in a shop with one active person.
enum class Manner { Watched, Independent, Self };

template <class E>
struct Words;  // file word of each enumerator
template <>
struct Words<Reason> {
  static constexpr std::array<std::pair<Reason, std::string_view>, 4> kAll{
      {{Reason::NewWork, "new-work"},
       {Reason::Warranty, "warranty"},
       {Reason::Comeback, "comeback"},
       {Reason::RetorqueDue, "retorque-due"}}};
};
template <>
struct Words<Known> {
  static constexpr std::array<std::pair<Known, std::string_view>, 3> kAll{
      {{Known::Clicked, "clicked"}, {Known::Read, "read"}, {Known::Instrument, "instrument"}}};
};
template <>
struct Words<Answer> {
  static constexpr std::array<std::pair<Answer, std::string_view>, 2> kAll{
      {{Answer::Yes, "yes"}, {Answer::No, "no"}}};
};
template <>
struct Words<Absence> {
  static constexpr std::array<std::pair<Absence, std::string_view>, 2> kAll{
      {{Absence::NotApplicable, "not-applicable"}, {Absence::NotRecorded, "not-recorded"}}};
};
template <>
struct Words<Manner> {
  static constexpr std::array<std::pair<Manner, std::string_view>, 3> kAll{
      {{Manner::Watched, "watched"}, {Manner::Independent, "independent"}, {Manner::Self, "self"}}};
};

template <class E>
constexpr std::string_view wordOf(E value) {
  for (const auto& [known, word] : Words<E>::kAll)
    if (known == value) return word;
  return {};
}

// The facts a job is made of. Each lists its fields once, for reading, writing and hashing alike;
// the names are those of the file. `step` is a step's id, `pass` counts from 1.

/// The job begins: on which machine, for which work order, by which sheet. Signs its author in.
struct JobStarted {
  static constexpr std::string_view kKind = "started";
  std::string workOrder, machine, model, serial, hours;
  Reason reason = Reason::NewWork;
  std::string parent;       ///< job id of the record it follows from (comeback, retorque)
  std::string sheetDigest;  ///< SHA-256 of the sheet's exact bytes
  bool quick = false;       ///< a quick joint: no issued sheet
  std::string guard;        ///< what the guard said of a quick joint: "in-band", "past-yield" …
  std::string guardAllowedBy, guardReason;  ///< a lead's word, where the guard's verdict blocks
  bool alone = false;                       ///< the shop has one active person: holds become self-checks
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("work_order", self.workOrder), v("machine", self.machine), v("model", self.model),
        v("serial", self.serial);
    v("hours", self.hours), v("reason", self.reason), v("parent", self.parent),
        v("sheet_digest", self.sheetDigest);
    v("quick", self.quick), v("guard", self.guard), v("guard_allowed_by", self.guardAllowedBy),
        v("guard_reason", self.guardReason);
    v("alone", self.alone);
  }
};

/// Name and PIN were given and matched.
struct SignedIn {
  static constexpr std::string_view kKind = "signed-in";
  template <class Self, class V>
  static void fields(Self&, V&) {}
};

/// The warnings and cautions of a step were read.
struct WarningsRead {
  static constexpr std::string_view kKind = "warnings-read";
  std::string step;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step);
  }
};

/// An act was done; for a part that is renewed, that it is new, with its batch and expiry where wanted.
struct ActDone {
  static constexpr std::string_view kKind = "done";
  std::string step;
  bool renewed = false;
  std::string batch, expiry;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("renewed", self.renewed), v("batch", self.batch), v("expiry", self.expiry);
  }
};

/// A check was made. "no" leaves the step open.
struct CheckMade {
  static constexpr std::string_view kKind = "checked";
  std::string step;
  Answer answer = Answer::Yes;
  std::string remark;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("answer", self.answer), v("remark", self.remark);
  }
};

/// A value was measured, in the unit the step asks for. Outside the limits it leaves the step open.
struct Measured {
  static constexpr std::string_view kKind = "measured";
  std::string step, value, unit, gauge;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("value", self.value), v("unit", self.unit), v("gauge", self.gauge);
  }
};

/// A compound was applied.
struct Applied {
  static constexpr std::string_view kKind = "applied";
  std::string step, batch, expiry;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("batch", self.batch), v("expiry", self.expiry);
  }
};

/// So many fasteners were run to the face by finger; `stuck` names the positions that would not.
struct HandStarted {
  static constexpr std::string_view kKind = "hand-started";
  std::string step;
  int count = 0;
  std::vector<std::string> stuck;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("count", self.count), v("stuck", self.stuck);
  }
};

/// Threads and bearing faces are in the condition that the specification's value assumes.
struct ConditionConfirmed {
  static constexpr std::string_view kKind = "condition-confirmed";
  std::string step, condition;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("condition", self.condition);
  }
};

/// The wrench is in hand and set. `asUsed` is the crib's page of it at that moment, calibrations included,
/// so that the record needs no crib. A lead may allow a tool that is refused, with a reason.
struct ToolSet {
  static constexpr std::string_view kKind = "tool-set";
  std::string step;
  int pass = 0;
  std::string tool;
  StatedTorque setting;
  Json asUsed;
  std::string allowedBy, reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("pass", self.pass), v("tool", self.tool), v("setting", self.setting);
    v("as_used", self.asUsed), v("allowed_by", self.allowedBy), v("reason", self.reason);
  }
};

/// An early pass was done on so many fasteners.
struct PassCounted {
  static constexpr std::string_view kKind = "counted";
  std::string step;
  int pass = 0, count = 0;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("pass", self.pass), v("count", self.count);
  }
};

/// One position of the final pass. `target` is the specification's aim as stated there; `setting` what
/// stood on the tool; `reading` what an indicating tool showed, if it did. `within`: inside the tolerance.
struct Tightened {
  static constexpr std::string_view kKind = "tightened";
  std::string step;
  int pass = 0;
  std::string position;
  StatedTorque target, setting;
  Known known = Known::Clicked;
  std::optional<StatedTorque> reading;
  bool within = true;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("pass", self.pass), v("position", self.position), v("target", self.target);
    v("setting", self.setting), v("known", self.known), v("reading", self.reading), v("within", self.within);
  }
};

/// One round of the check pass, and the positions that still moved.
struct CheckPassMade {
  static constexpr std::string_view kKind = "check-pass";
  std::string step;
  int round = 0;
  std::vector<std::string> moved;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("round", self.round), v("moved", self.moved);
  }
};

/// The gap between the faces at each place the sheet asks for, going round, after a pass. Where they differ
/// by more than it allows, the faces are to be brought even and the gaps read again; a lead may let the work
/// go on as it is, with a reason.
struct GapsRead {
  static constexpr std::string_view kKind = "gaps-read";
  std::string step;
  int pass = 0;
  std::vector<StatedLength> gaps;
  bool within = true;  ///< they differ by no more than the sheet allows
  std::string allowedBy, reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("pass", self.pass), v("gaps", self.gaps), v("within", self.within);
    v("allowed_by", self.allowedBy), v("reason", self.reason);
  }
};

/// A second person looked: what they saw, entered without seeing the first entry.
struct Witnessed {
  static constexpr std::string_view kKind = "witnessed";
  std::string step;
  Manner manner = Manner::Watched;
  std::vector<std::string> what;
  std::string tool;
  std::optional<StatedTorque> setting;
  std::optional<int> count;
  bool agrees = true;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("manner", self.manner), v("what", self.what), v("tool", self.tool);
    v("setting", self.setting), v("count", self.count), v("agrees", self.agrees);
  }
};

/// A step is left open for now.
struct SetAside {
  static constexpr std::string_view kKind = "set-aside";
  std::string step, reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("reason", self.reason);
  }
};

/// A step closes with nothing written against it, and why.
struct LeftBlank {
  static constexpr std::string_view kKind = "left-blank";
  std::string step;
  Absence absence = Absence::NotApplicable;
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("absence", self.absence), v("reason", self.reason);
  }
};

/// Done otherwise than the sheet says. With `aim` it replaces the torque of a tighten step, for this job
/// only; without, it closes the step.
struct Deviated {
  static constexpr std::string_view kKind = "deviated";
  std::string step, what, reason, allowedBy;
  std::optional<StatedTorque> low, aim, high;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("what", self.what), v("reason", self.reason), v("allowed_by", self.allowedBy);
    v("low", self.low), v("aim", self.aim), v("high", self.high);
  }
};

/// Entry `of` was wrong: `now` is its body as it should have been.
struct Corrected {
  static constexpr std::string_view kKind = "corrected";
  int of = 0;
  Json now;
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("of", self.of), v("now", self.now), v("reason", self.reason);
  }
};

/// Work stops. Parked: for days or weeks; `waitsFor` and the machine's state go on the do-not-run tag.
struct Paused {
  static constexpr std::string_view kKind = "paused";
  std::string reason;
  bool parked = false;
  std::string waitsFor, machineState;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("reason", self.reason), v("parked", self.parked), v("waits_for", self.waitsFor);
    v("machine_state", self.machineState);
  }
};

/// Work goes on, after a full sign-in; the pass that was interrupted may be repeated from its start.
struct Resumed {
  static constexpr std::string_view kKind = "resumed";
  bool repeatPass = false;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("repeat_pass", self.repeatPass);
  }
};

/// Go back: everything from a step on is to be done again; what was entered there is overtaken.
struct TakenApart {
  static constexpr std::string_view kKind = "taken-apart";
  std::string step, reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("reason", self.reason);
  }
};

/// A lead had a position repaired or fitted otherwise: insert, other fastener.
struct Repaired {
  static constexpr std::string_view kKind = "repaired";
  std::string joint, position, what, reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("joint", self.joint), v("position", self.position), v("what", self.what), v("reason", self.reason);
  }
};

/// The clock of this computer ran backwards since the last entry, which said `before`.
struct ClockWentBack {
  static constexpr std::string_view kKind = "clock-went-back";
  std::string before;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("before", self.before);
  }
};

/// The job is complete, said by the person who answers for it.
struct Finished {
  static constexpr std::string_view kKind = "finished";
  std::string remark;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("remark", self.remark);
  }
};

using Body = std::variant<JobStarted, SignedIn, WarningsRead, ActDone, CheckMade, Measured, Applied,
                          HandStarted, ConditionConfirmed, ToolSet, PassCounted, GapsRead, Tightened,
                          CheckPassMade, Witnessed, SetAside, LeftBlank, Deviated, Corrected, Paused, Resumed,
                          TakenApart, Repaired, ClockWentBack, Finished>;

/// File word of a body's kind: "tightened".
std::string_view kindOf(const Body& body);

/// Every kind's word.
std::vector<std::string_view> bodyKinds();

/// The fields of a body; absent optional values and empty texts are left out, so that the canonical form
/// does not grow with fields that say nothing.
Json bodyToJson(const Body& body);

/// Reads a body of that kind. InvalidInput naming the field for an unknown kind, field, word or unit.
Result<Body> bodyFromJson(std::string_view kind, const Json& json, const std::string& place);

/// The step a body speaks of, or empty.
std::string stepOf(const Body& body);

}  // namespace cw

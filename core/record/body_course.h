#pragma once
#include "core/record/body_words.h"
#include "core/record/field.h"

namespace cw {

// The facts of a job's course. Each kind lists its fields once, for all that is done with them; the names are
// those of the file.

/// The job begins: on which machine, for which work order, by which sheet. Its author gave name and PIN.
struct JobStarted {
  static constexpr std::string_view kKind = "started";
  static constexpr Correction kCorrection = Correction::Never;
  std::string workOrder, machine, model, serial, hours;
  AsAtUse<bool> registered;     ///< the shop's register knew the machine
  std::optional<Reason> reason;  ///< nothing: nobody said
  std::string parent;           ///< job id of the record it follows from (comeback, retorque)
  Derived<std::string> sheetDigest;  ///< SHA-256 of the sheet's exact bytes
  bool quick = false;                ///< a quick joint: no issued sheet
  AsAtUse<std::string> guard;        ///< what the guard said of a quick joint: "in-band", "past-yield" …
  PersonSign guardAllowedBy;         ///< a lead's word, where the guard's verdict blocks
  std::string guardReason;
  PersonSign fitAllowedBy;  ///< a lead's word, where the sheet is for another model or serial
  std::string fitReason;
  AsAtUse<bool> alone;  ///< the shop has one active person: holds become self-checks
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("work_order", self.workOrder), v("machine", self.machine), v("model", self.model);
    v("serial", self.serial), v("hours", self.hours), v("registered", self.registered);
    v("reason", self.reason), v("parent", self.parent), v("sheet_digest", self.sheetDigest);
    v("quick", self.quick), v("guard", self.guard), v("guard_allowed_by", self.guardAllowedBy);
    v("guard_reason", self.guardReason), v("fit_allowed_by", self.fitAllowedBy);
    v("fit_reason", self.fitReason), v("alone", self.alone);
  }
  bool operator==(const JobStarted&) const = default;
};

/// Name and PIN were given and matched.
struct SignedIn {
  static constexpr std::string_view kKind = "signed-in";
  static constexpr Correction kCorrection = Correction::Never;
  template <class Self, class V>
  static void fields(Self&, V&) {}
  bool operator==(const SignedIn&) const = default;
};

/// A step is left open for now.
struct SetAside {
  static constexpr std::string_view kKind = "set-aside";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("reason", self.reason);
  }
  bool operator==(const SetAside&) const = default;
};

/// A step closes with nothing written against it, and why. Where it leaves a second person's look out, a lead
/// allowed it.
struct LeftBlank {
  static constexpr std::string_view kKind = "left-blank";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  Absence absence = Absence::NotApplicable;
  std::string reason;
  PersonSign allowedBy;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("absence", self.absence), v("reason", self.reason);
    v("allowed_by", self.allowedBy);
  }
  bool operator==(const LeftBlank&) const = default;
};

/// Done otherwise than the sheet says. With `aim` it replaces the torque of a tighten step, for this job
/// only; without, it closes the step.
struct Deviated {
  static constexpr std::string_view kKind = "deviated";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  std::string what, reason;
  PersonSign allowedBy;
  std::optional<StatedTorque> low, aim, high;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("what", self.what), v("reason", self.reason), v("allowed_by", self.allowedBy);
    v("low", self.low), v("aim", self.aim), v("high", self.high);
  }
  bool operator==(const Deviated&) const = default;
};

/// Entry `of` was wrong: `now` is its body as it should have been. A line gives only what changes; the chain
/// holds the whole.
struct Corrected {
  static constexpr std::string_view kKind = "corrected";
  static constexpr Correction kCorrection = Correction::Never;
  int of = 0;
  Json now;
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("of", self.of), v("now", self.now), v("reason", self.reason);
  }
  bool operator==(const Corrected&) const = default;
};

/// Not done after all: a position that was signed and never pulled, or a whole step that is one thing.
struct Reopened {
  static constexpr std::string_view kKind = "reopened";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  PositionLabel position;  ///< empty: what closed the step
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("position", self.position), v("reason", self.reason);
  }
  bool operator==(const Reopened&) const = default;
};

/// A lead stands by words that others wrote down for them in the entries named.
struct Confirmed {
  static constexpr std::string_view kKind = "confirmed";
  static constexpr Correction kCorrection = Correction::Never;
  std::vector<int> of;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("of", self.of);
  }
  bool operator==(const Confirmed&) const = default;
};

/// Work stops; the reason may be left unsaid. Parked: for days or weeks; `waitsFor` and the machine's state go
/// on the do-not-run tag.
struct Paused {
  static constexpr std::string_view kKind = "paused";
  static constexpr Correction kCorrection = Correction::Never;
  std::string reason;
  bool parked = false;
  std::string waitsFor, machineState;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("reason", self.reason), v("parked", self.parked), v("waits_for", self.waitsFor);
    v("machine_state", self.machineState);
  }
  bool operator==(const Paused&) const = default;
};

/// Work goes on, after a full sign-in; the pass that was interrupted may be repeated from its start.
struct Resumed {
  static constexpr std::string_view kKind = "resumed";
  static constexpr Correction kCorrection = Correction::Never;
  bool repeatPass = false;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("repeat_pass", self.repeatPass);
  }
  bool operator==(const Resumed&) const = default;
};

/// Go back: everything from a step on is to be done again; what was entered there is overtaken.
struct TakenApart {
  static constexpr std::string_view kKind = "taken-apart";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("reason", self.reason);
  }
  bool operator==(const TakenApart&) const = default;
};

/// A position was repaired or fitted otherwise, with a lead's word: insert, other fastener.
struct Repaired {
  static constexpr std::string_view kKind = "repaired";
  static constexpr Correction kCorrection = Correction::Never;
  std::string joint;
  PositionLabel position;
  std::string what, reason;
  PersonSign allowedBy;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("joint", self.joint), v("position", self.position), v("what", self.what), v("reason", self.reason);
    v("allowed_by", self.allowedBy);
  }
  bool operator==(const Repaired&) const = default;
};

/// A wrench in hand is no longer fit for use since it was taken: written by the program before anything else.
struct ToolStopped {
  static constexpr std::string_view kKind = "tool-stopped";
  static constexpr Correction kCorrection = Correction::Never;
  ToolId tool;
  AsAtUse<Stop> why;
  AsAtUse<std::string> since;        ///< the day it was dropped or doubted on, where the crib says so
  Derived<std::vector<std::string>> positions;  ///< pulled with it in the pass under way
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("tool", self.tool), v("why", self.why), v("since", self.since), v("positions", self.positions);
  }
  bool operator==(const ToolStopped&) const = default;
};

/// The clock of this computer ran backwards since the last entry, which said `before`.
struct ClockWentBack {
  static constexpr std::string_view kKind = "clock-went-back";
  static constexpr Correction kCorrection = Correction::Never;
  Derived<std::string> before;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("before", self.before);
  }
  bool operator==(const ClockWentBack&) const = default;
};

/// The job was begun by mistake, or is given up: it takes no more entries and is never sealed.
struct CalledOff {
  static constexpr std::string_view kKind = "called-off";
  static constexpr Correction kCorrection = Correction::Never;
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("reason", self.reason);
  }
  bool operator==(const CalledOff&) const = default;
};

/// The job is at its end, said by the person who answers for it; with something left undone, by a lead's word.
struct Finished {
  static constexpr std::string_view kKind = "finished";
  static constexpr Correction kCorrection = Correction::Never;
  std::string remark;
  PersonSign allowedBy;
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("remark", self.remark), v("allowed_by", self.allowedBy), v("reason", self.reason);
  }
  bool operator==(const Finished&) const = default;
};

}  // namespace cw

#pragma once
#include "core/record/body_words.h"
#include "core/record/field.h"

namespace cw {

// The facts of a tighten step. `pass` counts from 1.

/// So many fasteners were run to the face by finger; `stuck` names the positions that would not.
struct HandStarted {
  static constexpr std::string_view kKind = "hand-started";
  static constexpr Correction kCorrection = Correction::Values;
  StepId step;
  int count = 0;
  std::vector<std::string> stuck;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("count", self.count), v("stuck", self.stuck);
  }
  bool operator==(const HandStarted&) const = default;
};

/// Threads and bearing faces are in the condition that the value of these positions assumes.
struct ConditionConfirmed {
  static constexpr std::string_view kKind = "condition-confirmed";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  std::string condition;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("condition", self.condition);
  }
  bool operator==(const ConditionConfirmed&) const = default;
};

/// The wrench is in hand and set. `asUsed` is the crib's page of it at that moment, calibrations included,
/// so that the record needs no crib. A lead may allow a tool that is refused, with a reason.
struct ToolSet {
  static constexpr std::string_view kKind = "tool-set";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  Derived<int> pass;
  ToolId tool;
  StatedTorque setting;
  AsAtUse<Json> asUsed;
  PersonSign allowedBy;
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("pass", self.pass), v("tool", self.tool), v("setting", self.setting);
    v("as_used", self.asUsed), v("allowed_by", self.allowedBy), v("reason", self.reason);
  }
  bool operator==(const ToolSet&) const = default;
};

/// An early pass was done on so many fasteners: all of the joint, or those that share a torque.
struct PassCounted {
  static constexpr std::string_view kKind = "counted";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  Derived<int> pass;
  int count = 0;
  Derived<StatedTorque> setting;
  Derived<std::vector<std::string>> positions;  ///< which ones, where the joint has several torques
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("pass", self.pass), v("count", self.count), v("setting", self.setting);
    v("positions", self.positions);
  }
  bool operator==(const PassCounted&) const = default;
};

/// One position of the final pass. `target` is the specification's aim as stated there; `setting` what
/// stood on the tool; `reading` what an indicating tool showed, if it did. `within`: inside the tolerance.
struct Tightened {
  static constexpr std::string_view kKind = "tightened";
  static constexpr Correction kCorrection = Correction::Values;
  StepId step;
  Derived<int> pass;
  PositionLabel position;
  Derived<StatedTorque> target, setting;
  Known known = Known::Clicked;
  std::optional<StatedTorque> reading;
  Derived<bool> within;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("pass", self.pass), v("position", self.position), v("target", self.target);
    v("setting", self.setting), v("known", self.known), v("reading", self.reading), v("within", self.within);
  }
  bool operator==(const Tightened&) const = default;
};

/// One round of the check pass, and the positions that still moved.
struct CheckPassMade {
  static constexpr std::string_view kKind = "check-pass";
  static constexpr Correction kCorrection = Correction::Values;
  StepId step;
  Derived<int> round;
  std::vector<std::string> moved;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("round", self.round), v("moved", self.moved);
  }
  bool operator==(const CheckPassMade&) const = default;
};

/// The gap between the faces at each place the sheet asks for, going round, after a pass. Where they differ
/// by more than it allows, the faces are to be brought even and the gaps read again; a lead may let the work
/// go on as it is, with a reason.
struct GapsRead {
  static constexpr std::string_view kKind = "gaps-read";
  static constexpr Correction kCorrection = Correction::Values;
  StepId step;
  Derived<int> pass;
  std::vector<StatedLength> gaps;
  Derived<bool> within;  ///< they differ by no more than the sheet allows
  PersonSign allowedBy;
  std::string reason;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("pass", self.pass), v("gaps", self.gaps), v("within", self.within);
    v("allowed_by", self.allowedBy), v("reason", self.reason);
  }
  bool operator==(const GapsRead&) const = default;
};

}  // namespace cw

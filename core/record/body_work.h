#pragma once
#include "core/record/body_words.h"
#include "core/record/field.h"

namespace cw {

// The facts of steps that are one thing, and of a second person's look.

/// The warnings and cautions of a step were read.
struct WarningsRead {
  static constexpr std::string_view kKind = "warnings-read";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step);
  }
  bool operator==(const WarningsRead&) const = default;
};

/// An act was done; for a part that is renewed, that it is new, with its batch and expiry where wanted.
struct ActDone {
  static constexpr std::string_view kKind = "done";
  static constexpr Correction kCorrection = Correction::Values;
  StepId step;
  bool renewed = false;
  std::string batch, expiry;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("renewed", self.renewed), v("batch", self.batch), v("expiry", self.expiry);
  }
  bool operator==(const ActDone&) const = default;
};

/// A check was made. "no" leaves the step open.
struct CheckMade {
  static constexpr std::string_view kKind = "checked";
  static constexpr Correction kCorrection = Correction::Values;
  StepId step;
  Answer answer = Answer::Yes;
  std::string remark;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("answer", self.answer), v("remark", self.remark);
  }
  bool operator==(const CheckMade&) const = default;
};

/// A value was measured, in the unit the step asks for. Outside the limits it leaves the step open.
struct Measured {
  static constexpr std::string_view kKind = "measured";
  static constexpr Correction kCorrection = Correction::Values;
  StepId step;
  std::string value, unit, gauge;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("value", self.value), v("unit", self.unit), v("gauge", self.gauge);
  }
  bool operator==(const Measured&) const = default;
};

/// A compound was applied.
struct Applied {
  static constexpr std::string_view kKind = "applied";
  static constexpr Correction kCorrection = Correction::Values;
  StepId step;
  std::string batch, expiry;
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("batch", self.batch), v("expiry", self.expiry);
  }
  bool operator==(const Applied&) const = default;
};

/// A second person looked: what they saw, entered without seeing the first entry. `what` holds the things
/// looked at and found so, `notSo` those found otherwise.
struct Witnessed {
  static constexpr std::string_view kKind = "witnessed";
  static constexpr Correction kCorrection = Correction::Never;
  StepId step;
  Manner manner = Manner::Watched;
  std::vector<std::string> what, notSo;
  ToolId tool;
  std::optional<StatedTorque> setting;
  std::optional<int> count;
  Derived<bool> agrees;  ///< nothing was found otherwise, and tool, setting and count are those in force
  template <class Self, class V>
  static void fields(Self& self, V& v) {
    v("step", self.step), v("manner", self.manner), v("what", self.what), v("not_so", self.notSo);
    v("tool", self.tool), v("setting", self.setting), v("count", self.count), v("agrees", self.agrees);
  }
  bool operator==(const Witnessed&) const = default;
};

}  // namespace cw

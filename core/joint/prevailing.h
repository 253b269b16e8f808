#pragma once
#include "core/base/result.h"
#include "core/base/words.h"
#include "core/units/quantity.h"

namespace cw {

/// What a specification does with the torque that a self-locking fastener takes before it tightens.
enum class PrevailingRule {
  None,             ///< the stated torque includes it
  AlwaysAdd,        ///< wrench torque = stated + prevailing (FAA AC 43.13-1B, 7-40 d)
  AddFromOneThird,  ///< added only once it reaches a third of the stated torque (common practice, no source)
};
template <>
struct Words<PrevailingRule> {
  static constexpr std::array<std::pair<PrevailingRule, std::string_view>, 3> kAll{
      {{PrevailingRule::None, "none"},
       {PrevailingRule::AlwaysAdd, "always-add"},
       {PrevailingRule::AddFromOneThird, "add-from-one-third"}}};
};

/// Torque at the wrench for a stated torque. Stated above zero, prevailing zero or more, else OutOfRange;
/// OutOfRange too where the prevailing torque exceeds the stated one: nothing would be left to judge by.
/// Worked example: WorkedExamples.E22.
Result<Torque> withPrevailing(Torque stated, Torque prevailing, PrevailingRule rule);

/// What tightens when the wrench shows `atWrench`: the prevailing torque never reaches the clamp load,
/// whatever rule the sheet names. OutOfRange if nothing is left.
Result<Torque> tighteningPart(Torque atWrench, Torque prevailing);

}  // namespace cw

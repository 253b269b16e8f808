#pragma once
#include <optional>
#include <string_view>

#include "core/joint/capacity.h"
#include "core/joint/guard.h"
#include "core/joint/member_stiffness.h"
#include "core/joint/setting.h"
#include "core/report/outcome.h"

namespace cw {

// The computations of the place Figures: typed values in, an outcome with its working out. The arithmetic is
// core/joint's; here it gets its words. Errors are those of the functions of core/joint that are named.

/// The torque in every unit, the stated one first. OutOfRange unless it is above zero.
Result<Outcome> convertedTorque(const StatedTorque& torque);

/// By what torque and clamp load are tied together.
struct ClampCase {
  FastenerCase fastener;
  std::optional<Basis> basis;  ///< none: nut factor where the condition has one
  double toolDeviation = 0;    ///< fraction
};

/// Clamp load that a torque leaves behind, with its band and its share of strength (clamp_band.h,
/// utilisation.h).
Result<Outcome> clampLoadOf(const StatedTorque& torque, const ClampCase& clamp);

/// Torque that a clamp load takes, shown in `unit`; `load` with the working it comes from, if any.
Result<Outcome> torqueForLoad(const Worked<Force>& load, const TorqueUnit& unit, const ClampCase& clamp);

/// What the guard says of a torque, and how its band came about; with the manual's second column, whether
/// both agree (guard.h, agreement.h).
Result<Outcome> guardedTorque(const StatedTorque& torque, const std::optional<StatedTorque>& second,
                              const GuardSubject& subject);

/// First answer: bring the parts into the stated condition and tighten as specified. Second, as a deviation:
/// the torque of equal clamp load in the condition in use (recondition.h). `fastener.condition` is the stated
/// one.
Result<Outcome> changedCondition(const StatedTorque& torque, const Condition& inUse,
                                 const FastenerCase& fastener, std::optional<Basis> basis);

/// Wrench and adapter in the units they were measured in.
struct StatedLever {
  StatedLength wrench;
  StatedLength offset;
  std::optional<StatedAngle> angle;  ///< none: in line

  Lever lever() const { return {wrench.value(), offset.value(), angle ? angle->value() : Angle()}; }
};

/// What a wrench is asked for. Without a tolerance ±5 % is assumed, and said.
struct WrenchQuestion {
  StatedTorque aim;
  std::optional<TorqueBand> tolerance;
  std::optional<StatedLever> lever;
  Torque prevailing;
  PrevailingRule rule = PrevailingRule::None;
  StatedTorque graduation;
  std::optional<double> deviation;  ///< of the wrench, as a fraction
  GuardSubject fastener;
  std::string insteadOf;  ///< what is specified, where the aim deviates from it
};

/// Setting on the wrench's marks (setting.h), judged as a setting where the fastener is known.
Result<Outcome> wrenchFor(const WrenchQuestion& question, bool fastenerKnown);

/// Torque that reaches the fastener at a setting (adapter.h).
Result<Outcome> torqueBehind(const StatedTorque& setting, const StatedLever& lever);

/// What gives way first, bolt, bolt thread or tapped thread, and the engagement needed (stripping.h).
Result<Outcome> strippingOf(const Thread& thread, const Grade& grade, const TappedHole& hole);

/// What is clamped, of one material throughout.
struct MemberMaterial {
  std::string_view name;
  MemberFit fit;
  Stress modulus;
};
/// "steel", "grey iron", "aluminium", "copper". Moduli: Shigley, 9th ed., table 8-8.
const std::vector<MemberMaterial>& memberMaterials();
Result<MemberMaterial> memberMaterial(std::string_view name);

/// A steel bolt through parts of one material.
struct AngleQuestion {
  Thread thread;
  Force load, snug;
  Length plain, threaded;  ///< of the bolt, within the grip
  MemberMaterial members;
};

/// Turn from snug to a clamp load (tightening_angle.h).
Result<Outcome> angleFromSnug(const AngleQuestion& question);

}  // namespace cw

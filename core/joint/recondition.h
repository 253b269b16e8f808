#pragma once
#include "core/joint/clamp_band.h"

namespace cw {

/// A torque carried over to another condition at the same clamp load.
struct Reconditioned {
  RequiredTorque torque;  ///< low and high by the friction ranges of both conditions
  Force clampLoad;        ///< the typical one that both share
  Basis basis;
};

/// T2 = T1·a2/a1 with the torque per clamp load of each condition: by nut factor a2/a1 = K2/K1, by the long
/// form the arms of friction. Both conditions spread independently, so the band is
/// T2·(1 ± √(r1² + r2²)) with the relative spreads of a1 and a2 on that side.
///
/// `from` is the condition the specification states. This is a deviation from the specification: the first
/// answer is to bring the parts into the stated condition, and the working says so.
/// OutOfTurn if both are the same condition (nothing is to change); InvalidInput if `from` is not stated or
/// the two do not share the basis (nut factor or friction); T as in clampFromTorque. Unless asked for, the
/// nut factor is used where both have one.
/// Source: equal clamp load, T = K·F·d; field rules in TM 9-2320-362-14&P (0.9 for oil) agree in direction.
Result<Worked<Reconditioned>> recondition(Torque tightening, const std::optional<Condition>& from,
                                          const Condition& to, const Thread& thread,
                                          const std::optional<BearingFace>& face,
                                          std::optional<Basis> basis = std::nullopt);

}  // namespace cw

#pragma once
#include <vector>

#include "core/base/result.h"
#include "core/joint/working.h"

namespace cw {

/// One clamped layer under a load cone that widens away from the head or nut.
struct Frustum {
  Length thickness;  ///< t
  Length start;      ///< D, diameter at the narrow end: 1.5·d under a washer face
  Stress modulus;    ///< E of this layer
};

/// k = π·E·d·tan 30° / ln{[(2·t·tan 30° + D − d)(D + d)] / [(2·t·tan 30° + D + d)(D − d)]}.
/// All above zero and D > d, else OutOfRange naming the argument.
/// Source: Shigley, 9th ed., eq. 8-20 with α = 30°. Worked example: WorkedExamples.E33.
Result<Worked<Stiffness>> frustumStiffness(const Frustum& frustum, Length bolt);

/// Layers in series: 1/km = Σ 1/ki. InvalidInput for no layers.
Result<Stiffness> inSeries(const std::vector<Stiffness>& layers);

/// Constants of the exponential fit to finite-element results.
struct MemberFit {
  double a;
  double b;
};
inline constexpr MemberFit kSteelFit{0.78715, 0.62873};
inline constexpr MemberFit kGreyIronFit{0.77871, 0.61616};
inline constexpr MemberFit kAluminiumFit{0.79670, 0.63816};  ///< from memory
inline constexpr MemberFit kCopperFit{0.79568, 0.63553};     ///< from memory
inline constexpr MemberFit kGeneralFit{0.78952, 0.62914};

/// km = E·d·A·exp(B·d/l) for a whole grip l of one material with equal washer faces. Above zero, else
/// OutOfRange. Half of a symmetrical grip is twice as stiff.
/// Source: Wileman, Choudhury & Green 1991, in Shigley, 9th ed., eq. 8-23. Worked example:
/// WorkedExamples.E25.
Result<Worked<Stiffness>> memberStiffness(const MemberFit& fit, Stress modulus, Length bolt, Length grip);

/// C = kb/(kb + km): share of a working load that the bolt feels. Both above zero.
/// Source: Shigley, 9th ed., eq. 8-24. Worked example: WorkedExamples.E01.
Result<Worked<double>> jointConstant(Stiffness bolt, Stiffness members);

/// Loads in the joint when `working` pulls it apart: bolt Fi + C·P, members Fi − (1 − C)·P (negative: open).
struct WorkingLoads {
  Force bolt;
  Force members;
};
WorkingLoads underLoad(Force clamp, Force working, double jointConstant);

}  // namespace cw

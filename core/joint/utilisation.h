#pragma once
#include "core/base/result.h"
#include "core/fastener/grade.h"
#include "core/joint/wedge.h"
#include "core/joint/working.h"

namespace cw {

/// How the shank answers torsion while it is tightened.
enum class Torsion {
  Plastic,  ///< Wp = π·d0³/12, the section fully plastic: VDI 2230 from 1986 on
  Elastic,  ///< Wp = π·d0³/16: tables from before 1986, such as those to DIN 13 threads
};

/// Combined stress over axial stress, √(1 + 3·[k·(d2/d0)·tan(φ+ρ′)]²), k = 3/2 plastic or 2 elastic,
/// d0 = (d2+d3)/2. Unchecked formula. Source: VDI 2230 part 1.
double twistFactor(const Thread& thread, double threadFriction, Torsion torsion = Torsion::Plastic);

/// Von Mises stress over yield at this clamp load, still under the wrench. F ≥ 0, µt in (0, 0.5].
/// OutOfRange or InvalidInput naming the argument. 1 is the onset of yield; 0.9 is VDI 2230's choice.
/// Source: VDI 2230 part 1. Worked example: WorkedExamples.E11.
Result<double> utilisation(Force load, double threadFriction, const Thread& thread, const Grade& grade,
                           Torsion torsion = Torsion::Plastic);

/// Clamp load at this von Mises share of yield (ν in (0, 1]): As·ν·Rp / twist factor.
Result<Worked<Force>> loadAtUtilisation(double share, double threadFriction, const Thread& thread,
                                        const Grade& grade, Torsion torsion = Torsion::Plastic);

/// F/(Sp·As). InvalidInput for a grade whose standard states no proof stress.
Result<double> proofFraction(Force load, const Thread& thread, const Grade& grade);
/// F/(Ry·As): axial stress alone.
Result<double> yieldFraction(Force load, const Thread& thread, const Grade& grade);

/// Clamp load at a share (0, 1.2] of proof or of yield, axial stress alone.
Result<Worked<Force>> loadAtProof(double share, const Thread& thread, const Grade& grade);
Result<Worked<Force>> loadAtYield(double share, const Thread& thread, const Grade& grade);

}  // namespace cw

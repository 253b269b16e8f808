#pragma once
#include "core/fastener/grade.h"
#include "core/joint/resistance.h"

namespace cw {

/// Clamp load that a torque leaves behind: typical, and how low and high tool and friction together can put
/// it.
struct ClampBand {
  Force low;
  Force typical;
  Force high;
};

/// Torque that a clamp load takes, likewise.
struct RequiredTorque {
  Torque low;
  Torque typical;
  Torque high;
};

/// Torque → clamp load. `tightening` is what reaches threads and face: prevailing torque taken off
/// (prevailing.h). F = T/a for the typical arm; tool deviation δ (a fraction) and friction are independent
/// causes, so their relative deviations add by root of squares: F_hi = F·(1 + √(δ² + (a/a_lo − 1)²)),
/// F_lo = F·(1 − √(δ² + (1 − a/a_hi)²)), never below zero.
/// T ≥ 0, δ in [0, 1). OutOfRange or InvalidInput naming the argument; also for an absurd torque.
/// Source: independent errors, NASA-STD-5020 / VDI 2230 scatter. Worked example: ClampBand tests.
Result<Worked<ClampBand>> clampFromTorque(Torque tightening, const ResistanceRange& resistance,
                                          double toolDeviation, const Thread& thread);

/// Clamp load → torque: T = a·F, T_hi = T·(1 + √(δ² + (a_hi/a − 1)²)), T_lo = T·(1 − √(δ² + (1 − a_lo/a)²)).
/// F ≥ 0; errors as above.
Result<Worked<RequiredTorque>> torqueFromClamp(Force load, const ResistanceRange& resistance,
                                               double toolDeviation, const Thread& thread);

/// Scatter ±s and tightening factor αA = Fmax/Fmin, (1+s)/(1−s). s in [0, 1), αA ≥ 1.
/// Source: VDI 2230 part 1, tightening factor. Worked example: WorkedExamples.E11.
Result<double> tighteningFactor(double scatter);
Result<double> scatterOf(double tighteningFactor);

}  // namespace cw

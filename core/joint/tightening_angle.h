#pragma once
#include "core/base/result.h"
#include "core/fastener/thread.h"
#include "core/joint/working.h"

namespace cw {

/// Stiffness of bolt and clamped parts.
struct JointStiffness {
  Stiffness bolt;
  Stiffness members;
};

/// θ = 360°·(F − Fs)/P·(1/kb + 1/km): turn from snug to clamp load F. Loads zero or more, F ≥ Fs, stiffness
/// above zero: OutOfRange naming the argument otherwise. Twist of the shank and slack between threads are not
/// included; beyond yield the load stops rising with the angle.
/// Source: Shigley, 9th ed., turn-of-nut relation. Worked example: WorkedExamples.E30.
Result<Worked<Angle>> angleAfterSnug(Force load, Force snug, const JointStiffness& joint,
                                     const Thread& thread);

/// F = Fs + θ/360°·P/(1/kb + 1/km), the same backwards. θ zero or more.
Result<Worked<Force>> loadAfterAngle(Angle angle, Force snug, const JointStiffness& joint,
                                     const Thread& thread);

}  // namespace cw

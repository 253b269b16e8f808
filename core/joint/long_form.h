#pragma once
#include "core/base/result.h"
#include "core/joint/wedge.h"

namespace cw {

/// T = F·[(d2/2)·tan(φ+ρ′) + µb·Db/2], the exact wedge. Friction within (0, 0.5], F ≥ 0, Db > 0.
/// OutOfRange or InvalidInput naming the argument, also for a load that no bolt of this size bears.
/// Source: VDI 2230 part 1 (2015), table A1 rests on this form. Worked examples: WorkedExamples.E12, E13.
Result<Torque> torqueByFriction(Force load, Friction friction, const Thread& thread, Length meanBearing);

/// F = T/[(d2/2)·tan(φ+ρ′) + µb·Db/2]; as above.
Result<Force> loadByFriction(Torque torque, Friction friction, const Thread& thread, Length meanBearing);

/// Torque that turns the nut back at clamp load F: F·[(d2/2)·tan(ρ′−φ) + µb·Db/2]. As above; below zero it
/// would run off by itself. Source: textbook power screw. Worked example: WorkedExamples.E09.
Result<Torque> looseningTorque(Force load, Friction friction, const Thread& thread, Length meanBearing);

/// The nut factor that friction amounts to on this thread and face: K = arm/d.
Result<double> nutFactorOf(Friction friction, const Thread& thread, Length meanBearing);

/// µt = µb behind a nut factor. OutOfRange if the pitch alone costs more than K.
Result<double> frictionBehind(double nutFactor, const Thread& thread, Length meanBearing);

}  // namespace cw

#pragma once
#include "core/base/result.h"
#include "core/fastener/thread.h"

namespace cw {

/// T = K·F·d. K dimensionless in (0, 1], F ≥ 0. OutOfRange or InvalidInput naming the argument, also for a
/// load that no bolt of this size bears. Below yield only; K belongs to the parts it was found on.
/// Source: Shigley, Mechanical Engineering Design, 9th ed., eq. 8-27. Worked example: WorkedExamples.E02,
/// E05.
Result<Torque> torqueByNutFactor(Force load, double nutFactor, const Thread& thread);

/// F = T/(K·d); ranges, errors and source as above. T is what tightens: without prevailing torque.
Result<Force> loadByNutFactor(Torque torque, double nutFactor, const Thread& thread);

/// K = T/(F·d) that a measured pair shows; T and F above zero.
Result<double> nutFactorFrom(Torque torque, Force load, const Thread& thread);

}  // namespace cw

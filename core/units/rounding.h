#pragma once
#include "core/base/result.h"
#include "core/units/stated.h"

namespace cw {

/// The torques a specification allows, both ends included.
struct TorqueBand {
  Torque low;
  Torque high;
  bool operator==(const TorqueBand&) const = default;
};

/// The mark on a tool's scale nearest to `aim` among those inside `band`; of two equally near, the higher.
/// Marks are the multiples of `graduation` above zero. The answer is in the graduation's unit, with the
/// digits after the point that the graduation needs: "0.5 lbf.ft" gives "14.0" and "14.5", "5 N.m" gives
/// "60".
///
/// `aim` and `band` are taken at 15 significant digits in that unit, which drops the noise of a conversion
/// and nothing else; from there on the arithmetic is decimal and exact, so no mark outside the band is ever
/// given.
///
/// OutOfRange if no mark lies inside, naming the marks on either side; also for a graduation that is zero or
/// has more than 6 digits after the point, a band that ends below its start, and anything below zero or above
/// 10⁹ of the unit.
Result<StatedTorque> roundedToGraduation(Torque aim, const TorqueBand& band, const StatedTorque& graduation);

}  // namespace cw

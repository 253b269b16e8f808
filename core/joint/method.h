#pragma once
#include <optional>
#include <string_view>
#include <variant>

#include "core/base/finding.h"
#include "core/units/rounding.h"

namespace cw {

/// To a torque, in one go per pass.
struct TorqueMethod {
  Torque target;
};

/// To a torque, with the angle turned from snug as a second witness: the torque counts only if the angle
/// lies in the window.
struct TorqueAngleWindowMethod {
  Torque snug;
  Torque target;
  Angle low;  ///< window, from snug
  Angle high;
};

/// To snug, then by an angle, often into yield; torque is not the target.
struct TurnOfNutMethod {
  Torque snug;
  Angle turn;
  Angle tolerance;  ///< either way
};

/// To a seating torque, back off, to a final torque that may need more to move on, up to a maximum: bearing
/// nuts, castellated nuts.
struct SeatBackOffMethod {
  Torque seat;
  Angle backOff;
  Torque target;
  Torque maximum;
};

using TighteningMethod =
    std::variant<TorqueMethod, TorqueAngleWindowMethod, TurnOfNutMethod, SeatBackOffMethod>;

/// "torque" "torque-and-angle" "turn-of-nut" "seat-back-off"
std::string_view codeOf(const TighteningMethod& method);

/// Every value in its range: torques above zero, snug below target, window rising and within a full turn
/// (angles up to two turns for turn of nut), maximum not below final. OutOfRange naming the value.
Result<void> check(const TighteningMethod& method);

/// What was read on the way, as far as the method asks.
struct MethodReading {
  std::optional<Torque> torque;  ///< final
  std::optional<Angle> angle;    ///< from snug, or turned back
};

/// Does the reading satisfy the method within `tolerance` of its final torque? Everything wrong with it:
/// "torque-out-of-tolerance", "angle-low" (early: cross thread, bottomed or harder than thought),
/// "angle-high" (late: yielding, or parts still closing), "reading-missing". Blocking all. After seating and
/// backing off, the method's maximum takes the place of the tolerance's upper end.
Findings judgeReading(const TighteningMethod& method, const MethodReading& reading,
                      const TorqueBand& tolerance);

/// The check pass re-applies a torque. That means something after a torque, nothing after an angle into
/// yield.
bool mayRetorque(const TighteningMethod& method);

}  // namespace cw

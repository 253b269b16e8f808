#pragma once
#include <optional>

#include "core/joint/adapter.h"
#include "core/joint/prevailing.h"
#include "core/units/rounding.h"

namespace cw {

/// What the fastener is to get, and how it is reached.
struct TorqueTarget {
  Torque aim;
  TorqueBand tolerance;  ///< allowed at the fastener, aim inside
  Torque prevailing;     ///< running torque of a locking fastener; zero without
  PrevailingRule rule = PrevailingRule::None;
};

/// What the wrench is set to.
struct WrenchSetting {
  StatedTorque setting;  ///< on the wrench's marks
  Torque exact;          ///< before rounding
  TorqueBand allowed;    ///< settings that keep the fastener inside its tolerance
  Torque applied;        ///< reaches the fastener at `setting`, prevailing torque included
};

/// Prevailing torque by its rule, then the adapter, then the nearest mark that keeps the fastener inside its
/// tolerance. `graduation` as on the wrench, in the unit of its scale; the answer is in that unit.
/// OutOfRange if no mark lies inside the tolerance (the wrench is refused), if aim lies outside the
/// tolerance, and for what adapter.h and prevailing.h refuse. Worked examples: Setting tests,
/// WorkedExamples.E15.
Result<Worked<WrenchSetting>> wrenchSetting(const TorqueTarget& target, const std::optional<Lever>& lever,
                                            const StatedTorque& graduation);

}  // namespace cw

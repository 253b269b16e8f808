#pragma once
#include "core/base/result.h"
#include "core/joint/working.h"

namespace cw {

/// A lever put on the wrench's drive that turns the fastener beside the drive's axis ("crowfoot").
struct Lever {
  Length wrench;  ///< L, drive centre to where the hand pulls
  Length offset;  ///< E, drive centre to fastener centre; zero without an adapter
  Angle angle;    ///< θ from the wrench's axis: 0 in line, 90° square, 180° toward the handle
};

/// TW = T·L/(L + E·cos θ). L from 1 mm, E from 0 to 10 m, θ from 0 to 180°: OutOfRange otherwise, also for
/// an adapter toward the handle that is as long as the wrench: nothing would turn. Straight extensions along
/// the drive's axis change nothing.
/// Source: US Army TM 9-254, figures 4-5 and 4-6. Worked examples: WorkedExamples.E15, E16, E19, E21.
Result<Worked<Torque>> settingFor(Torque applied, const Lever& lever);

/// T = TW·(L + E·cos θ)/L, back from what the wrench was set to.
Result<Worked<Torque>> appliedBy(Torque setting, const Lever& lever);

}  // namespace cw

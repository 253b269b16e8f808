#pragma once
#include <vector>

#include "core/settling/settling_model.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// One turn of one nut, and where it leaves all bolts.
struct SettlingStep {
  int pass = 0;              ///< from 1
  int bolt = 0;              ///< from 1
  bool moved = true;         ///< false: the bolt carried its share already, the wrench clicks at once
  std::vector<Force> loads;  ///< of every bolt
  Length gapDifference;      ///< between the widest and the narrowest place between the faces, at the bolts
  Angle tilt;                ///< of the plane that fits the approach at the bolts best; 0 without places
};

/// The joint after one pass.
struct SettlingSummary {
  double share = 1;
  std::vector<Force> loads;
  Force mean;
  Force least;
  Force most;
  double spread = 0;     ///< (most - least) / mean
  double deviation = 0;  ///< standard deviation (n - 1) over mean
  Angle worstTilt;       ///< largest tilt while the pass went on
  Length worstGapDifference;
};

struct SettlingCourse {
  std::vector<SettlingStep> steps;
  std::vector<SettlingSummary> passes;
};

/// Predicted clamp load of every bolt after every step.
///
/// One step turns one nut until its bolt carries the pass's share of its target; a bolt that carries as
/// much or more is left alone. The others' nuts stand still: their loads change with the faces.
/// Physics: elastic interaction (see SettlingModel). Not in it: creep, friction (see frictionTrials),
/// bending and yielding of bolts, waviness and misalignment, everything that a gasket does beyond two
/// straight lines. A prediction, never a bolt's load in a record.
/// Errors: those of `tighten` (settling_steps.h): what checkTightening refuses, a joint that tips.
Result<SettlingCourse> settle(const SettlingModel& model, const TighteningPlan& tightening);

}  // namespace cw

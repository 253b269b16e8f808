#pragma once
#include <cstdint>
#include <functional>
#include <stop_token>

#include "core/settling/settling_model.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// Friction differs from bolt to bolt, so the same torque gives different loads.
struct FrictionScatter {
  double deviation = 0.1;  ///< standard deviation of the load that one torque gives, over its mean; 0 to 0.5
  int trials = 1000;       ///< 1 to 100000
  std::uint64_t seed = 1;  ///< the same seed gives the same trials on every machine
};

/// What a bolt carries after the last pass, over the trials.
struct BoltBand {
  Force mean;
  Force deviation;
  Force low;   ///< one trial in twenty ends below
  Force high;  ///< one trial in twenty ends above
};

struct FrictionTrials {
  int done = 0;
  bool complete = false;  ///< false: cancelled; the bands hold the trials that were done
  std::vector<BoltBand> bolts;
  double meanSpread = 0;  ///< of (most - least) / mean of a joint
  double highSpread = 0;  ///< one joint in twenty spreads further
};

/// Tightens the joint again and again, every bolt with a friction of its own that it keeps through all
/// passes: its loads are its targets times a normal deviate about 1, cut off at three deviations.
/// `progress` is told the number of trials done after each; a stop asked for through `stop` is heeded
/// after the step at hand, not at the end of the trial.
/// Errors: OutOfRange for a scatter outside its limits; otherwise as settle().
Result<FrictionTrials> frictionTrials(const SettlingModel& model, const TighteningPlan& tightening,
                                      const FrictionScatter& scatter,
                                      const std::function<void(int done)>& progress = {},
                                      std::stop_token stop = {});

}  // namespace cw

#pragma once
#include "core/settling/settling_model.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// One pass that is to leave every bolt at the same load.
struct OnePass {
  Force target;
  std::vector<int> order;
  double snugShare = 0;
  Force most;  ///< what a bolt may bear on the way
};

/// The load to tighten each bolt to, so that one pass leaves all within 0.2 % of the target.
///
/// Found by raising each bolt's own target by what it lacked, over and over. In a linear joint that ends
/// exactly after as many rounds as there are bolts, because a bolt's loss depends on later ones only.
/// OutOfRange: a bolt would have to be tightened beyond `most` (the first such bolt is named), or no targets
/// are found; otherwise as settle().
Result<std::vector<Force>> onePassTargets(const SettlingModel& model, const OnePass& pass);

}  // namespace cw

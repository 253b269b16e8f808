#pragma once
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/units/quantity.h"

namespace cw {

/// One trip through the order. Bolt numbers start at 1.
struct SettlingPass {
  double share = 1;  ///< of every bolt's target; above 0, at most 2
  std::vector<int> order;
};

/// How a joint is tightened.
struct TighteningPlan {
  std::vector<Force> targets;  ///< one for all bolts, or one for each
  double snugShare = 0;        ///< every nut run to this share of its target at once before the first pass;
                               ///< 0: a nut carries nothing before its turn, as if it were not there
  std::vector<SettlingPass> passes;

  Force target(int bolt) const {
    return targets.size() == 1 ? targets.front() : targets[static_cast<std::size_t>(bolt)];
  }
};

/// Passes if `tightening` fits a joint of so many bolts. InvalidInput: another number of targets, an order
/// that misses or repeats a bolt. OutOfRange: targets not above 0, shares outside 0 to 2, over 100 passes.
Result<void> checkTightening(const TighteningPlan& tightening, int bolts);

/// InvalidInput unless `order` holds every bolt from 1 to `bolts` exactly once.
Result<void> checkOrder(const std::string& place, const std::vector<int>& order, int bolts);

}  // namespace cw

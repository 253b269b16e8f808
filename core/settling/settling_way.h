#pragma once
#include <string>
#include <vector>

#include "core/pattern/order.h"
#include "core/settling/settling_course.h"
#include "core/settling/settling_joint.h"

namespace cw {

/// A way of tightening that is compared with another: passes in the order of a rule, then full rounds.
struct SettlingWay {
  OrderRule rule = OrderRule::Star;
  std::vector<double> shares = {0.3, 0.7, 1.0};  ///< of the target, one pass each
  int rounds = 0;                                ///< going round at the full target, afterwards
  bool operator==(const SettlingWay&) const = default;
};

/// The bolts as a layout; on a circle numbered as in the joint. OutOfRange as `positions`; InvalidInput for a
/// joint whose flexibility comes without places.
Result<Layout> boltLayout(const SettlingJoint& joint);

/// Every nut snug at 3 % of the target (default), then the passes of the way. Errors of boltLayout and
/// `tighteningOrder`; InvalidInput without any pass; what checkTightening refuses.
Result<TighteningPlan> tighteningBy(const SettlingJoint& joint, const SettlingWay& way, Force target);

/// What a way leads to, and where one full round more would lead.
struct SettlingOutcome {
  SettlingWay way;
  Force target;
  SettlingCourse course;
  SettlingSummary oneMore;
};

/// Errors of settle.
Result<SettlingOutcome> settleBy(const SettlingModel& model, const SettlingJoint& joint,
                                 const SettlingWay& way, Force target);

}  // namespace cw

#include "core/settling/settling_steps.h"

namespace cw {
namespace {

Result<void> runSnug(SettlingSprings& springs, const TighteningPlan& tightening) {
  if (tightening.snugShare > 0) {
    std::vector<Force> snug;
    for (int i = 0; i < springs.bolts(); ++i) snug.push_back(tightening.snugShare * tightening.target(i));
    return springs.drawTogether(snug);
  }
  if (!springs.canTip()) return {};
  return fail(ErrorCode::InvalidInput, "snug_share", "0",
              "on a gasket that lifts off, the part tips under the first bolt if no other is snug",
              "a snug share above 0, such as 0.03");
}

}  // namespace

Result<void> tighten(SettlingSprings& springs, const TighteningPlan& tightening, const AfterStep& after) {
  CW_CHECK(checkTightening(tightening, springs.bolts()));
  CW_CHECK(runSnug(springs, tightening));
  for (std::size_t pass = 0; pass < tightening.passes.size(); ++pass)
    for (const int bolt : tightening.passes[pass].order) {
      const Force goal = tightening.passes[pass].share * tightening.target(bolt - 1);
      const bool moved = !springs.started(bolt - 1) || springs.load(bolt - 1) < goal;
      if (moved) CW_CHECK(springs.pull(bolt - 1, goal));
      if (!after(static_cast<int>(pass) + 1, bolt, moved)) return {};
    }
  return {};
}

}  // namespace cw

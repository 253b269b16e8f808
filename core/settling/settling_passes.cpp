#include "core/settling/settling_passes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/settling/settling_steps.h"

namespace cw {
namespace {

double worstShort(const SettlingSprings& springs, const TighteningPlan& tightening) {
  double worst = 0;
  for (int i = 0; i < springs.bolts(); ++i)
    worst = std::max(worst, std::abs(springs.load(i) / tightening.target(i) - 1));
  return worst;
}

Result<void> checkGoal(double share, int limit) {
  if (!(share > 0 && share < 1))
    return fail(ErrorCode::OutOfRange, "share", fmt::format("{:g}", share),
                {"loads cannot be within %1 of the target", {fmt::format("{:g}", share)}},
                "between 0 and 1, such as 0.1");
  if (limit < 0 || limit > 50)
    return fail(ErrorCode::OutOfRange, "limit", fmt::format("{}", limit),
                {"%1 is no limit for check passes", {fmt::format("{}", limit)}}, "0 to 50");
  return {};
}

}  // namespace

Result<EvenPasses> passesUntilEven(const SettlingModel& model, const TighteningPlan& tightening,
                                   const std::vector<int>& repeatedOrder, double share, int limit) {
  CW_CHECK(checkGoal(share, limit));
  TighteningPlan longest = tightening;
  longest.passes.insert(longest.passes.end(), static_cast<std::size_t>(limit), {1, repeatedOrder});
  const auto planned = static_cast<int>(tightening.passes.size());
  SettlingSprings springs(model);
  EvenPasses out;
  int turned = 0;
  CW_CHECK(tighten(springs, longest, [&](int pass, int, bool) {
    if (++turned % springs.bolts() != 0 || pass < planned) return true;
    out.repeats = pass - planned;
    out.worstShort = worstShort(springs, tightening);
    out.reached = out.worstShort <= share;
    return !out.reached;
  }));
  out.loads = springs.loads();
  return out;
}

}  // namespace cw

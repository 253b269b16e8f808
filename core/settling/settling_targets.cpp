#include "core/settling/settling_targets.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/settling/settling_steps.h"

namespace cw {
namespace {

constexpr double kEvenEnough = 0.002;
constexpr double kLeastShare = 0.02;

/// Raises every bolt's target by what it lacks of the common one; returns the worst lack as a share.
double correct(TighteningPlan& tightening, const SettlingSprings& springs, Force common, double relaxation) {
  double worst = 0;
  for (int i = 0; i < springs.bolts(); ++i) {
    const Force lack = common - springs.load(i);
    worst = std::max(worst, std::abs(lack / common));
    Force& own = tightening.targets[static_cast<std::size_t>(i)];
    own = std::max(kLeastShare * common, own + relaxation * lack);
  }
  return worst;
}

Result<void> checkBearable(const std::vector<Force>& targets, Force most) {
  for (std::size_t i = 0; i < targets.size(); ++i)
    if (targets[i] > most)
      return fail(ErrorCode::OutOfRange, fmt::format("bolt {}", i + 1),
                  fmt::format("{:.0f} N", targets[i].si()),
                  {"one even pass would need %1 N on this bolt", {fmt::format("{:.0f}", targets[i].si())}},
                  {"at most %1 N; tighten in several passes instead", {fmt::format("{:.0f}", most.si())}});
  return {};
}

}  // namespace

Result<std::vector<Force>> onePassTargets(const SettlingModel& model, const OnePass& pass) {
  const std::vector<Force> common(model.bolts.size(), pass.target);
  TighteningPlan tightening{common, pass.snugShare, {{1, pass.order}}};
  const int exact = model.boltCount() + 10;
  for (int round = 0; round < 4 * exact; ++round) {
    SettlingSprings springs(model);
    const std::vector<Force> tried = tightening.targets;
    CW_CHECK(tighten(springs, tightening, [](int, int, bool) { return true; }));
    if (correct(tightening, springs, pass.target, round < exact ? 1 : 0.5) > kEvenEnough) continue;
    CW_CHECK(checkBearable(tried, pass.most));
    return tried;
  }
  return fail(ErrorCode::OutOfRange, "targets", "",
              "no targets were found that leave all bolts even after one pass",
              "several passes with one target");
}

}  // namespace cw

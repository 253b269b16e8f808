#include "core/settling/settling_trials.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "core/settling/settling_steps.h"

namespace cw {
namespace {

Result<void> checkScatter(const FrictionScatter& scatter) {
  if (!(scatter.deviation >= 0 && scatter.deviation <= 0.5))
    return fail(ErrorCode::OutOfRange, "scatter.deviation", fmt::format("{:g}", scatter.deviation),
                {"a friction scatter of %1 cannot be tried", {fmt::format("{:g}", scatter.deviation)}},
                "0 to 0.5");
  if (scatter.trials < 1 || scatter.trials > 100000)
    return fail(ErrorCode::OutOfRange, "scatter.trials", fmt::format("{}", scatter.trials),
                {"%1 trials cannot be run", {fmt::format("{}", scatter.trials)}}, "1 to 100000");
  return {};
}

/// Normal deviates by Box and Muller's method: std::normal_distribution differs between libraries.
class Deviates {
 public:
  Deviates(std::uint64_t seed, int trial) {
    std::seed_seq mixed{static_cast<std::uint32_t>(seed), static_cast<std::uint32_t>(seed >> 32),
                        static_cast<std::uint32_t>(trial)};
    m_engine.seed(mixed);
  }

  /// About 0, with deviation 1, within ±3.
  double next() {
    for (;;) {
      const double radius = std::sqrt(-2 * std::log(1 - unit()));
      const double deviate = radius * std::cos(2 * kPi * unit());
      if (std::abs(deviate) <= 3) return deviate;
    }
  }

 private:
  double unit() { return static_cast<double>(m_engine() >> 11) * 0x1p-53; }
  std::mt19937_64 m_engine;
};

TighteningPlan withFriction(const TighteningPlan& tightening, int bolts, const FrictionScatter& scatter,
                            int trial) {
  TighteningPlan own = tightening;
  own.targets.clear();
  Deviates deviates(scatter.seed, trial);
  for (int i = 0; i < bolts; ++i)
    own.targets.push_back(std::max(0.02, 1 + scatter.deviation * deviates.next()) * tightening.target(i));
  return own;
}

/// The value that `share` of the sorted values lie below.
double quantile(const std::vector<double>& sorted, double share) {
  const double at = share * static_cast<double>(sorted.size() - 1);
  const auto below = static_cast<std::size_t>(at);
  const std::size_t above = std::min(below + 1, sorted.size() - 1);
  return sorted[below] + (at - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

double meanOf(const std::vector<double>& values) {
  double sum = 0;
  for (const double value : values) sum += value;
  return sum / static_cast<double>(values.size());
}

BoltBand bandOf(std::vector<double> loads) {
  std::sort(loads.begin(), loads.end());
  const double mean = meanOf(loads);
  double squares = 0;
  for (const double load : loads) squares += (load - mean) * (load - mean);
  return {newtons(mean), newtons(std::sqrt(squares / static_cast<double>(loads.size()))),
          newtons(quantile(loads, 0.05)), newtons(quantile(loads, 0.95))};
}

double spreadOf(const std::vector<Force>& loads) {
  const auto [least, most] = std::minmax_element(loads.begin(), loads.end());
  Force mean;
  for (const Force load : loads) mean += load / static_cast<double>(loads.size());
  return (*most - *least) / mean;
}

}  // namespace

Result<FrictionTrials> frictionTrials(const SettlingModel& model, const TighteningPlan& tightening,
                                      const FrictionScatter& scatter,
                                      const std::function<void(int done)>& progress, std::stop_token stop) {
  CW_CHECK(checkScatter(scatter));
  const int bolts = model.boltCount();
  CW_CHECK(checkTightening(tightening, bolts));
  std::vector<std::vector<double>> loads(model.bolts.size());
  std::vector<double> spreads;
  const SettlingSprings fresh(model);
  SettlingSprings springs(fresh);
  FrictionTrials out;
  for (int trial = 0; trial < scatter.trials && !stop.stop_requested(); ++trial) {
    springs = fresh;
    CW_CHECK(tighten(springs, withFriction(tightening, bolts, scatter, trial),
                     [&](int, int, bool) { return !stop.stop_requested(); }));
    if (stop.stop_requested()) break;
    const std::vector<Force> after = springs.loads();
    for (std::size_t i = 0; i < after.size(); ++i) loads[i].push_back(after[i].si());
    spreads.push_back(spreadOf(after));
    ++out.done;
    if (progress) progress(out.done);
  }
  out.complete = out.done == scatter.trials;
  if (out.done == 0) return out;
  for (auto& bolt : loads) out.bolts.push_back(bandOf(std::move(bolt)));
  std::sort(spreads.begin(), spreads.end());
  out.meanSpread = meanOf(spreads);
  out.highSpread = quantile(spreads, 0.95);
  return out;
}

}  // namespace cw

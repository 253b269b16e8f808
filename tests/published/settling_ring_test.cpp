// The tightening algebra with hysteresis, lift-off and slack bolts against the outputs of an independent
// program that iterates every step by Newton's method (tests/data/settling/ring_cases.json).
#include <gtest/gtest.h>

#include <cmath>

#include "core/pattern/order.h"
#include "core/settling/settling_course.h"
#include "core/settling/settling_loosening.h"
#include "core/settling/settling_targets.h"
#include "tests/published/settling_ring_beam.h"

namespace cw {
namespace {

using nlohmann::json;

/// "30/60/100+2c": shares in percent of the pattern passes, then circular passes at full target.
std::vector<SettlingPass> passesOf(const std::string& strategy, const std::vector<int>& pattern, int bolts) {
  std::vector<SettlingPass> passes;
  if (strategy.substr(1, 4) == "x100") {
    for (char c = '0'; c < strategy[0]; ++c) passes.push_back({1, pattern});
    return passes;
  }
  const std::string staged = strategy.substr(0, strategy.find('+'));
  for (std::size_t from = 0; from < staged.size();) {
    const std::size_t to = std::min(staged.find('/', from), staged.size());
    passes.push_back({std::stod(staged.substr(from, to - from)) / 100, pattern});
    from = to + 1;
  }
  if (staged.size() < strategy.size())
    for (char c = '0'; c < strategy[staged.size() + 1]; ++c) passes.push_back({1, ringCircular(bolts)});
  return passes;
}

std::vector<int> patternOf(const json& from) {
  const int bolts = from.at("N");
  if (from.at("pattern") == "star") return ringStar(bolts);
  if (from.at("pattern") == "circular") return ringCircular(bolts);
  const Order quadrant =
      tighteningOrder(Layout{Circle{static_cast<std::size_t>(bolts), millimetres(200)}}, OrderRule::Quadrant)
          .value();
  return {quadrant.positions.begin(), quadrant.positions.end()};
}

struct Difference {
  double worst = 0;
  double sum = 0;
  int count = 0;
};

void compare(const json& from, Difference& out) {
  const int bolts = from.at("N");
  const Force target = ringTarget(bolts);
  const auto course =
      settle(ringBeamModel(bolts, from.at("gasket")),
             {{target}, ringCases().at("snug"), passesOf(from.at("strategy"), patternOf(from), bolts)});
  ASSERT_TRUE(course) << sentence(course.error());
  for (const auto& pass : from.at("passes")) {
    const auto& ours = course->passes.at(std::size_t(pass.at("pass")) - 1).loads;
    for (std::size_t i = 0; i < ours.size(); ++i) {
      const double difference = std::abs(ours[i] / target - double(pass.at("F").at(i)));
      out.worst = std::max(out.worst, difference);
      out.sum += difference;
      ++out.count;
    }
  }
}

TEST(SettlingAgainstRingBeams, EveryLoadOfEveryCaseAgrees) {
  for (const auto& from : ringCases().at("cases")) {
    Difference difference;
    compare(from, difference);
    EXPECT_LT(difference.worst, 1e-3) << from.at("N") << from.at("gasket") << from.at("pattern")
                                      << from.at("strategy") << " mean " << difference.sum / difference.count;
  }
}

TEST(SettlingAgainstRingBeams, OnePassTargetsAgree) {
  for (const auto& from : ringCases().at("inverse")) {
    const int bolts = from.at("N");
    const Force target = ringTarget(bolts);
    const auto ours = onePassTargets(ringBeamModel(bolts, from.at("gasket")),
                                     {target, patternOf(from), ringCases().at("snug"), 5 * target});
    ASSERT_TRUE(ours) << sentence(ours.error());
    for (std::size_t i = 0; i < ours->size(); ++i)  // theirs stop at 0.5 % of target
      EXPECT_NEAR((*ours)[i] / target, double(from.at("targets_by_bolt").at(i)), 0.03)
          << bolts << from.at("gasket") << from.at("pattern") << " bolt " << i + 1;
  }
}

// Theirs forget, from step to step, that the gasket was pressed further under the bolts that rose.
TEST(SettlingAgainstRingBeams, LooseningOverloadsAgree) {
  for (const auto& from : ringCases().at("loosening")) {
    const int bolts = from.at("N");
    const auto order = patternOf(from);
    std::vector<LooseningRound> rounds{{0, order}};
    if (from.at("steps") == "70, 40, 0 %") rounds = {{0.7, order}, {0.4, order}, {0, order}};
    const auto ours = loosen(ringBeamModel(bolts, from.at("gasket")), {ringTarget(bolts)}, rounds);
    ASSERT_TRUE(ours) << sentence(ours.error());
    EXPECT_NEAR(ours->highestShare, double(from.at("highest_bolt_over_start")), 0.03) << from.dump();
    EXPECT_EQ(ours->highestStep, int(from.at("at_step"))) << from.dump();
  }
}

}  // namespace
}  // namespace cw

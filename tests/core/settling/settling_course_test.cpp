#include "core/settling/settling_course.h"

#include <gmock/gmock.h>

#include <cmath>

#include "core/settling/settling_loosening.h"
#include "core/settling/settling_passes.h"
#include "core/settling/settling_targets.h"
#include "core/settling/settling_trials.h"
#include "tests/core/settling/settling_joints.h"

namespace cw {
namespace {

const std::vector<int> kStar{1, 5, 3, 7, 2, 6, 4, 8};

/// C = [[4, 1], [1, 4]] nm/N, bolts of 0.5 GN/m.
SettlingModel twoBolts() {
  SettlingModel model;
  model.flexibility = Flexibility(2);
  for (int i = 0; i < 2; ++i)
    for (int j = 0; j < 2; ++j) model.flexibility.set(i, j, metresPerNewton(i == j ? 4e-9 : 1e-9));
  model.bolts.assign(2, newtonsPerMetre(0.5e9));
  return model;
}

TEST(Settle, TwoBoltsAsByHand) {
  const auto course = settle(twoBolts(), {{kilonewtons(10)}, 0, {{1, {1, 2}}, {1, {1, 2}}}});
  // -0.5·1·10/(1 + 0.5·4) = -1.6667 kN on the first; then +1.6667 costs the second 0.27778 kN.
  EXPECT_NEAR(course->steps[1].loads[0].si(), 8333.33, 0.01);
  EXPECT_NEAR(course->steps[2].loads[1].si(), 9722.22, 0.01);
  EXPECT_NEAR(course->steps[3].loads[0].si(), 9953.70, 0.01);
  EXPECT_EQ(course->passes.size(), 2u);
  EXPECT_NEAR(course->passes[0].spread, 1666.67 / 9166.67, 1e-6);
}

TEST(Settle, LeavesABoltAloneThatCarriesItsShare) {
  const auto course = settle(twoBolts(), {{kilonewtons(10)}, 0, {{1, {1, 2}}, {0.5, {1, 2}}}});
  EXPECT_FALSE(course->steps[2].moved);
  EXPECT_EQ(course->steps[2].loads, course->steps[1].loads);
}

TEST(Settle, EveryJustTightenedBoltCarriesItsShareExactly) {
  const auto model = *settlingModel(oneWay(ringJoint()));
  const auto course = settle(model, {{kilonewtons(50)}, 0.03, {{0.3, kStar}, {1, kStar}}});
  for (const SettlingStep& step : course->steps)
    if (step.moved) {
      EXPECT_NEAR(step.loads[std::size_t(step.bolt) - 1].si(), step.pass == 1 ? 15e3 : 50e3, 1e-3);
    }
}

TEST(Settle, BoltsPullAndNeverPushWhenTheyGoSlack) {
  SettlingJoint joint = oneWay(ringJoint());
  partOf(joint).plate.gasketStiffness = newtonsPerMetre(1e8);
  const auto course = settle(*settlingModel(joint), onePass(kStar, 0.03));
  bool slack = false;
  for (const SettlingStep& step : course->steps)
    for (const Force load : step.loads) {
      EXPECT_GE(load, newtons(-1e-6));
      slack |= load < newtons(1);
    }
  EXPECT_TRUE(slack);  // else the test shows nothing
}

TEST(Settle, TurningTheOrderRoundTheCircleTurnsTheLoads) {
  const auto model = *settlingModel(oneWay(ringJoint()));
  const auto one = settle(model, onePass(kStar, 0.03));
  std::vector<int> turned;
  for (const int bolt : kStar) turned.push_back(bolt % 8 + 1);
  const auto other = settle(model, onePass(turned, 0.03));
  for (std::size_t i = 0; i < 8; ++i)
    EXPECT_NEAR(one->passes[0].loads[i].si(), other->passes[0].loads[(i + 1) % 8].si(), 1) << i;
}

TEST(Settle, AStiffPartOnItsGasketKeepsTheLoadOfItsOppositeBolt) {
  SettlingJoint joint = ringJoint(2);  // opposite bolts tilt a rigid ring: what one presses, the other lifts
  partOf(joint).plate.plate.modulus = gigapascals(1e6);
  const auto course = settle(*settlingModel(joint), onePass({1, 2}));
  const double bed = 1e9;
  const double arm = 95e-3;
  const double radius2 = (62e-3 * 62e-3 + 80e-3 * 80e-3) / 4;  // gasket's radius of gyration about a diameter
  const double across = (1 - arm * arm / radius2) / bed;
  const double at = (1 + arm * arm / radius2) / bed;
  EXPECT_NEAR(course->passes[0].loads[0] / kilonewtons(50), 1 - 3.8e8 * across / (1 + 3.8e8 * at), 2e-3);
}

TEST(Settle, TheStarTiltsTheFacesLessThanGoingRound) {
  const auto model = *settlingModel(oneWay(ringJoint()));
  const auto star = settle(model, onePass(kStar, 0.03));
  const auto round = settle(model, onePass(circular(8), 0.03));
  EXPECT_LT(star->passes[0].worstTilt, round->passes[0].worstTilt);
  EXPECT_GT(star->passes[0].spread, round->passes[0].spread);
}

TEST(Settle, AnEvenTwoWayGasketNeedsNoCells) {
  SettlingJoint cut = ringJoint();
  partOf(cut).answer = {1 + 1e-12, false};
  const auto cells = *settlingModel(cut);
  ASSERT_FALSE(cells.cells.empty());
  const auto whole = settle(*settlingModel(ringJoint()), onePass(kStar));
  const auto pieces = settle(cells, onePass(kStar));
  for (std::size_t i = 0; i < 8; ++i)
    EXPECT_NEAR(whole->passes[0].loads[i].si(), pieces->passes[0].loads[i].si(), 10) << i;
}

TEST(PassesUntilEven, MorePassesComeCloser) {
  const auto model = *settlingModel(ringJoint());
  const auto rough = passesUntilEven(model, onePass(kStar), circular(8), 0.4, 20);
  const auto fine = passesUntilEven(model, onePass(kStar), circular(8), 0.02, 20);
  ASSERT_TRUE(rough && fine);
  EXPECT_TRUE(rough->reached);
  EXPECT_TRUE(fine->reached);
  EXPECT_LT(rough->repeats, fine->repeats);
  EXPECT_LE(fine->worstShort, 0.02);
  const auto too = passesUntilEven(model, onePass(kStar), circular(8), 0.02, fine->repeats - 1);
  EXPECT_FALSE(too->reached);
  EXPECT_EQ(too->repeats, fine->repeats - 1);
}

TEST(PassesUntilEven, CountsNoneWhereOnePassIsEnough) {
  const auto none = passesUntilEven(*settlingModel(ringJoint()), onePass(kStar), circular(8), 0.99, 5);
  EXPECT_TRUE(none->reached);
  EXPECT_EQ(none->repeats, 0);
}

TEST(OnePassTargets, LeaveEveryBoltAtTheTarget) {
  const auto model = *settlingModel(oneWay(ringJoint()));
  const OnePass pass{kilonewtons(50), kStar, 0.03, kilonewtons(500)};
  const auto targets = onePassTargets(model, pass);
  ASSERT_TRUE(targets) << sentence(targets.error());
  const auto course = settle(model, {*targets, 0.03, {{1, kStar}}});
  for (const Force load : course->passes[0].loads) EXPECT_NEAR(load.si(), 50e3, 0.002 * 50e3);
}

TEST(OnePassTargets, AreRefusedWhereABoltWouldBeOverloaded) {
  const auto model = *settlingModel(ringJoint());
  const auto targets = onePassTargets(model, {kilonewtons(50), kStar, 0, kilonewtons(60)});
  ASSERT_FALSE(targets);
  EXPECT_THAT(sentence(targets.error()), testing::HasSubstr("at most 60000 N; tighten in several passes"));
}

TEST(Loosen, StagesKeepTheOthersFromRisingFar) {
  const auto model = *settlingModel(oneWay(ringJoint()));
  const auto atOnce = loosen(model, {kilonewtons(50)}, {{0, kStar}});
  const auto staged = loosen(model, {kilonewtons(50)}, {{0.7, kStar}, {0.4, kStar}, {0, kStar}});
  ASSERT_TRUE(atOnce && staged);
  EXPECT_GT(atOnce->highestShare, 1.1);
  EXPECT_LT(staged->highestShare, atOnce->highestShare);
  for (const Force load : atOnce->steps.back().loads) EXPECT_EQ(load, Force());
}

TEST(FrictionTrials, TheSameSeedGivesTheSameBands) {
  const auto model = *settlingModel(ringJoint());
  const auto one = frictionTrials(model, onePass(kStar), {0.1, 20, 7});
  const auto again = frictionTrials(model, onePass(kStar), {0.1, 20, 7});
  const auto other = frictionTrials(model, onePass(kStar), {0.1, 20, 8});
  EXPECT_EQ(one->bolts[0].mean, again->bolts[0].mean);
  EXPECT_NE(one->bolts[0].mean, other->bolts[0].mean);
}

TEST(FrictionTrials, WithoutScatterAllTrialsAreThePrediction) {
  const auto model = *settlingModel(ringJoint());
  const auto trials = frictionTrials(model, onePass(kStar), {0, 3, 1});
  const auto course = settle(model, onePass(kStar));
  for (std::size_t i = 0; i < 8; ++i) {
    EXPECT_NEAR(trials->bolts[i].mean.si(), course->passes[0].loads[i].si(), 1e-6);
    EXPECT_NEAR(trials->bolts[i].deviation.si(), 0, 1e-6);
  }
  EXPECT_NEAR(trials->highSpread, course->passes[0].spread, 1e-12);
}

TEST(FrictionTrials, TheLastBoltKeepsTheScatterOfItsFriction) {
  const auto trials = frictionTrials(*settlingModel(ringJoint()), onePass(kStar), {0.1, 4000, 1});
  const BoltBand& last = trials->bolts[7];
  EXPECT_NEAR(last.mean / kilonewtons(50), 1, 0.01);
  EXPECT_NEAR(last.deviation / kilonewtons(50), 0.1, 0.005);  // cutting at 3 deviations takes 1.4 % off
  EXPECT_NEAR(last.low / kilonewtons(50), 1 - 1.645 * 0.1, 0.01);
}

TEST(FrictionTrials, StopAtOnceAndKeepWhatWasDone) {
  std::stop_source stop;
  int told = 0;
  const auto trials = frictionTrials(
      *settlingModel(ringJoint()), onePass(kStar), {0.1, 1000, 1},
      [&](int done) {
        told = done;
        if (done == 5) stop.request_stop();
      },
      stop.get_token());
  EXPECT_EQ(told, 5);
  EXPECT_EQ(trials->done, 5);
  EXPECT_FALSE(trials->complete);
  EXPECT_EQ(trials->bolts.size(), 8u);
}

TEST(FrictionTrials, RefuseScattersOutsideTheirLimits) {
  const auto model = *settlingModel(ringJoint());
  EXPECT_EQ(frictionTrials(model, onePass(kStar), {0.6, 10, 1}).error().code, ErrorCode::OutOfRange);
  EXPECT_EQ(frictionTrials(model, onePass(kStar), {0.1, 0, 1}).error().code, ErrorCode::OutOfRange);
}

}  // namespace
}  // namespace cw

#include <gtest/gtest.h>

#include "core/joint/setting.h"
#include "core/joint/tool_fitness.h"
#include "tests/core/joint/fasteners.h"

namespace cw {
namespace {

using namespace testing_joint;

const Lever kInLine{inches(10), inches(3), degrees(0)};

TorqueTarget target(double low, double aim, double high) {
  TorqueTarget made;
  made.aim = newtonMetres(aim);
  made.tolerance = {newtonMetres(low), newtonMetres(high)};
  return made;
}

TorqueTool wrench(const char* low, const char* high, double deviation) {
  TorqueTool tool;
  tool.id = "T-1";
  tool.scales = {{torque(low), torque(high), torque("1 N.m")}};
  tool.deviation = deviation;
  return tool;
}

TEST(Adapter, RefusesALengthThatNobodyTurns) {
  for (const Lever& lever : {Lever{metres(11), millimetres(75), {}}, Lever{millimetres(250), metres(11), {}}})
    EXPECT_THAT(settingFor(newtonMetres(40), lever),
                FailsWith(ErrorCode::OutOfRange, testing::HasSubstr("to 10 m")));
}

TEST(Adapter, GoesThereAndBackAtAnyAngle) {
  for (double angle : {0.0, 30.0, 45.0, 90.0, 120.0, 180.0}) {
    const Lever lever{millimetres(250), millimetres(75), degrees(angle)};
    const Torque setting = settingFor(newtonMetres(40), lever).value().value;
    EXPECT_THAT(appliedBy(setting, lever).value().value, IsNear(newtonMetres(40), newtonMetres(1e-9)));
    EXPECT_EQ(setting < newtonMetres(40), angle < 90) << angle;
  }
}

TEST(Adapter, SquareChangesNothing) {
  const Lever square{inches(10), inches(3), degrees(90)};
  EXPECT_EQ(settingFor(newtonMetres(40), square).value().value, newtonMetres(40));
}

TEST(Adapter, RefusesWhatTurnsNothing) {
  EXPECT_EQ(refusal(settingFor(newtonMetres(40), {millimetres(200), millimetres(200), degrees(180)})),
            "adapter offset: an adapter of 200\u202fmm toward the handle of a 200\u202fmm wrench turns "
            "nothing; turn "
            "the adapter outward or square.");
  EXPECT_EQ(refusal(settingFor(newtonMetres(40), {millimetres(200), millimetres(50), degrees(181)})),
            "adapter angle: 181° is no angle of an adapter; give 0° in line, 90° square, up to 180° toward "
            "the handle.");
  EXPECT_FALSE(settingFor(newtonMetres(40), {millimetres(0), millimetres(50), degrees(0)}).has_value());
}

TEST(Prevailing, FollowsTheNamedRule) {
  const auto at = [](double prevailing, PrevailingRule rule) {
    return withPrevailing(newtonMetres(30), newtonMetres(prevailing), rule).value();
  };
  EXPECT_EQ(at(4, PrevailingRule::None), newtonMetres(30));
  EXPECT_EQ(at(4, PrevailingRule::AlwaysAdd), newtonMetres(34));
  EXPECT_EQ(at(9.9, PrevailingRule::AddFromOneThird), newtonMetres(30));
  EXPECT_EQ(at(10, PrevailingRule::AddFromOneThird), newtonMetres(40));
}

TEST(Prevailing, MoreThanTheTorqueIsRefused) {
  EXPECT_FALSE(withPrevailing(newtonMetres(3), newtonMetres(4), PrevailingRule::AlwaysAdd).has_value());
  EXPECT_FALSE(tighteningPart(newtonMetres(3), newtonMetres(3)).has_value());
}

TEST(Setting, RoundsToAMarkInsideTheTolerance) {
  // 30 N·m, 3 in adapter in line on a 10 in wrench: 30·10/13 = 23.08 N·m = 17.02 ft·lbf.
  const auto set = wrenchSetting(target(28, 30, 32), kInLine, torque("1 ft.lbf")).value().value;
  EXPECT_EQ(codeText(set.setting), "17 lbf.ft");
  EXPECT_THAT(set.exact, IsNear(newtonMetres(23.0769), newtonMetres(1e-3)));
  EXPECT_THAT(set.applied, IsNear(newtonMetres(29.96), newtonMetres(0.01)));
}

TEST(Setting, RefusesAScaleWithoutAMarkInsideTheTolerance) {
  EXPECT_FALSE(wrenchSetting(target(29.5, 30, 30.5), std::nullopt, torque("20 N.m")).has_value());
}

TEST(Setting, AddsPrevailingTorqueToBothEnds) {
  TorqueTarget locked = target(27, 30, 33);
  locked.prevailing = newtonMetres(5);
  locked.rule = PrevailingRule::AlwaysAdd;
  const auto set = wrenchSetting(locked, std::nullopt, torque("1 N.m")).value().value;
  EXPECT_EQ(set.setting.digits, "35");
  EXPECT_EQ(set.allowed, (TorqueBand{newtonMetres(32), newtonMetres(38)}));
}

TEST(Setting, RefusesAnAimOutsideItsTolerance) {
  EXPECT_FALSE(wrenchSetting(target(31, 30, 32), std::nullopt, torque("1 N.m")).has_value());
}

TEST(ToolFitness, StatesTheRatioAndWarnsBelowTwo) {
  const auto set = wrenchSetting(target(27, 30, 33), std::nullopt, torque("1 N.m")).value().value;
  const ToolFitness good = toolFitness(wrench("5 N.m", "50 N.m", 0.04), set);
  EXPECT_NEAR(good.ratio, 2.5, 1e-9);
  EXPECT_TRUE(good.findings.empty());
  const ToolFitness poor = toolFitness(wrench("5 N.m", "50 N.m", 0.06), set);
  ASSERT_EQ(poor.findings.size(), 1U);
  EXPECT_EQ(poor.findings[0].code, "deviation-ratio-low");
  EXPECT_TRUE(poor.fits());
}

TEST(ToolFitness, RefusesADeviationThatAloneLeavesTheTolerance) {
  const auto set = wrenchSetting(target(29, 30, 31), std::nullopt, torque("1 N.m")).value().value;
  const ToolFitness fitness = toolFitness(wrench("5 N.m", "50 N.m", 0.04), set);
  EXPECT_FALSE(fitness.fits());
  EXPECT_EQ(fitness.findings[0].code, "deviation-exceeds-tolerance");
}

TEST(ToolFitness, IsJudgedOnTheSettingNotOnTheTorque) {
  // 60 N·m at the fastener is out of a 50 N·m wrench's range; with the adapter it is set to 46 N·m.
  const auto set = wrenchSetting(target(50, 60, 70), kInLine, torque("1 N.m")).value().value;
  EXPECT_TRUE(toolFitness(wrench("5 N.m", "50 N.m", 0.04), set).fits());
  const auto direct = wrenchSetting(target(50, 60, 70), std::nullopt, torque("1 N.m")).value().value;
  EXPECT_EQ(toolFitness(wrench("5 N.m", "50 N.m", 0.04), direct).findings[0].code, "setting-out-of-range");
}

}  // namespace
}  // namespace cw

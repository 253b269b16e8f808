#include "core/joint/method.h"

#include <gtest/gtest.h>

#include "core/joint/structural.h"
#include "tests/core/joint/fasteners.h"

namespace cw {
namespace {

using namespace testing_joint;

const TorqueBand kTolerance{newtonMetres(27), newtonMetres(33)};
const TorqueAngleWindowMethod kWindow{newtonMetres(10), newtonMetres(30), degrees(40), degrees(90)};

std::vector<std::string> codes(const TighteningMethod& method, const MethodReading& reading) {
  std::vector<std::string> out;
  for (const Finding& finding : judgeReading(method, reading, kTolerance)) out.push_back(finding.code);
  return out;
}

TEST(Method, WindowWantsTorqueAndAngle) {
  EXPECT_THAT(codes(kWindow, {newtonMetres(30), degrees(60)}), testing::IsEmpty());
  EXPECT_THAT(codes(kWindow, {newtonMetres(30), degrees(20)}), testing::ElementsAre("angle-low"));
  EXPECT_THAT(codes(kWindow, {newtonMetres(30), degrees(120)}), testing::ElementsAre("angle-high"));
  EXPECT_THAT(codes(kWindow, {newtonMetres(40), std::nullopt}),
              testing::ElementsAre("torque-out-of-tolerance", "reading-missing"));
}

TEST(Method, TurnOfNutWantsOnlyTheAngle) {
  const TurnOfNutMethod method{newtonMetres(50), degrees(120), degrees(30)};
  EXPECT_THAT(codes(method, {std::nullopt, degrees(145)}), testing::IsEmpty());
  EXPECT_THAT(codes(method, {std::nullopt, degrees(151)}), testing::ElementsAre("angle-high"));
  EXPECT_FALSE(mayRetorque(method));
}

TEST(Method, BackingOffAllowsUpToTheMaximum) {
  const SeatBackOffMethod method{newtonMetres(50), degrees(90), newtonMetres(30), newtonMetres(45)};
  EXPECT_THAT(codes(method, {newtonMetres(44), std::nullopt}), testing::IsEmpty());
  EXPECT_THAT(codes(method, {newtonMetres(46), std::nullopt}),
              testing::ElementsAre("torque-out-of-tolerance"));
}

TEST(Method, RefusesValuesThatContradictEachOther) {
  EXPECT_TRUE(check(kWindow).has_value());
  EXPECT_FALSE(check(TorqueMethod{newtonMetres(0)}).has_value());
  EXPECT_FALSE(
      check(TorqueAngleWindowMethod{newtonMetres(30), newtonMetres(30), degrees(1), degrees(2)}).has_value());
  EXPECT_FALSE(
      check(TorqueAngleWindowMethod{newtonMetres(3), newtonMetres(30), degrees(2), degrees(2)}).has_value());
  EXPECT_FALSE(check(TurnOfNutMethod{newtonMetres(5), degrees(721), degrees(5)}).has_value());
  EXPECT_FALSE(check(SeatBackOffMethod{newtonMetres(50), degrees(90), newtonMetres(30), newtonMetres(29)})
                   .has_value());
}

TEST(Structural, TurnsGrowWithLengthAndSlope) {
  const Thread bolt = thread("3/4-10");
  EXPECT_THAT(turnFromSnug(inches(3), bolt, SlopedFaces::None).value(), IsNear(degrees(120), degrees(1e-9)));
  EXPECT_THAT(turnFromSnug(inches(3.1), bolt, SlopedFaces::None).value(),
              IsNear(degrees(180), degrees(1e-9)));
  EXPECT_FALSE(turnFromSnug(inches(9.1), bolt, SlopedFaces::None).has_value());
  EXPECT_FALSE(combinedMethodTurn(millimetres(121), thread("M12")).has_value());
}

}  // namespace
}  // namespace cw

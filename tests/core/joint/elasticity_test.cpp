#include <gtest/gtest.h>

#include "core/joint/bolt_stiffness.h"
#include "core/joint/losses.h"
#include "core/joint/member_stiffness.h"
#include "tests/core/joint/fasteners.h"

namespace cw {
namespace {

using namespace testing_joint;

const JointStiffness kJoint{newtonsPerMetre(4e8), newtonsPerMetre(1.2e9)};

TEST(BoltStiffness, OfOneSectionIsAreaTimesModulusOverLength) {
  const BoltGrip grip{millimetres(30), millimetres(0), squareMillimetres(100), squareMillimetres(80),
                      gigapascals(200)};
  EXPECT_NEAR(boltStiffness(grip).value().value.si(), 100e-6 * 200e9 / 0.03, 1);
}

TEST(BoltStiffness, RefusesABoltWithoutLength) {
  EXPECT_FALSE(
      boltStiffness({{}, {}, squareMillimetres(100), squareMillimetres(80), gigapascals(200)}).has_value());
}

TEST(MemberStiffness, TwoHalvesOfAConeAreHalfAsStiffAsOne) {
  const Stiffness one =
      frustumStiffness({millimetres(10), millimetres(15), gigapascals(205)}, millimetres(10)).value().value;
  EXPECT_NEAR(inSeries({one, one}).value() / one, 0.5, 1e-12);
}

TEST(MemberStiffness, SplittingAFrustumChangesNothing) {
  const Length d = millimetres(10), start = millimetres(15);
  const Stress e = gigapascals(205);
  const Length middle = start + 2 * millimetres(4) * std::tan(degrees(30).si());
  const Stiffness whole = frustumStiffness({millimetres(10), start, e}, d).value().value;
  const Stiffness upper = frustumStiffness({millimetres(4), start, e}, d).value().value;
  const Stiffness lower = frustumStiffness({millimetres(6), middle, e}, d).value().value;
  EXPECT_NEAR(inSeries({upper, lower}).value() / whole, 1, 1e-12);
}

TEST(MemberStiffness, RefusesAConeNarrowerThanTheBolt) {
  EXPECT_FALSE(
      frustumStiffness({millimetres(10), millimetres(10), gigapascals(205)}, millimetres(10)).has_value());
  EXPECT_FALSE(inSeries({}).has_value());
}

TEST(JointConstant, SharesAWorkingLoad) {
  const double c = jointConstant(kJoint.bolt, kJoint.members).value().value;
  EXPECT_DOUBLE_EQ(c, 0.25);
  const WorkingLoads loads = underLoad(kilonewtons(20), kilonewtons(8), c);
  EXPECT_THAT(loads.bolt, IsNear(kilonewtons(22), newtons(1e-6)));
  EXPECT_THAT(loads.bolt - loads.members, IsNear(kilonewtons(8), newtons(1e-6)));
}

TEST(TighteningAngle, GoesThereAndBack) {
  const Thread m12 = thread("M12");
  const Angle turn = angleAfterSnug(kilonewtons(40), kilonewtons(5), kJoint, m12).value().value;
  EXPECT_THAT(loadAfterAngle(turn, kilonewtons(5), kJoint, m12).value().value,
              IsNear(kilonewtons(40), newtons(1e-6)));
  EXPECT_FALSE(angleAfterSnug(kilonewtons(4), kilonewtons(5), kJoint, m12).has_value());
  EXPECT_FALSE(loadAfterAngle(degrees(3600), kilonewtons(5), kJoint, m12).has_value());
}

TEST(Losses, EmbeddingCountsItsFaces) {
  // VDI 2230 part 1, table 5, from memory: medium roughness, tension: 3 + 2·3 + 1·2 µm.
  const Length settled = embedding(Roughness::Medium, LoadKind::Tension, 2, 1).value().value;
  EXPECT_THAT(settled, IsNear(millimetres(0.011), millimetres(1e-9)));
  EXPECT_THAT(embeddingLoss(settled, kJoint).value().value, IsNear(newtons(3300), newtons(1e-6)));
  EXPECT_FALSE(embedding(Roughness::Fine, LoadKind::Shear, -1, 1).has_value());
}

TEST(Losses, WarmAluminiumOnASteelBoltClampsHarder) {
  const auto change = [](double kelvin) {
    return thermalChange(millimetres(40), TemperatureDifference::si(kelvin), {11.5e-6, 23e-6}, kJoint)
        .value()
        .value;
  };
  EXPECT_THAT(change(60), IsNear(newtons(0.04 * 60 * 11.5e-6 * 3e8), newtons(1e-6)));
  EXPECT_THAT(change(-60) + change(60), IsNear(newtons(0), newtons(1e-9)));
  EXPECT_FALSE(thermalChange(millimetres(40), TemperatureDifference::si(10), {11.5, 23}, kJoint).has_value());
}

}  // namespace
}  // namespace cw

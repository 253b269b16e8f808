#include "core/settling/settling_check.h"

#include <gmock/gmock.h>

#include <limits>

#include "core/settling/settling_course.h"
#include "tests/core/settling/settling_joints.h"

namespace cw {
namespace {

using ::testing::HasSubstr;

constexpr double kNaN = std::numeric_limits<double>::quiet_NaN();

template <class Change>
std::string refusal(SettlingJoint joint, Change change) {
  change(joint);
  const auto checked = checkJoint(joint);
  return checked ? "accepted" : sentence(checked.error());
}

template <class Change>
std::string tighteningRefusal(Change change) {
  TighteningPlan tightening = onePass({1, 5, 3, 7, 2, 6, 4, 8});
  change(tightening);
  const auto checked = checkTightening(tightening, 8);
  return checked ? "accepted" : sentence(checked.error());
}

TEST(CheckJoint, AcceptsTheSampleJoints) {
  EXPECT_TRUE(checkJoint(ringJoint()));
  EXPECT_TRUE(checkJoint(coverJoint()));
}

TEST(CheckJoint, RefusesStiffnessesThatAreNotAboveZero) {
  EXPECT_EQ(refusal(ringJoint(), [](auto& j) { j.bolts.stiffness = {}; }),
            "bolts.stiffness: 0 N/m cannot be computed; above 0, up to 1e+15 N/m.");
  EXPECT_EQ(refusal(ringJoint(), [](auto& j) { partOf(j).plate.gasketStiffness = {}; }),
            "gasket.stiffness: a gasket stiffness of 0 N/m cannot be computed; above 0, up to 1e15 N/m.");
  EXPECT_THAT(refusal(ringJoint(), [](auto& j) { j.bolts.stiffness = newtonsPerMetre(kNaN); }),
              HasSubstr("bolts.stiffness: nan"));
}

TEST(CheckJoint, RefusesPartsThatCannotBe) {
  EXPECT_EQ(refusal(ringJoint(), [](auto& j) { partOf(j).plate.plate.thickness = millimetres(-5); }),
            "part.thickness: -5 mm is not a size of a part; 0.1 mm to 10000 mm.");
  EXPECT_THAT(refusal(ringJoint(), [](auto& j) { partOf(j).plate.plate.thickness = millimetres(kNaN); }),
              HasSubstr("part.thickness: nan mm"));
  EXPECT_THAT(refusal(ringJoint(), [](auto& j) { partOf(j).plate.plate.poisson = 0.5; }),
              HasSubstr("Poisson's ratio cannot be 0.5"));
  EXPECT_THAT(refusal(ringJoint(), [](auto& j) { partOf(j).plate.plate.modulus = {}; }),
              HasSubstr("part.modulus: 0 GPa"));
  EXPECT_THAT(refusal(ringJoint(),
                      [](auto& j) {
                        partOf(j).plate.plate.shape = Annulus{millimetres(110), millimetres(60)};
                      }),
              HasSubstr("an inner radius of 110 mm leaves no ring"));
}

TEST(CheckJoint, RefusesAGasketBiggerThanThePart) {
  EXPECT_EQ(refusal(ringJoint(),
                    [](auto& j) {
                      partOf(j).plate.gasket = Annulus{millimetres(62), millimetres(120)};
                    }),
            "gasket: the gasket reaches beyond the part; a gasket that lies wholly on the part.");
  EXPECT_THAT(
      refusal(coverJoint(),
              [](auto& j) { std::get<std::vector<Band>>(partOf(j).plate.gasket)[0].toX = millimetres(61); }),
      HasSubstr("gasket.bands[0]: the gasket reaches beyond the part"));
}

TEST(CheckJoint, RefusesBandsThatLieTwiceOrNowhere) {
  const auto withSign = [](std::size_t band, int sign) {
    return [=](SettlingJoint& j) { std::get<std::vector<Band>>(partOf(j).plate.gasket)[band].sign = sign; };
  };
  EXPECT_THAT(refusal(coverJoint(), withSign(1, 1)), HasSubstr("gasket lies twice at x = 0 mm, y = 0 mm"));
  EXPECT_THAT(refusal(coverJoint(), withSign(0, -1)), HasSubstr("cut out"));
  EXPECT_THAT(refusal(coverJoint(), withSign(1, 2)), HasSubstr("2 is no sign of a band"));
}

TEST(CheckJoint, RefusesBoltsOffThePartOrOnEachOther) {
  EXPECT_THAT(refusal(ringJoint(),
                      [](auto& j) {
                        j.bolts.places = BoltCircle{8, millimetres(1e9)};
                      }),
              HasSubstr("bolts.circle_radius: 1e+09 mm cannot be computed"));
  EXPECT_THAT(refusal(ringJoint(40), [](auto&) {}), HasSubstr("overlaps that of bolt 1"));
  EXPECT_THAT(refusal(coverJoint(),
                      [](auto& j) { std::get<std::vector<Point>>(j.bolts.places)[2].x = millimetres(kNaN); }),
              HasSubstr("bolt 3"));
  EXPECT_THAT(refusal(ringJoint(), [](auto& j) { j.bolts.hole = millimetres(18); }),
              HasSubstr("a hole of 18 mm leaves no bearing face"));
}

TEST(CheckJoint, RefusesMoreBoltsThanItsLimit) {
  EXPECT_EQ(refusal(ringJoint(129), [](auto&) {}), "bolts: 129 bolts cannot be computed; 1 to 128 bolts.");
  EXPECT_THAT(refusal(ringJoint(0), [](auto&) {}), HasSubstr("bolts: 0 bolts"));
}

TEST(CheckJoint, RefusesFlexibilitiesThatNoPartHas) {
  SettlingJoint joint = ringJoint();
  joint.bolts.places = std::vector<Point>{};
  Flexibility matrix(2);
  const auto set = [&](double a, double b, double c, double d) {
    matrix.set(0, 0, metresPerNewton(a));
    matrix.set(0, 1, metresPerNewton(b));
    matrix.set(1, 0, metresPerNewton(c));
    matrix.set(1, 1, metresPerNewton(d));
    joint.body = matrix;
    return refusal(joint, [](auto&) {});
  };
  EXPECT_EQ(set(4e-9, 1e-9, 1e-9, 4e-9), "accepted");
  EXPECT_THAT(set(4e-9, 1e-9, 2e-9, 4e-9), HasSubstr("across the diagonal"));
  EXPECT_THAT(set(4e-9, 5e-9, 5e-9, 4e-9), HasSubstr("not positive definite"));
  EXPECT_THAT(set(-4e-9, 0, 0, 4e-9), HasSubstr("not positive definite"));
  EXPECT_THAT(set(4e-9, kNaN, kNaN, 4e-9), HasSubstr("no number"));
}

TEST(CheckTightening, RefusesOrdersThatMissOrRepeatABolt) {
  EXPECT_EQ(tighteningRefusal([](auto& t) { t.passes[0].order.pop_back(); }),
            "passes[0].order: bolt 8 is missing; every bolt from 1 to 8 once.");
  EXPECT_EQ(tighteningRefusal([](auto& t) { t.passes[0].order[7] = 1; }),
            "passes[0].order: bolt 1 comes twice; every bolt from 1 to 8 once.");
  EXPECT_THAT(tighteningRefusal([](auto& t) { t.passes[0].order[7] = 9; }), HasSubstr("there is no bolt 9"));
  EXPECT_THAT(tighteningRefusal([](auto& t) { t.passes[0].order[7] = 0; }), HasSubstr("there is no bolt 0"));
}

TEST(CheckTightening, RefusesSharesAndTargetsThatAreNotAboveZero) {
  EXPECT_THAT(tighteningRefusal([](auto& t) { t.passes[0].share = 0; }),
              HasSubstr("passes[0].share: 0 is no share of the target"));
  EXPECT_THAT(tighteningRefusal([](auto& t) { t.passes[0].share = kNaN; }), HasSubstr("nan"));
  EXPECT_THAT(tighteningRefusal([](auto& t) { t.snugShare = -0.1; }), HasSubstr("snug_share: -0.1"));
  EXPECT_THAT(tighteningRefusal([](auto& t) { t.targets = {newtons(-1)}; }), HasSubstr("target: -1 N"));
  EXPECT_THAT(tighteningRefusal([](auto& t) { t.targets.resize(3, newtons(1)); }),
              HasSubstr("3 targets do not fit 8 bolts"));
  EXPECT_THAT(tighteningRefusal([](auto& t) { t.passes.resize(101, t.passes[0]); }),
              HasSubstr("101 passes are too many"));
}

TEST(Settle, RefusesALiftingGasketUnderLooseBolts) {
  const auto course = settle(*settlingModel(oneWay(ringJoint())), onePass(circular(8)));
  ASSERT_FALSE(course);
  EXPECT_THAT(sentence(course.error()), HasSubstr("the part tips under the first bolt"));
}

}  // namespace
}  // namespace cw

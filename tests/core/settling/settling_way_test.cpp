#include "core/settling/settling_way.h"

#include <gmock/gmock.h>

#include "core/fastener/catalogue.h"
#include "core/settling/settling_examples.h"
#include "tests/support/matchers.h"
#include "tests/support/need.h"

namespace cw {
namespace {

TEST(SettlingWay, EveryExampleCanBeComputed) {
  for (const SettlingExample& example : settlingExamples()) {
    const auto model = settlingModel(example.joint);
    ASSERT_TRUE(model.has_value()) << sentence(model.error());
    const SettlingWay way{usualRule(*boltLayout(example.joint)), {0.3, 0.7, 1}, 0};
    const auto outcome = settleBy(*model, example.joint, way, example.target);
    ASSERT_TRUE(outcome.has_value()) << sentence(outcome.error());
    EXPECT_EQ(outcome->course.passes.size(), 3u);
    EXPECT_EQ(outcome->course.steps.size(), 3u * std::size_t(boltCount(example.joint)));
    // A round at full torque raises the least-loaded bolt: published practice, ASME PCC-1's last passes.
    EXPECT_GT(outcome->oneMore.least, outcome->course.passes.back().least);
    EXPECT_LT(outcome->oneMore.spread, outcome->course.passes.back().spread);
  }
}

TEST(SettlingWay, NumbersTheBoltsOfACircleAsTheJointDoes) {
  const SettlingExample ring = settlingExamples().front();
  const auto drawn = *places(*boltLayout(ring.joint));
  const auto computed = boltPlaces(ring.joint.bolts);
  ASSERT_EQ(drawn.size(), computed.size());
  for (std::size_t i = 0; i < drawn.size(); ++i) {
    EXPECT_NEAR(drawn[i].x.si(), computed[i].x.si(), 1e-9) << i;
    EXPECT_NEAR(drawn[i].y.si(), computed[i].y.si(), 1e-9) << i;
  }
}

TEST(SettlingWay, RefusesWhatIsNoWay) {
  const SettlingExample ring = settlingExamples().front();
  EXPECT_FALSE(tighteningBy(ring.joint, {OrderRule::Star, {}, 0}, ring.target));
  EXPECT_FALSE(tighteningBy(ring.joint, {OrderRule::Star, {3.0}, 0}, ring.target));
  EXPECT_FALSE(tighteningBy(ring.joint, {OrderRule::ArmyCircle, {1.0}, 0}, ring.target));
  EXPECT_FALSE(tighteningBy(ring.joint, {OrderRule::Star, {1.0}, 0}, newtons(0)));
}

Thread m8() {
  return shippedCatalogue().thread("M8").value();
}

TEST(CoverWith, TakesCirclesAndBoltsThatGoRoundInAnyOrder) {
  const Circle circle{6, millimetres(120), {}, 1, Direction::Clockwise};
  const FreePoints round{{{millimetres(60), millimetres(0)},
                          {millimetres(-50), millimetres(35)},
                          {millimetres(50), millimetres(35)},
                          {millimetres(-50), millimetres(-35)},
                          {millimetres(50), millimetres(-35)}}};
  for (const Layout& layout : {Layout{circle}, Layout{round}}) {
    const auto joint = coverWith(layout, m8(), "cover");
    ASSERT_THAT(joint, IsOk());
    EXPECT_EQ(boltCount(joint->joint), static_cast<int>(test::need(positions(layout)).size()));
    const auto model = settlingModel(joint->joint);
    ASSERT_THAT(model, IsOk());
    const SettlingWay way{OrderRule::Circular, {0.5, 1}, 8};
    const auto outcome = settleBy(*model, joint->joint, way, joint->target);
    ASSERT_THAT(outcome, IsOk());
    for (const Force load : outcome->course.passes.back().loads)
      EXPECT_NEAR(load / joint->target, 1, 0.1) << "eight full rounds make the loads even";
  }
}

TEST(CoverWith, RefusesBoltsThatGoRoundNothing) {
  EXPECT_THAT(coverWith(Layout{Circle{3, millimetres(80)}}, m8(), "three"),
              FailsWith(ErrorCode::OutOfRange, testing::HasSubstr("compare 4 to 128")));
  EXPECT_THAT(coverWith(Layout{Line{6, millimetres(30)}}, m8(), "line"),
              FailsWith(ErrorCode::OutOfRange, testing::HasSubstr("round a middle")));
  EXPECT_THAT(coverWith(Layout{Rows{3, 3, millimetres(40), millimetres(40)}}, m8(), "grid"),
              FailsWith(ErrorCode::OutOfRange, testing::HasSubstr("round a middle")));
}

}  // namespace
}  // namespace cw

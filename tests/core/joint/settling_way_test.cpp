#include "core/joint/settling_way.h"

#include <gmock/gmock.h>

#include "core/joint/settling_examples.h"

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

}  // namespace
}  // namespace cw

#include "core/pattern/balance.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <numeric>

#include "core/pattern/order.h"
#include "tests/core/pattern/random_layout.h"

namespace cw {
namespace {

std::vector<std::size_t> balanced(const std::vector<Point>& points) {
  return balancedOrder(aboutMiddle(points));
}

/// The same places moved, turned and, if `mirrored`, seen from behind, as somebody else would have typed
/// them.
std::vector<Point> elsewhere(const std::vector<Point>& points, bool mirrored, Random& random) {
  const View view{mirrored, degrees(between(-180, 180, random))};
  const Length right = millimetres(between(-500, 500, random)), up = millimetres(between(-500, 500, random));
  std::vector<Point> moved;
  for (const Point& point : points) {
    const Point turned = seen(point, view);
    moved.push_back({turned.x + right, turned.y + up});
  }
  return moved;
}

TEST(BalancedOrder, VisitsEachPositionOnce) {
  sweep(500, [](Random& random) {
    const auto points = randomPoints(random);
    std::vector<std::size_t> all(points.size());
    std::iota(all.begin(), all.end(), 0u);
    for (const auto& order :
         {balanced(points), centreOutOrder(aboutMiddle(points)), goingRound(aboutMiddle(points))})
      EXPECT_TRUE(std::is_permutation(order.begin(), order.end(), all.begin(), all.end()));
  });
}

TEST(BalancedOrder, StaysOnItsHolesHoweverTheyAreTurned) {
  sweep(500, [](Random& random) {
    const auto points = randomPoints(random);
    EXPECT_EQ(balanced(elsewhere(points, false, random)), balanced(points));
  });
}

TEST(BalancedOrder, StaysOnItsHolesSeenFromTheOtherSide) {
  sweep(500, [](Random& random) {
    const auto points = randomPoints(random);
    EXPECT_EQ(balanced(elsewhere(points, true, random)), balanced(points));
  });
}

TEST(BalancedOrder, IsNeverWorseBalancedThanGoingRound) {
  sweep(2000, [](Random& random) {
    const auto places = aboutMiddle(randomPoints(random));
    EXPECT_LE(worstImbalance(places, balancedOrder(places)),
              worstImbalance(places, goingRound(places)) + 1e-9);
  });
}

TEST(BalancedOrder, HalvesTheImbalanceOfGoingRoundACoverOfEightOrMore) {
  double kept = 0, round = 0;
  sweep(500, [&](Random& random) {
    const auto points = randomCover(random);
    if (points.size() < 8) return;
    const auto places = aboutMiddle(points);
    kept += worstImbalance(places, balancedOrder(places));
    round += worstImbalance(places, goingRound(places));
  });
  EXPECT_LT(kept, round / 2);
}

TEST(BalancedOrder, KeepsASquareGridInBalance) {
  for (const std::size_t side : {2u, 3u, 4u, 5u, 8u}) {
    const auto points = holes(Rows{side, side, millimetres(50), millimetres(50)});
    const auto places = aboutMiddle(*points);
    EXPECT_LE(worstImbalance(places, balancedOrder(places)), 1.0 + 1e-9) << side;
  }
}

TEST(CentreOutOrder, NeverGoesInwardOnARing) {
  const auto points = holes(ConcentricCircles{{Circle{6, millimetres(60)}, Circle{12, millimetres(120)}}});
  const auto places = aboutMiddle(*points);
  double reached = 0;
  for (const std::size_t i : centreOutOrder(places)) {
    EXPECT_GE(std::abs(places[i]), reached - 1e-9);
    reached = std::abs(places[i]);
  }
}

// Worked by hand: a unit square, 1 and 3 opposite, then 2: the sum after one and after three is one corner.
TEST(WorstImbalance, IsTheLargestSumMetOnTheWay) {
  const auto points = holes(Circle{4, millimetres(100)});
  const auto places = aboutMiddle(*points);
  EXPECT_NEAR(worstImbalance(places, std::vector<std::size_t>{0, 2, 1, 3}), 1, 1e-12);
  EXPECT_NEAR(worstImbalance(places, std::vector<std::size_t>{0, 1, 2, 3}), std::sqrt(2), 1e-12);
  EXPECT_EQ(worstImbalance(places, {}), 0);
}

TEST(GoingRound, FollowsTheNumberingOfEitherSense) {
  for (const Direction direction : {Direction::Clockwise, Direction::Anticlockwise}) {
    const auto points = holes(Circle{7, millimetres(100), degrees(20), 3, direction});
    EXPECT_THAT(goingRound(aboutMiddle(*points)), testing::ElementsAre(0, 1, 2, 3, 4, 5, 6));
  }
}

}  // namespace
}  // namespace cw

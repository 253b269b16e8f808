#include "core/pattern/several_tools.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/pattern/plane.h"
#include "tests/core/pattern/random_layout.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

std::vector<ToolStep> shared(const Layout& layout, OrderRule rule, std::size_t tools) {
  const auto order = tighteningOrder(layout, rule);
  if (!order) return {};
  return shareAmongTools(layout, *order, tools).value_or(std::vector<ToolStep>());
}

std::vector<std::size_t> visited(const std::vector<ToolStep>& steps) {
  std::vector<std::size_t> out;
  for (const ToolStep& step : steps)
    for (const auto& position : step)
      if (position) out.push_back(*position);
  return out;
}

TEST(ShareAmongTools, KeepsTwoToolsOppositeAndFourAQuarterApart) {
  const Layout flange{Circle{8, millimetres(200)}};
  EXPECT_THAT(shared(flange, OrderRule::Star, 2),
              ElementsAre(ElementsAre(1, 5), ElementsAre(3, 7), ElementsAre(2, 6), ElementsAre(4, 8)));
  EXPECT_THAT(shared(flange, OrderRule::Star, 4),
              ElementsAre(ElementsAre(1, 3, 5, 7), ElementsAre(2, 4, 6, 8)));
}

TEST(ShareAmongTools, KeepsThreeToolsAThirdApart) {
  EXPECT_THAT(
      shared({Circle{12, millimetres(200)}}, OrderRule::Star, 3),
      ElementsAre(ElementsAre(1, 5, 9), ElementsAre(4, 8, 12), ElementsAre(2, 6, 10), ElementsAre(3, 7, 11)));
}

TEST(ShareAmongTools, WorksALineFromTheMiddleOnBothSides) {
  EXPECT_THAT(shared({Line{6, millimetres(40)}}, OrderRule::CentreOut, 2),
              ElementsAre(ElementsAre(3, 4), ElementsAre(2, 5), ElementsAre(1, 6)));
}

TEST(ShareAmongTools, LetsAToolWaitWhereItsStretchIsShorter) {
  const auto steps = shared({Circle{5, millimetres(200)}}, OrderRule::Circular, 2);
  EXPECT_THAT(steps, ElementsAre(ElementsAre(1, 4), ElementsAre(2, 5), ElementsAre(3, std::nullopt)));
}

TEST(ShareAmongTools, VisitsEachPositionOnceOnAnyLayout) {
  sweep(300, [](Random& random) {
    const Layout layout{FreePoints{randomPoints(random)}};
    for (std::size_t tools = 1; tools <= 3; ++tools) {
      auto positions = visited(shared(layout, OrderRule::Balanced, tools));
      std::vector<std::size_t> all(std::get<FreePoints>(layout.shape).points.size());
      std::iota(all.begin(), all.end(), 1u);
      EXPECT_TRUE(std::is_permutation(positions.begin(), positions.end(), all.begin(), all.end()));
    }
  });
}

/// How far round the circle a position is from position 1, in turns.
double turn(const Place& first, const Place& place) {
  const double angle = -std::arg(place * std::conj(first)) / (2 * kPi);
  return angle < -1e-9 ? angle + 1 : angle;
}

TEST(ShareAmongTools, NeverLetsToolsCross) {
  for (std::size_t count = 4; count <= 64; ++count)
    for (std::size_t tools = 2; tools <= 4; ++tools) {
      const Layout layout{Circle{count, millimetres(200)}};
      const auto places = aboutMiddle(*cw::places(layout));
      for (const ToolStep& step : shared(layout, OrderRule::Star, tools)) {
        double reached = -1;
        for (const auto& position : step) {
          if (!position) continue;
          EXPECT_GT(turn(places[0], places[*position - 1]), reached) << count << " by " << tools;
          reached = turn(places[0], places[*position - 1]);
        }
      }
    }
}

TEST(ShareAmongTools, RefusesMoreToolsThanPositionsAndMoreThanFour) {
  const Layout layout{Line{2, millimetres(40)}};
  const Order order{{1, 2}};
  EXPECT_THAT(
      shareAmongTools(layout, order, 3),
      FailsWith(ErrorCode::OutOfRange, HasSubstr("3 tools are more than the 2 positions; use 2 or fewer")));
  EXPECT_THAT(shareAmongTools(layout, order, 5), FailsWith(ErrorCode::OutOfRange, HasSubstr("use 1 to 4")));
  EXPECT_THAT(shareAmongTools(layout, order, 0), FailsWith(ErrorCode::OutOfRange, HasSubstr("use 1 to 4")));
}

TEST(ShareAmongTools, RefusesAnOrderWithGaps) {
  EXPECT_THAT(shareAmongTools({Line{3, millimetres(40)}}, {{1, 3}}, 2),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("position 2 is missing")));
}

}  // namespace
}  // namespace cw

#include "core/pattern/order.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <numeric>

namespace cw {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

std::vector<std::size_t> made(const Layout& layout, OrderRule rule) {
  const auto order = tighteningOrder(layout, rule);
  return order ? order->positions : std::vector<std::size_t>();
}

std::string refusal(const Layout& layout, OrderRule rule) {
  const auto order = tighteningOrder(layout, rule);
  return order ? "none" : sentence(order.error());
}

std::vector<std::size_t> oneTo(std::size_t n) {
  std::vector<std::size_t> out(n);
  std::iota(out.begin(), out.end(), 1u);
  return out;
}

bool appliesTo(OrderRule rule, std::size_t n) {
  return rule != OrderRule::ArmyCircle || n == 12;
}

TEST(TighteningOrder, VisitsEachPositionOnceInEveryRuleFrom3To128) {
  for (const OrderRule rule : kOrderRules)
    for (std::size_t n = 3; n <= 128; ++n) {
      if (!appliesTo(rule, n)) continue;
      auto order = made({Circle{n, millimetres(500)}}, rule);
      std::sort(order.begin(), order.end());
      EXPECT_EQ(order, oneTo(n)) << name(rule) << " of " << n;
    }
}

TEST(TighteningOrder, StartsAtPositionOneOnACircle) {
  for (const OrderRule rule : kOrderRules)
    EXPECT_EQ(made({Circle{12, millimetres(500)}}, rule).front(), 1u) << name(rule);
}

TEST(TighteningOrder, DoesNotDependOnStartPhaseOrDirectionOfTheNumbering) {
  for (const OrderRule rule : kOrderRules)
    EXPECT_EQ(made({Circle{12, millimetres(500), degrees(15), 5, Direction::Anticlockwise}}, rule),
              made({Circle{12, millimetres(500)}}, rule))
        << name(rule);
}

TEST(TighteningOrder, SkipsHolesThatAreLeftOut) {
  Layout layout{Circle{8, millimetres(200)}};
  layout.leftOut = {2};  // the holes 1 3 4 5 6 7 8 are positions 1 to 7
  EXPECT_THAT(made(layout, OrderRule::Star), ElementsAre(1, 4, 2, 6, 5, 3, 7));
}

TEST(TighteningOrder, DoesConcentricCirclesFromTheInnermostOut) {
  const Layout layout{ConcentricCircles{{Circle{4, millimetres(300)}, Circle{4, millimetres(150)}}}};
  EXPECT_THAT(made(layout, OrderRule::Star), ElementsAre(5, 7, 6, 8, 1, 3, 2, 4));
}

TEST(TighteningOrder, GoesOverTheLayoutsOwnGroups) {
  Layout layout{Circle{8, millimetres(200)}};
  layout.groups = {{1, 2}, {3, 4}, {5, 6}, {7, 8}};
  EXPECT_THAT(made(layout, OrderRule::StarGrouped), ElementsAre(1, 2, 5, 6, 3, 4, 7, 8));
}

TEST(TighteningOrder, NamesAPublicationOnlyWhereItPrintsThisOrder) {
  const auto source = [](const Layout& layout, OrderRule rule) {
    return tighteningOrder(layout, rule).value_or(Order{}).provenance.source;
  };
  Layout flange{Circle{8, millimetres(200)}};
  EXPECT_THAT(source(flange, OrderRule::Star), HasSubstr("ASME PCC-1 (2000)"));
  EXPECT_THAT(source(flange, OrderRule::StarLater), HasSubstr("ASME PCC-1 (2010"));
  EXPECT_THAT(source({Circle{10, millimetres(200)}}, OrderRule::Star), HasSubstr("no published order"));
  flange.leftOut = {2};
  EXPECT_THAT(source(flange, OrderRule::Star), HasSubstr("no published order"));
}

TEST(TighteningOrder, GoesRoundAfterFour) {
  EXPECT_THAT(made({Circle{12, millimetres(200)}}, OrderRule::CircularAfterFour),
              ElementsAre(1, 7, 4, 10, 2, 3, 5, 6, 8, 9, 11, 12));
}

TEST(TighteningOrder, SpiralsOutOfASquareGrid) {
  EXPECT_THAT(made({Rows{3, 3, millimetres(50), millimetres(50)}}, OrderRule::CentreOut).front(), 5u);
}

TEST(TighteningOrder, RefusesARuleThatNeedsARing) {
  const auto at = [](double x, double y) { return Point{millimetres(x), millimetres(y)}; };
  EXPECT_THAT(refusal({Line{2, millimetres(40)}}, OrderRule::Star), HasSubstr("2 positions make none"));
  EXPECT_THAT(refusal({Line{9, millimetres(40)}}, OrderRule::Quadrant),
              HasSubstr("9 positions lie on a line"));
  EXPECT_THAT(refusal({FreePoints{{at(0, 0), at(90, 5), at(40, 70)}}}, OrderRule::Wheel),
              HasSubstr("not equally spaced on a circle; use the rule balanced"));
  EXPECT_THAT(refusal({Circle{8, millimetres(90)}}, OrderRule::ArmyCircle),
              HasSubstr("published for 12 positions, not for 8"));
}

TEST(OrderRule, IsFoundByItsName) {
  for (const OrderRule rule : kOrderRules) EXPECT_EQ(orderRule(name(rule)), rule);
  EXPECT_THAT(sentence(orderRule("zigzag").error()),
              HasSubstr("no order “zigzag”; use one of star, star-later"));
}

TEST(ReviewOrder, NamesGapsRepeatsAndStrangers) {
  const std::vector<std::size_t> order = {1, 3, 3, 9};
  std::vector<std::string> found;
  for (const Finding& finding : reviewOrder(order, 4))
    found.push_back(finding.code + " " + sentence(finding));
  EXPECT_THAT(found,
              ElementsAre("order-repeat order[2]: position 3 comes again; name each position once.",
                          "order-unknown order[3]: there is no position 9; name the labels of this layout.",
                          "order-gap order: position 2 is missing; name each position once.",
                          "order-gap order: position 4 is missing; name each position once."));
  EXPECT_TRUE(reviewOrder(oneTo(4), 4).empty());
}

}  // namespace
}  // namespace cw

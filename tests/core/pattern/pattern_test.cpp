#include "core/pattern/pattern.h"

#include <gmock/gmock.h>

#include "core/pattern/layout_json.h"

namespace cw {
namespace {

TEST(Pattern, IsTheStarOfEightUnlessToldOtherwise) {
  EXPECT_THAT(*orderLabels({}), testing::ElementsAre("1", "5", "3", "7", "2", "6", "4", "8"));
  Pattern loosening;
  loosening.loosens = true;
  EXPECT_THAT(*orderLabels(loosening), testing::ElementsAre("8", "4", "6", "2", "7", "3", "5", "1"));
}

TEST(Pattern, KeepsAnOrderByHandWithItsGapsAndSaysThemWhenAskedForPositions) {
  Pattern pattern;
  pattern.byHand = {"2", "2", "9"};
  EXPECT_THAT(*orderLabels(pattern), testing::ElementsAre("2", "2", "9"));
  ASSERT_FALSE(orderOf(pattern));
  pattern.byHand = {"8", "7", "6", "5", "4", "3", "2", "1"};
  EXPECT_THAT(orderOf(pattern)->positions, testing::ElementsAre(8, 7, 6, 5, 4, 3, 2, 1));
}

TEST(Pattern, OnPartUndoesSeen) {
  for (const bool mirrored : {false, true})
    for (const double turn : {0.0, 33.0, 90.0, -200.0}) {
      const View view{mirrored, degrees(turn)};
      const Point back = onPart(seen({millimetres(30), millimetres(-7)}, view), view);
      EXPECT_NEAR(inMillimetres(back.x), 30, 1e-9);
      EXPECT_NEAR(inMillimetres(back.y), -7, 1e-9);
    }
}

TEST(Pattern, FreedHolesAreTheSameHoles) {
  Layout layout{Circle{6, millimetres(100)}};
  layout.leftOut = {2};
  layout.labels = {LabelStyle::Own, {"a", "b", "c", "d", "e"}};
  const Layout free = *freed(layout);
  EXPECT_EQ(*positions(free), *positions(layout));
  EXPECT_TRUE(free.leftOut.empty());
}

TEST(Pattern, TakingAPositionAwayLeavesTheLabelsOfTheOthersOnTheirHoles) {
  Layout ring{Circle{4, millimetres(100)}};
  ring.labels = {LabelStyle::Own, {"a", "b", "c", "d"}};
  for (const Layout& layout : {ring, *freed(ring)}) {
    const auto before = *positions(layout);
    const auto after = *positions(withoutPosition(layout, 1));
    ASSERT_EQ(after.size(), 3u);
    EXPECT_EQ(after[0], before[0]);
    EXPECT_EQ(after[1], before[2]);
    EXPECT_EQ(after[2], before[3]);
  }
}

TEST(Pattern, NewPositionsGetLabelsThatNoneBears) {
  Layout layout{FreePoints{{{}, {millimetres(10), {}}}}};
  layout.labels = {LabelStyle::Own, {"1", "3"}};
  EXPECT_THAT(ownLabelsFor(layout, 4), testing::ElementsAre("1", "3", "2", "4"));
}

TEST(Pattern, ALayoutFileIsReadBackAsItWas) {
  Layout layout{
      FreePoints{{{millimetres(1.5), {}}, {millimetres(-4), millimetres(30)}, {{}, millimetres(7)}}}};
  layout.view = {true, degrees(45)};
  layout.outline = usualOutline(layout);
  EXPECT_EQ(*readLayoutFile(writeLayoutFile(layout)), layout);
}

}  // namespace
}  // namespace cw

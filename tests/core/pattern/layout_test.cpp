#include "core/pattern/layout.h"

#include <gmock/gmock.h>

#include <limits>

#include "tests/support/matchers.h"

namespace cw {
namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

Point at(double x, double y) {
  return {millimetres(x), millimetres(y)};
}

std::vector<std::string> labels(const Layout& layout) {
  std::vector<std::string> out;
  if (const auto found = positions(layout))
    for (const Position& position : *found) out.push_back(position.label);
  return out;
}

std::string refusal(const Layout& layout) {
  const auto found = positions(layout);
  return found ? "none" : sentence(found.error());
}

MATCHER_P2(LiesAt, x, y, "lies there, in millimetres") {
  return std::abs(inMillimetres(arg.x) - x) < 1e-9 && std::abs(inMillimetres(arg.y) - y) < 1e-9;
}

TEST(Circle, StartsAtTwelveOClockAndRunsClockwise) {
  EXPECT_THAT(positions({Circle{4, millimetres(100)}}),
              IsOkAnd(ElementsAre(LiesAt(0, 50), LiesAt(50, 0), LiesAt(0, -50), LiesAt(-50, 0))));
}

TEST(Circle, TurnsByItsPhaseAndNumbersFromItsFirstHole) {
  EXPECT_THAT(positions({Circle{4, millimetres(100), degrees(90), 2, Direction::Anticlockwise}}),
              IsOkAnd(ElementsAre(LiesAt(0, -50), LiesAt(50, 0), LiesAt(0, 50), LiesAt(-50, 0))));
}

TEST(Rows, AreNumberedLikeAPage) {
  EXPECT_THAT(positions({Rows{2, 2, millimetres(10), millimetres(20)}}),
              IsOkAnd(ElementsAre(LiesAt(-10, 5), LiesAt(10, 5), LiesAt(-10, -5), LiesAt(10, -5))));
}

TEST(Perimeter, RunsClockwiseFromItsTopLeftCorner) {
  EXPECT_THAT(positions({Perimeter{millimetres(40), millimetres(20), 3, 2}}),
              IsOkAnd(ElementsAre(LiesAt(-20, 10), LiesAt(0, 10), LiesAt(20, 10), LiesAt(20, -10),
                                  LiesAt(0, -10), LiesAt(-20, -10))));
}

TEST(Line, RunsFromLeftToRight) {
  EXPECT_THAT(positions({Line{3, millimetres(10)}}),
              IsOkAnd(ElementsAre(LiesAt(-10, 0), LiesAt(0, 0), LiesAt(10, 0))));
}

TEST(ConcentricCircles, AreNumberedOnFromOneToTheNext) {
  EXPECT_THAT(labels({ConcentricCircles{{Circle{3, millimetres(50)}, Circle{4, millimetres(90)}}}}),
              ElementsAre("1", "2", "3", "4", "5", "6", "7"));
}

TEST(View, FromTheOtherSideKeepsEveryLabelOnItsHole) {
  Layout layout{FreePoints{{at(30, 0), at(0, 20), at(-10, -5)}}};
  layout.view.mirrored = true;
  EXPECT_THAT(positions(layout), IsOkAnd(ElementsAre(LiesAt(-30, 0), LiesAt(0, 20), LiesAt(10, -5))));
  layout.view.rotation = degrees(90);
  EXPECT_THAT(positions(layout), IsOkAnd(ElementsAre(LiesAt(0, 30), LiesAt(20, 0), LiesAt(-5, -10))));
}

TEST(View, TurnsAnOutlineToo) {
  Layout layout{Circle{4, millimetres(100)}};
  layout.outline = PolygonOutline{{at(60, 0), at(0, 60), at(-60, 0)}};
  layout.view = {true, degrees(90)};
  EXPECT_THAT(outlineCorners(layout), IsOkAnd(ElementsAre(LiesAt(0, 60), LiesAt(60, 0), LiesAt(0, -60))));
}

TEST(Labels, CanBeLettersClockTimesOrThePartsOwn) {
  Layout layout{Circle{8, millimetres(100)}};
  layout.labels.style = LabelStyle::Letters;
  EXPECT_THAT(labels(layout), ElementsAre("A", "B", "C", "D", "E", "F", "G", "H"));
  layout.labels.style = LabelStyle::Clock;
  EXPECT_THAT(labels(layout), ElementsAre("12", "1:30", "3", "4:30", "6", "7:30", "9", "10:30"));
  layout.labels = {LabelStyle::Own, {"a", "b", "c", "d", "e", "f", "g", "top"}};
  EXPECT_EQ(labels(layout).back(), "top");
}

TEST(Labels, GoOnAfterZ) {
  Layout layout{Line{28, millimetres(10)}};
  layout.labels.style = LabelStyle::Letters;
  EXPECT_EQ(labels(layout)[25], "Z");
  EXPECT_EQ(labels(layout)[26], "AA");
  EXPECT_EQ(labels(layout)[27], "AB");
}

TEST(Labels, ShowTheClockOfThePartsOwnFrame) {
  Layout layout{Circle{4, millimetres(100)}};
  layout.labels.style = LabelStyle::Clock;
  layout.view = {true, degrees(30)};
  EXPECT_THAT(labels(layout), ElementsAre("12", "3", "6", "9"));
}

TEST(Labels, MustBeOneForEachPositionAndAllDifferent) {
  Layout layout{Line{3, millimetres(10)}};
  layout.labels = {LabelStyle::Own, {"a", "b"}};
  EXPECT_THAT(refusal(layout), HasSubstr("labels: 2 labels for 3 positions"));
  layout.labels.own = {"a", "b", "a"};
  EXPECT_THAT(refusal(layout), HasSubstr("positions 1 and 3 have one label, “a”"));
  layout.labels.own = {"a", "", "c"};
  EXPECT_THAT(refusal(layout), HasSubstr("labels[1]: the label is empty"));
}

TEST(LeftOut, TakesHolesAwayAndNumbersOn) {
  Layout layout{Line{4, millimetres(10)}};
  layout.leftOut = {2};
  EXPECT_THAT(positions(layout), IsOkAnd(ElementsAre(LiesAt(-15, 0), LiesAt(5, 0), LiesAt(15, 0))));
  EXPECT_THAT(labels(layout), ElementsAre("1", "2", "3"));
}

TEST(LeftOut, MustNameHolesOnceAndKeepSome) {
  Layout layout{Line{2, millimetres(10)}};
  layout.leftOut = {3};
  EXPECT_THAT(refusal(layout), HasSubstr("hole 3 is not there or is left out twice"));
  layout.leftOut = {1, 1};
  EXPECT_THAT(refusal(layout), HasSubstr("hole 1 is not there or is left out twice"));
  layout.leftOut = {1, 2};
  EXPECT_THAT(refusal(layout), HasSubstr("every hole is left out; keep at least one position"));
}

TEST(Groups, MustHoldEachPositionOnce) {
  Layout layout{Line{4, millimetres(10)}};
  layout.groups = {{1, 2}, {2, 3, 4}};
  EXPECT_THAT(refusal(layout), HasSubstr("position 2 is in 2 groups"));
  layout.groups = {{1, 2}, {4}};
  EXPECT_THAT(refusal(layout), HasSubstr("position 3 is in 0 groups"));
  layout.groups = {{1, 2, 3, 4, 5}};
  EXPECT_THAT(refusal(layout), HasSubstr("groups[0]: there is no position 5"));
}

TEST(Holes, RefuseCirclesThatAreNone) {
  EXPECT_THAT(refusal({Circle{0, millimetres(100)}}), HasSubstr("circle.count: 0 is not a usable count"));
  EXPECT_THAT(refusal({Circle{2, millimetres(100)}}),
              HasSubstr("2 positions make no circle; give 3 or more"));
  EXPECT_THAT(refusal({Circle{8, millimetres(-1)}}),
              HasSubstr("circle.diameter: -1 mm is not a usable length"));
  EXPECT_THAT(refusal({Circle{8, millimetres(90), degrees(0), 9}}),
              HasSubstr("there is no hole 9; give 1 to 8"));
  EXPECT_THAT(refusal({Circle{1'000'000, millimetres(90)}}), HasSubstr("give 3 to 2000"));
  EXPECT_THAT(refusal({Circle{8, millimetres(90), radians(std::numeric_limits<double>::infinity())}}),
              HasSubstr("the phase is not a number"));
  EXPECT_THAT(refusal({ConcentricCircles{{}}}), HasSubstr("circles: 0 is not a usable count"));
  EXPECT_THAT(refusal({ConcentricCircles{{Circle{4, millimetres(90)}, Circle{4, millimetres(90)}}}}),
              HasSubstr("lie on one point"));
}

TEST(Holes, RefuseGridsThatAreNone) {
  EXPECT_THAT(refusal({Rows{2, 0, millimetres(9), millimetres(9)}}), HasSubstr("rows.columns: 0"));
  EXPECT_THAT(refusal({Rows{2000, 2000, millimetres(9), millimetres(9)}}), HasSubstr("rows: 4000000"));
  EXPECT_THAT(refusal({Perimeter{millimetres(9), millimetres(0), 2, 2}}),
              HasSubstr("perimeter.height: 0 mm"));
  EXPECT_THAT(refusal({Perimeter{millimetres(9), millimetres(9), 1, 2}}), HasSubstr("perimeter.across: 1"));
  EXPECT_THAT(refusal({Line{5, Length()}}), HasSubstr("line.spacing: 0 mm is not a usable length"));
}

TEST(Holes, RefuseCoordinatesThatAreNone) {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_THAT(refusal({FreePoints{}}), HasSubstr("points: 0 is not a usable count"));
  EXPECT_THAT(refusal({FreePoints{{at(0, 0), at(1e9, 0)}}}), HasSubstr("points[1].x: 1000000000 mm"));
  EXPECT_THAT(refusal({FreePoints{{at(0, nan)}}}), HasSubstr("points[0].y: not a number"));
  EXPECT_THAT(refusal({FreePoints{{at(5, 5), at(0, 0), at(5, 5.05)}}}),
              HasSubstr("positions 1 and 3 lie on one point; give every position a place of its own"));
  EXPECT_THAT(refusal({FreePoints{{at(5, 5), at(5, 5), at(5, 5)}}}), HasSubstr("lie on one point"));
}

TEST(Outline, MustBeAShape) {
  Layout layout{Circle{4, millimetres(100)}};
  layout.outline = PolygonOutline{{at(0, 0), at(1, 1)}};
  EXPECT_THAT(refusal(layout), HasSubstr("outline: 2 corners make no outline; give 3 or more"));
  layout.outline = RoundOutline{millimetres(-5)};
  EXPECT_THAT(refusal(layout), HasSubstr("outline.diameter"));
}

}  // namespace
}  // namespace cw

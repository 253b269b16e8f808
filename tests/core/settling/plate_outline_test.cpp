#include "core/settling/plate_outline.h"

#include <gmock/gmock.h>

#include <cmath>

#include "core/settling/plate_polygon.h"
#include "core/settling/settling_check.h"
#include "core/settling/settling_course.h"
#include "tests/core/settling/settling_joints.h"

namespace cw {
namespace {

std::vector<Point> inMillimetres(std::initializer_list<std::pair<double, double>> corners) {
  std::vector<Point> points;
  for (const auto& [x, y] : corners) points.push_back({millimetres(x), millimetres(y)});
  return points;
}

/// An L-shaped pump cover with seven bolts. Invented for the tests.
SettlingJoint pumpCover(double turn = 0) {
  const auto turned = [turn](std::vector<Point> points) {
    for (Point& p : points)
      p = {p.x * std::cos(turn) - p.y * std::sin(turn), p.x * std::sin(turn) + p.y * std::cos(turn)};
    return points;
  };
  PlateOnGasket plate;
  plate.plate = {
      PolygonOutline{turned(inMillimetres({{-80, -60}, {80, -60}, {80, 0}, {0, 20}, {0, 60}, {-80, 60}}))},
      millimetres(10), gigapascals(70), 0.33};
  plate.gasket =
      GasketPath{turned(inMillimetres({{-60, -40}, {60, -40}, {60, -18}, {-20, 2}, {-20, 40}, {-60, 40}})),
                 millimetres(6)};
  plate.gasketStiffness = newtonsPerMetre(5e8);
  SettlingJoint joint;
  joint.body = FlexiblePart{plate, {}};
  joint.bolts.places =
      turned(inMillimetres({{-71, -51}, {0, -51}, {71, -51}, {71, -8}, {-9, 15}, {-9, 51}, {-71, 51}}));
  joint.bolts.hole = millimetres(8.4);
  joint.bolts.bearing = millimetres(13);
  joint.bolts.stiffness = newtonsPerMetre(2e8);
  return joint;
}

TEST(OutlineFlexibility, ARectangleDrawnAsAnOutlineIsTheRectangle) {
  const SettlingJoint rectangle = coverJoint();
  SettlingJoint outline = rectangle;
  partOf(outline).plate.plate.shape =
      PolygonOutline{inMillimetres({{-60, -40}, {60, -40}, {60, 40}, {-60, 40}})};
  partOf(outline).plate.gasket =
      GasketPath{inMillimetres({{-43, -23}, {43, -23}, {43, 23}, {-43, 23}}), millimetres(6)};
  const auto one = boltFlexibility(rectangle);
  const auto other = boltFlexibility(outline);
  ASSERT_TRUE(one && other) << sentence(other.error());
  for (int i = 0; i < 4; ++i)
    EXPECT_NEAR((*other)(i, 0).si(), (*one)(i, 0).si(), 0.02 * (*one)(0, 0).si()) << i;
}

TEST(OutlineFlexibility, ManyCornersMakeADisc) {
  SettlingJoint disc = ringJoint();
  partOf(disc).plate.plate.shape = Annulus{{}, millimetres(110)};
  SettlingJoint drawn = disc;
  const auto round = [](double radius) {
    std::vector<Point> corners;
    for (int i = 0; i < 72; ++i)
      corners.push_back({millimetres(radius * std::cos(2 * kPi * i / 72)),
                         millimetres(radius * std::sin(2 * kPi * i / 72))});
    return corners;
  };
  partOf(drawn).plate.plate.shape = PolygonOutline{round(110)};
  partOf(drawn).plate.gasket = GasketPath{round(71), millimetres(18)};
  const auto one = boltFlexibility(disc);
  const auto other = boltFlexibility(drawn);
  ASSERT_TRUE(one && other) << sentence(other.error());
  for (int i = 0; i < 8; ++i)
    EXPECT_NEAR((*other)(i, 0).si(), (*one)(i, 0).si(), 0.03 * (*one)(0, 0).si()) << i;
}

TEST(OutlineFlexibility, TurningThePartChangesNothing) {
  const std::vector<int> order{1, 4, 7, 3, 6, 2, 5};
  const auto straight = settle(*settlingModel(oneWay(pumpCover())), onePass(order, 0.03));
  const auto turned = settle(*settlingModel(oneWay(pumpCover(0.5))), onePass(order, 0.03));
  ASSERT_TRUE(straight && turned);
  for (std::size_t i = 0; i < 7; ++i)
    EXPECT_NEAR(straight->passes[0].loads[i] / kilonewtons(50), turned->passes[0].loads[i] / kilonewtons(50),
                0.02)
        << i;
}

TEST(OutlineFlexibility, RefusesOutlinesThatCrossAndGasketsBeyondThem) {
  SettlingJoint joint = pumpCover();
  auto& corners = std::get<PolygonOutline>(partOf(joint).plate.plate.shape).corners;
  std::swap(corners[1], corners[2]);
  EXPECT_THAT(sentence(checkJoint(joint).error()),
              testing::HasSubstr("part.corners: the line crosses itself"));
  joint = pumpCover();
  std::get<GasketPath>(partOf(joint).plate.gasket).corners[3].x = millimetres(20);
  EXPECT_THAT(sentence(checkJoint(joint).error()), testing::HasSubstr("the gasket reaches beyond the part"));
  joint = pumpCover();
  std::get<std::vector<Point>>(joint.bolts.places)[4] = {millimetres(20), millimetres(30)};
  EXPECT_THAT(sentence(checkJoint(joint).error()), testing::HasSubstr("bolt 5: the head"));
  joint = pumpCover();
  std::get<PolygonOutline>(partOf(joint).plate.plate.shape).corners[0].x = millimetres(1e9);
  EXPECT_THAT(sentence(checkJoint(joint).error()), testing::HasSubstr("part.corners[0]"));
}

TEST(Polygon, MeasuresAnL) {
  const auto corners = inMillimetres({{0, 0}, {4, 0}, {4, 1}, {1, 1}, {1, 3}, {0, 3}});
  EXPECT_NEAR(polygonArea(corners).si(), 6e-6, 1e-15);
  EXPECT_NEAR(polygonLength(corners).si(), 14e-3, 1e-12);
  EXPECT_TRUE(isInside(corners, {millimetres(0.5), millimetres(2)}));
  EXPECT_FALSE(isInside(corners, {millimetres(2), millimetres(2)}));
  EXPECT_NEAR(edgeDistance(corners, {millimetres(2), millimetres(2)}).si(), 1e-3, 1e-12);
}

}  // namespace
}  // namespace cw

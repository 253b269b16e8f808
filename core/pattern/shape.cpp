#include "core/pattern/shape.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "core/units/format.h"

namespace cw {
namespace {

std::string inMillimetreText(Length length) {
  return std::isfinite(length.si()) ? significant(inMillimetres(length), 9) + " mm" : "not a number";
}

Result<void> checkLength(Length length, const std::string& place) {
  if (length > Length() && length <= kFarthest) return {};
  return fail(ErrorCode::OutOfRange, place, inMillimetreText(length),
              {"%1 is not a usable length", {inMillimetreText(length)}},
              "give more than 0 and at most 100 m");
}

Result<void> checkCount(std::size_t count, std::size_t least, const std::string& place) {
  if (count >= least && count <= kMostPositions) return {};
  const std::string number = std::to_string(count);
  return fail(ErrorCode::OutOfRange, place, number, {"%1 is not a usable count", {number}},
              {"give %1 to %2", {std::to_string(least), std::to_string(kMostPositions)}});
}

Result<void> checkRing(const Circle& circle, const std::string& place) {
  const std::string number = std::to_string(circle.count);
  if (circle.count == 1 || circle.count == 2)
    return fail(ErrorCode::OutOfRange, place + ".count", number, {"%1 positions make no circle", {number}},
                "give 3 or more, or use a line");
  CW_CHECK(checkCount(circle.count, 3, place + ".count"));
  CW_CHECK(checkLength(circle.diameter, place + ".diameter"));
  if (!std::isfinite(circle.phase.si()))
    return fail(ErrorCode::OutOfRange, place + ".phase", "not a number", "the phase is not a number",
                "give an angle, such as 22.5 degrees");
  if (circle.firstHole < 1 || circle.firstHole > circle.count)
    return fail(ErrorCode::OutOfRange, place + ".first_hole", std::to_string(circle.firstHole),
                {"there is no hole %1", {std::to_string(circle.firstHole)}}, {"give 1 to %1", {number}});
  return {};
}

std::vector<Point> around(const Circle& circle) {
  std::vector<Point> out;
  for (std::size_t i = 0; i < circle.count; ++i) {
    const std::size_t step = circle.direction == Direction::Clockwise ? i : circle.count - i;
    const std::size_t hole = (circle.firstHole - 1 + step) % circle.count;
    const double angle =
        circle.phase.si() + 2 * kPi * static_cast<double>(hole) / static_cast<double>(circle.count);
    out.push_back({circle.diameter / 2 * std::sin(angle), circle.diameter / 2 * std::cos(angle)});
  }
  return out;
}

/// The k-th of `count` values spread evenly from -extent/2 to +extent/2.
Length spread(std::size_t k, std::size_t count, Length extent) {
  return count == 1 ? Length() : extent * (static_cast<double>(k) / static_cast<double>(count - 1) - 0.5);
}

Length extentOf(std::size_t count, Length spacing) {
  return spacing * static_cast<double>(count - 1);
}

Result<std::vector<Point>> holesOf(const Circle& circle) {
  CW_CHECK(checkRing(circle, "circle"));
  return around(circle);
}

Result<std::vector<Point>> holesOf(const Rows& grid) {
  CW_CHECK(checkCount(grid.rows, 1, "rows.rows"));
  CW_CHECK(checkCount(grid.columns, 1, "rows.columns"));
  CW_CHECK(checkCount(grid.rows * grid.columns, 1, "rows"));
  if (grid.rows > 1) CW_CHECK(checkLength(grid.rowSpacing, "rows.row_spacing"));
  if (grid.columns > 1) CW_CHECK(checkLength(grid.columnSpacing, "rows.column_spacing"));
  std::vector<Point> out;
  for (std::size_t row = 0; row < grid.rows; ++row)
    for (std::size_t column = 0; column < grid.columns; ++column)
      out.push_back({spread(column, grid.columns, extentOf(grid.columns, grid.columnSpacing)),
                     -spread(row, grid.rows, extentOf(grid.rows, grid.rowSpacing))});
  return out;
}

Result<std::vector<Point>> holesOf(const Perimeter& edge) {
  CW_CHECK(checkLength(edge.width, "perimeter.width"));
  CW_CHECK(checkLength(edge.height, "perimeter.height"));
  CW_CHECK(checkCount(edge.across, 2, "perimeter.across"));
  CW_CHECK(checkCount(edge.upright, 2, "perimeter.upright"));
  CW_CHECK(checkCount(2 * (edge.across + edge.upright) - 4, 4, "perimeter"));
  const Length right = edge.width / 2, top = edge.height / 2;
  std::vector<Point> out;
  for (std::size_t k = 0; k + 1 < edge.across; ++k) out.push_back({spread(k, edge.across, edge.width), top});
  for (std::size_t k = 0; k + 1 < edge.upright; ++k)
    out.push_back({right, -spread(k, edge.upright, edge.height)});
  for (std::size_t k = 0; k + 1 < edge.across; ++k)
    out.push_back({-spread(k, edge.across, edge.width), -top});
  for (std::size_t k = 0; k + 1 < edge.upright; ++k)
    out.push_back({-right, spread(k, edge.upright, edge.height)});
  return out;
}

Result<std::vector<Point>> holesOf(const Line& line) {
  CW_CHECK(checkCount(line.count, 1, "line.count"));
  if (line.count > 1) CW_CHECK(checkLength(line.spacing, "line.spacing"));
  std::vector<Point> out;
  for (std::size_t k = 0; k < line.count; ++k)
    out.push_back({spread(k, line.count, extentOf(line.count, line.spacing)), Length()});
  return out;
}

Result<std::vector<Point>> holesOf(const ConcentricCircles& rings) {
  CW_CHECK(checkCount(rings.circles.size(), 1, "circles"));
  std::vector<Point> out;
  for (std::size_t i = 0; i < rings.circles.size(); ++i) {
    CW_CHECK(checkRing(rings.circles[i], fmt::format("circles[{}]", i)));
    const auto ring = around(rings.circles[i]);
    out.insert(out.end(), ring.begin(), ring.end());
  }
  CW_CHECK(checkCount(out.size(), 3, "circles"));
  return out;
}

Result<std::vector<Point>> holesOf(const FreePoints& free) {
  CW_CHECK(checkCount(free.points.size(), 1, "points"));
  for (std::size_t i = 0; i < free.points.size(); ++i)
    CW_CHECK(checkPoint(free.points[i], fmt::format("points[{}]", i)));
  return free.points;
}

Result<void> checkApart(const std::vector<Point>& points) {
  std::vector<std::size_t> byX(points.size());
  std::iota(byX.begin(), byX.end(), 0u);
  std::sort(byX.begin(), byX.end(), [&](auto a, auto b) { return points[a].x < points[b].x; });
  for (std::size_t i = 0; i < byX.size(); ++i)
    for (std::size_t k = i + 1; k < byX.size(); ++k) {
      const Point &a = points[byX[i]], &b = points[byX[k]];
      if (b.x - a.x >= kClosest) break;
      if (std::hypot((b.x - a.x).si(), (b.y - a.y).si()) >= kClosest.si()) continue;
      const auto [first, second] = std::minmax(byX[i], byX[k]);
      return fail(
          ErrorCode::OutOfRange, "positions", fmt::format("{} and {}", first + 1, second + 1),
          {"positions %1 and %2 lie on one point", {std::to_string(first + 1), std::to_string(second + 1)}},
          "give every position a place of its own, at least 0.1 mm apart");
    }
  return {};
}

}  // namespace

Result<void> checkPoint(const Point& point, const std::string& place) {
  for (const auto& [name, value] : {std::pair{".x", point.x}, std::pair{".y", point.y}})
    if (!(value >= -kFarthest && value <= kFarthest))
      return fail(ErrorCode::OutOfRange, place + name, inMillimetreText(value),
                  {"%1 is not a usable coordinate", {inMillimetreText(value)}},
                  "give at most 100 m either way");
  return {};
}

Result<std::vector<Point>> holes(const Shape& shape) {
  CW_TRY(points, std::visit([](const auto& kind) { return holesOf(kind); }, shape));
  CW_CHECK(checkApart(points));
  return points;
}

}  // namespace cw

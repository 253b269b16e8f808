#include "core/pattern/layout.h"

#include <fmt/format.h>

#include <cmath>

#include "core/pattern/labels.h"

namespace cw {
namespace {

/// Keeps the holes that are not left out.
Result<std::vector<Point>> kept(const std::vector<Point>& all, const std::vector<std::size_t>& leftOut) {
  std::vector<bool> gone(all.size(), false);
  for (const std::size_t hole : leftOut) {
    if (hole < 1 || hole > all.size() || gone[hole - 1])
      return fail(ErrorCode::OutOfRange, "left_out", std::to_string(hole),
                  {"hole %1 is not there or is left out twice", {std::to_string(hole)}},
                  {"name holes from 1 to %1, each once", {std::to_string(all.size())}});
    gone[hole - 1] = true;
  }
  std::vector<Point> out;
  for (std::size_t i = 0; i < all.size(); ++i)
    if (!gone[i]) out.push_back(all[i]);
  if (out.empty())
    return fail(ErrorCode::OutOfRange, "left_out", std::to_string(leftOut.size()), "every hole is left out",
                "keep at least one position");
  return out;
}

Result<void> checkGroups(const Layout& layout, std::size_t count) {
  if (layout.groups.empty()) return {};
  std::vector<int> times(count, 0);
  for (std::size_t g = 0; g < layout.groups.size(); ++g)
    for (const std::size_t position : layout.groups[g]) {
      if (position < 1 || position > count)
        return fail(ErrorCode::OutOfRange, fmt::format("groups[{}]", g), std::to_string(position),
                    {"there is no position %1", {std::to_string(position)}},
                    {"name positions from 1 to %1", {std::to_string(count)}});
      ++times[position - 1];
    }
  for (std::size_t i = 0; i < count; ++i)
    if (times[i] != 1)
      return fail(ErrorCode::OutOfRange, "groups", std::to_string(i + 1),
                  {"position %1 is in %2 groups", {std::to_string(i + 1), std::to_string(times[i])}},
                  "put each position in one group");
  return {};
}

Result<void> checkOutline(const Layout& layout) {
  if (!layout.outline) return {};
  if (const auto* round = std::get_if<RoundOutline>(&*layout.outline)) {
    if (round->diameter > Length() && round->diameter <= 2 * kFarthest) return {};
    return fail(ErrorCode::OutOfRange, "outline.diameter", fmt::format("{} m", round->diameter.si()),
                "the outline's diameter is not usable", "give more than 0 and at most 200 m");
  }
  const auto& corners = std::get<PolygonOutline>(*layout.outline).corners;
  if (corners.size() < 3)
    return fail(ErrorCode::OutOfRange, "outline", std::to_string(corners.size()),
                {"%1 corners make no outline", {std::to_string(corners.size())}}, "give 3 or more");
  for (std::size_t i = 0; i < corners.size(); ++i)
    CW_CHECK(checkPoint(corners[i], fmt::format("outline[{}]", i)));
  return {};
}

Result<void> checkView(const View& view) {
  if (std::isfinite(view.rotation.si())) return {};
  return fail(ErrorCode::OutOfRange, "view.rotation", "not a number", "the rotation is not a number",
              "give an angle, such as 90 degrees");
}

}  // namespace

Point seen(const Point& point, const View& view) {
  const Length x = view.mirrored ? -point.x : point.x;
  const double cosine = std::cos(view.rotation.si()), sine = std::sin(view.rotation.si());
  return {x * cosine + point.y * sine, point.y * cosine - x * sine};
}

Result<std::vector<Point>> places(const Layout& layout) {
  CW_TRY(all, holes(layout.shape));
  CW_TRY(points, kept(all, layout.leftOut));
  CW_CHECK(checkGroups(layout, points.size()));
  return points;
}

Result<std::vector<Position>> positions(const Layout& layout) {
  CW_TRY(points, places(layout));
  CW_CHECK(checkView(layout.view));
  CW_CHECK(checkOutline(layout));
  CW_TRY(labels, labelsFor(layout.labels, points));
  std::vector<Position> out;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Point point = seen(points[i], layout.view);
    out.push_back({labels[i], point.x, point.y});
  }
  return out;
}

Result<std::vector<Point>> outlineCorners(const Layout& layout) {
  CW_CHECK(checkView(layout.view));
  CW_CHECK(checkOutline(layout));
  std::vector<Point> out;
  if (const auto* polygon = layout.outline ? std::get_if<PolygonOutline>(&*layout.outline) : nullptr)
    for (const Point& corner : polygon->corners) out.push_back(seen(corner, layout.view));
  return out;
}

}  // namespace cw

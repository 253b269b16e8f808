#include "core/settling/plate_polygon.h"

#include <algorithm>
#include <cmath>

namespace cw {
namespace {

double cross(const Point& from, const Point& a, const Point& b) {
  return (a.x - from.x).si() * (b.y - from.y).si() - (a.y - from.y).si() * (b.x - from.x).si();
}

double distance(const Point& a, const Point& b) {
  return std::hypot((a.x - b.x).si(), (a.y - b.y).si());
}

const Point& after(const std::vector<Point>& corners, std::size_t i) {
  return corners[(i + 1) % corners.size()];
}

double distanceToSide(const Point& from, const Point& to, const Point& point) {
  const double dx = (to.x - from.x).si();
  const double dy = (to.y - from.y).si();
  const double along = ((point.x - from.x).si() * dx + (point.y - from.y).si() * dy) / (dx * dx + dy * dy);
  const double t = std::clamp(along, 0.0, 1.0);
  return distance(point, {from.x + metres(t * dx), from.y + metres(t * dy)});
}

bool meet(const Point& a, const Point& b, const Point& c, const Point& d) {
  const bool cdApart = (cross(a, b, c) > 0) != (cross(a, b, d) > 0);
  const bool abApart = (cross(c, d, a) > 0) != (cross(c, d, b) > 0);
  return cdApart && abApart;
}

}  // namespace

Area polygonArea(const std::vector<Point>& corners) {
  double twice = 0;
  for (std::size_t i = 0; i < corners.size(); ++i) twice += cross(corners[0], corners[i], after(corners, i));
  return Area::si(std::abs(twice) / 2);
}

Length polygonLength(const std::vector<Point>& corners) {
  double length = 0;
  for (std::size_t i = 0; i < corners.size(); ++i) length += distance(corners[i], after(corners, i));
  return metres(length);
}

bool isInside(const std::vector<Point>& corners, const Point& point) {
  bool inside = false;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const Point& a = corners[i];
    const Point& b = after(corners, i);
    if ((a.y > point.y) == (b.y > point.y)) continue;
    const double at = (point.y - a.y) / (b.y - a.y);
    if (point.x < a.x + at * (b.x - a.x)) inside = !inside;
  }
  return inside;
}

Length edgeDistance(const std::vector<Point>& corners, const Point& point) {
  double least = distance(corners[0], point);
  for (std::size_t i = 0; i < corners.size(); ++i)
    least = std::min(least, distanceToSide(corners[i], after(corners, i), point));
  return metres(least);
}

bool crossesItself(const std::vector<Point>& corners) {
  const std::size_t n = corners.size();
  for (std::size_t i = 0; i < n; ++i) {
    if (corners[i] == after(corners, i)) return true;
    for (std::size_t j = i + 2; j < n; ++j)
      if ((j + 1) % n != i && meet(corners[i], after(corners, i), corners[j], after(corners, j))) return true;
  }
  return false;
}

}  // namespace cw

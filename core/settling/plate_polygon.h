#pragma once
#include <vector>

#include "core/pattern/shape.h"

namespace cw {

/// Area inside a polygon; its sides must not cross.
Area polygonArea(const std::vector<Point>& corners);

/// Length of the closed line through the corners.
Length polygonLength(const std::vector<Point>& corners);

/// Whether a point lies inside (even-odd rule).
bool isInside(const std::vector<Point>& corners, const Point& point);

/// Distance from a point to the nearest side.
Length edgeDistance(const std::vector<Point>& corners, const Point& point);

/// Whether two sides that are no neighbours meet, or two neighbouring corners coincide.
bool crossesItself(const std::vector<Point>& corners);

}  // namespace cw

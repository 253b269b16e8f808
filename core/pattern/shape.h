#pragma once
#include <cstddef>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.h"
#include "core/units/quantity.h"

namespace cw {

/// A point in the plane of the joint's face, seen by the person with the wrench: x to the right, y up.
struct Point {
  Length x;
  Length y;
  bool operator==(const Point&) const = default;
};

enum class Direction { Clockwise, Anticlockwise };

/// Holes equally spaced on a circle around the origin, counted clockwise from `phase`, itself an angle
/// clockwise from 12 o'clock. Position 1 is the hole `firstHole`; numbering runs on in `direction`.
struct Circle {
  std::size_t count = 0;  ///< 3 and more
  Length diameter{};      ///< of the bolt circle, positive
  Angle phase{};          ///< half a pitch if the holes straddle the centre line
  std::size_t firstHole = 1;
  Direction direction = Direction::Clockwise;
  bool operator==(const Circle&) const = default;
};

/// A grid centred on the origin, numbered like a page: left to right, then the row below.
struct Rows {
  std::size_t rows = 0;     ///< 1 and more
  std::size_t columns = 0;  ///< 1 and more
  Length rowSpacing{};      ///< positive where there is more than one row
  Length columnSpacing{};   ///< positive where there is more than one column
  bool operator==(const Rows&) const = default;
};

/// The edge of a rectangle centred on the origin, numbered clockwise from its top left corner.
struct Perimeter {
  Length width;            ///< between the outermost columns, positive
  Length height;           ///< between the outermost rows, positive
  std::size_t across = 0;  ///< positions on the top side and on the bottom side, corners included; 2 and more
  std::size_t upright = 0;  ///< the same for the left and the right side
  bool operator==(const Perimeter&) const = default;
};

/// A straight row centred on the origin, numbered from left to right.
struct Line {
  std::size_t count = 0;  ///< 1 and more
  Length spacing{};       ///< positive where there is more than one
  bool operator==(const Line&) const = default;
};

/// Several circles around one centre, numbered on from one to the next.
struct ConcentricCircles {
  std::vector<Circle> circles;
  bool operator==(const ConcentricCircles&) const = default;
};

/// Positions drawn or typed one by one.
struct FreePoints {
  std::vector<Point> points;
  bool operator==(const FreePoints&) const = default;
};

/// A layout's description as its author gave it; everything else is derived from it.
using Shape = std::variant<Circle, Rows, Perimeter, Line, ConcentricCircles, FreePoints>;

inline constexpr std::size_t kMostPositions = 2000;
inline constexpr Length kFarthest = metres(100);        ///< no coordinate is larger than this
inline constexpr Length kClosest = Length::si(0.0001);  ///< two holes nearer than this are one hole

/// The shape's holes in their numbering, in the part's own frame. OutOfRange, naming the parameter, where a
/// value is not a number, breaks the ranges above, exceeds the three limits, or two holes coincide.
Result<std::vector<Point>> holes(const Shape& shape);

/// OutOfRange if a coordinate is not a number or beyond `kFarthest`; `place` names the coordinate's owner.
Result<void> checkPoint(const Point& point, const std::string& place);

}  // namespace cw

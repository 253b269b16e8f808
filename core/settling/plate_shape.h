#pragma once
#include <variant>
#include <vector>

#include "core/pattern/layout.h"
#include "core/units/quantity.h"

namespace cw {

/// A ring about the origin; a disc where `inner` is 0.
struct Annulus {
  Length inner;
  Length outer;
  bool operator==(const Annulus&) const = default;
};

/// `length` along x and `width` along y, centred on the origin.
struct Rectangle {
  Length length;
  Length width;
  bool operator==(const Rectangle&) const = default;
};

/// A rectangle with sides along x and y that adds gasket (`sign` 1) or cuts it out again (-1).
struct Band {
  Length fromX, toX;
  Length fromY, toY;
  int sign = 1;
  bool operator==(const Band&) const = default;
};

/// Number of bands laid over a point, less those cut out.
inline int coverage(const std::vector<Band>& bands, Length x, Length y) {
  int sum = 0;
  for (const Band& band : bands)
    if (x > band.fromX && x < band.toX && y > band.fromY && y < band.toY) sum += band.sign;
  return sum;
}

/// A strip of gasket along a closed line of straight pieces. At a corner the pieces meet middle to middle.
struct GasketPath {
  std::vector<Point> corners;
  Length width;
  bool operator==(const GasketPath&) const = default;
};

/// A ring or disc lies on an Annulus, a rectangle on bands, a free-form cover on a path.
using PlateShape = std::variant<Annulus, Rectangle, PolygonOutline>;
using GasketShape = std::variant<Annulus, std::vector<Band>, GasketPath>;

/// The part that the bolts hold down: an even plate of one material.
struct Plate {
  PlateShape shape;
  Length thickness;
  Stress modulus;        ///< Young's modulus
  double poisson = 0.3;  ///< Poisson's ratio
};

}  // namespace cw

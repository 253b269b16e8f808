#pragma once
#include <variant>
#include <vector>

#include "core/units/quantity.h"

namespace cw {

/// A place on the part's face. The origin is the centre of the part.
struct PlatePoint {
  Length x;
  Length y;
  bool operator==(const PlatePoint&) const = default;
};

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

using PlateShape = std::variant<Annulus, Rectangle>;
using GasketShape = std::variant<Annulus, std::vector<Band>>;

/// The part that the bolts hold down: an even plate of one material.
struct Plate {
  PlateShape shape;
  Length thickness;
  Stress modulus;        ///< Young's modulus
  double poisson = 0.3;  ///< Poisson's ratio
};

}  // namespace cw

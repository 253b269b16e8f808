#pragma once
#include <variant>
#include <vector>

#include "core/settling/plate_flexibility.h"

namespace cw {

/// What the gasket does besides its stiffness while it is first loaded.
struct GasketAnswer {
  double unloadingRatio = 1;  ///< stiffness while it is let go or loaded again over the first; 1 to 100
  bool liftsOff = false;      ///< it does not pull: where the faces part it carries nothing
};

struct BoltCircle {
  int count = 0;
  Length radius;  ///< bolt 1 on the x axis, the others evenly round
};

struct SettlingBolts {
  std::variant<BoltCircle, std::vector<Point>> places;
  Length hole;           ///< inner diameter of the bearing face; the hole itself is not cut out of the part
  Length bearing;        ///< outer diameter of the bearing face
  Stiffness stiffness;   ///< of one bolt over its grip, head and nut included
  bool goSlack = false;  ///< a bolt carries no push; without this the algebra stays linear
};

/// A plate-on-gasket with its bolts on it.
struct FlexiblePart {
  PlateOnGasket plate;
  GasketAnswer answer;
};

/// What is bolted together: the part and its gasket, or a measured or computed flexibility at the bolts
/// that stands for both.
struct SettlingJoint {
  std::variant<FlexiblePart, Flexibility> body;
  SettlingBolts bolts;
};

/// Number of bolts the joint has.
int boltCount(const SettlingJoint& joint);

/// Where the bolts are; empty if the joint gives a flexibility and no places.
std::vector<Point> boltPlaces(const SettlingBolts& bolts);

/// Most bolts one prediction takes; the algebra grows with their cube.
inline constexpr int kMostSettlingBolts = 128;

}  // namespace cw

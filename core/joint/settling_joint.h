#pragma once
#include <optional>
#include <variant>
#include <vector>

#include "core/joint/plate_flexibility.h"

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
  std::variant<BoltCircle, std::vector<PlatePoint>> places;
  Length hole;           ///< inner diameter of the bearing face; the hole itself is not cut out of the part
  Length bearing;        ///< outer diameter of the bearing face
  Stiffness stiffness;   ///< of one bolt over its grip, head and nut included
  bool goSlack = false;  ///< a bolt carries no push; without this the algebra stays linear
};

/// One trip through the order. Bolt numbers start at 1.
struct SettlingPass {
  double share = 1;  ///< of every bolt's target; above 0, at most 2
  std::vector<int> order;
};

/// A plate-on-gasket with its bolts on it.
struct FlexiblePart {
  PlateOnGasket plate;
  GasketAnswer answer;
};

/// A joint and how it is tightened: the whole input of the settling prediction.
struct SettlingJoint {
  /// The part and its gasket, or a measured or computed flexibility at the bolts that stands for both.
  std::variant<FlexiblePart, Flexibility> body;
  SettlingBolts bolts;
  std::vector<Force> targets;  ///< one for all, or one for each bolt
  double snugShare = 0;        ///< every nut run to this share of its target at once before the first pass;
                               ///< 0: a nut carries nothing before its turn, as if it were not there
  std::vector<SettlingPass> passes;
};

/// Number of bolts the joint has.
int boltCount(const SettlingJoint& joint);

/// Where the bolts are; empty if the joint gives a flexibility and no places.
std::vector<PlatePoint> boltPlaces(const SettlingBolts& bolts);

Force targetOf(const SettlingJoint& joint, int bolt);

/// Most bolts one prediction takes; the algebra grows with their cube.
inline constexpr int kMostSettlingBolts = 128;

}  // namespace cw

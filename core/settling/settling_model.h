#pragma once
#include <vector>

#include "core/settling/settling_joint.h"

namespace cw {

/// A piece of the gasket, small enough to be loaded evenly.
struct GasketCell {
  Stiffness loading;    ///< while it is pressed further than ever before
  Stiffness unloading;  ///< while it is let go, or loaded again
  bool liftsOff = false;
};

/// The joint as the tightening algebra sees it: an elastic body and springs on it.
struct SettlingModel {
  /// Between the bolts, then the gasket cells, on a gasket that answers everywhere with its loading
  /// stiffness, both ways.
  Flexibility flexibility;
  std::vector<Stiffness> bolts;   ///< bolt and the part's face under its head in series
  std::vector<GasketCell> cells;  ///< none where the gasket is an even two-way spring
  std::vector<Point> places;      ///< of the bolts; may be empty
  bool boltsGoSlack = false;

  int boltCount() const { return static_cast<int>(bolts.size()); }
};

/// The model of a joint, to be made once and used for any number of tightenings.
///
/// Physics: Mindlin plate, gasket as springs, bolts as springs. Defaults, fitted to the finite-element
/// joints of tests/data/settling/flange_fe.json: the squeeze of the part under a head, 0.33·h/(E·dw²) per
/// newton, in series with the bolt; and of the part over the gasket, 0.2·h/E per unit pressure, in series
/// with the gasket. A lifting or stiffening gasket is cut into cells (settling_cells.h).
/// Errors: all of checkJoint.
Result<SettlingModel> settlingModel(const SettlingJoint& joint);

/// Flexibility at the bolts, the squeeze under the heads included: what a measurement at the bolts shows.
/// Errors: all of checkJoint.
Result<Flexibility> boltFlexibility(const SettlingJoint& joint);

}  // namespace cw

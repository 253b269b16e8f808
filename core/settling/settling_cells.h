#pragma once
#include <vector>

#include "core/settling/plate_patch.h"

namespace cw {

/// A gasket cell on the face, and its share of the gasket's area.
struct CellPatch {
  Patch patch;
  double share = 0;
};

/// Cuts the gasket into cells that lift off and are loaded one by one: a ring gasket into four
/// to a bolt pitch, at least 32 round, in as many rows (1 to 4) as make them about square; a path likewise in
/// one row; bands into a grid of about 400 cells over their whole extent. Their forms are added to `patches`.
std::vector<CellPatch> gasketCells(const GasketShape& gasket, int bolts, Patches& patches);

}  // namespace cw

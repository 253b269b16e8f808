#pragma once
#include "core/settling/plate_flexibility.h"

namespace cw {

/// plateFlexibility for a free-form cover on a gasket path, one plate: products of Legendre polynomials up to
/// degree 16 together over the cover's bounding box, integrated over its outline.
Flexibility outlineFlexibility(const PlateOnGasket& plate, const Patches& patches);

struct PathPiece {
  Patch patch;
  Length length;
};

/// The path cut into at least `pieces` pieces of about equal length; their forms are added to `patches`.
std::vector<PathPiece> pathPieces(const GasketPath& path, int pieces, Patches& patches);

}  // namespace cw

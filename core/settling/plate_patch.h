#pragma once
#include <vector>

#include "core/settling/plate_shape.h"

namespace cw {

/// One of the points that stand for a patch, as an offset in the patch's own axes; weights add up to 1.
struct PatchSample {
  Length along;   ///< outwards, along the patch's own axis
  Length across;  ///< to the left of it
  double weight = 0;
};

/// The form of a small part of a face over which a load is spread evenly and a movement is averaged.
/// It must be symmetric about its own axis.
using PatchForm = std::vector<PatchSample>;

/// A form put on the face: its own axis turned by `turn` from x.
struct Patch {
  Point centre;
  Angle turn;
  int form = 0;  ///< which of the forms
};

struct Patches {
  std::vector<PatchForm> forms;
  std::vector<Patch> patches;

  /// Puts a form into the list and returns its number.
  int add(PatchForm form);
};

/// The face under a bolt head: a ring between the hole and the edge of the bearing face.
PatchForm headForm(Length holeDiameter, Length bearingDiameter);

/// A piece of a ring: `width` wide, reaching `halfAngle` to both sides of its centre at `radius`.
PatchForm sectorForm(Length radius, Length width, Angle halfAngle);

PatchForm rectangleForm(Length length, Length width);

}  // namespace cw

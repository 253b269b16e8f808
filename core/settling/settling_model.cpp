#include "core/settling/settling_model.h"

#include <algorithm>
#include <cmath>

#include "core/settling/settling_cells.h"
#include "core/settling/settling_check.h"

namespace cw {
namespace {

constexpr double kHeadSqueeze = 0.33;
constexpr double kSeatSqueeze = 0.2;

/// Both faces of a pair are squeezed; a matrix that was given has it inside.
Compliance headSqueeze(const SettlingJoint& joint) {
  const auto* part = std::get_if<FlexiblePart>(&joint.body);
  if (!part) return {};
  const Plate& plate = part->plate.plate;
  const double bearing = joint.bolts.bearing.si();
  const double faces = part->plate.pair ? 2 : 1;
  return metresPerNewton(faces * kHeadSqueeze * plate.thickness.si() /
                         (plate.modulus.si() * bearing * bearing));
}

/// What the gasket's stiffness becomes with the part's squeeze over it.
Stiffness withSeat(const PlateOnGasket& plate, Stiffness gasket) {
  const double faces = plate.pair ? 2 : 1;
  const double seat = faces * kSeatSqueeze * plate.plate.thickness.si() /
                      (plate.plate.modulus.si() * gasketArea(plate.gasket).si());
  return newtonsPerMetre(1 / (1 / gasket.si() + seat));
}

Patches boltPatches(const SettlingBolts& bolts) {
  Patches patches;
  const int head = patches.add(headForm(bolts.hole, bolts.bearing));
  for (const Point& place : boltPlaces(bolts))
    patches.patches.push_back({place, radians(std::atan2(place.y.si(), place.x.si())), head});
  return patches;
}

SettlingModel partModel(const FlexiblePart& part, const SettlingJoint& joint) {
  SettlingModel model;
  PlateOnGasket seated = part.plate;
  seated.gasketStiffness = withSeat(part.plate, part.plate.gasketStiffness);
  Patches patches = boltPatches(joint.bolts);
  if (part.answer.liftsOff || part.answer.unloadingRatio > 1) {
    const Stiffness unloading = withSeat(part.plate, part.answer.unloadingRatio * part.plate.gasketStiffness);
    for (const CellPatch& cell : gasketCells(part.plate.gasket, boltCount(joint), patches)) {
      patches.patches.push_back(cell.patch);
      model.cells.push_back(
          {cell.share * seated.gasketStiffness, cell.share * unloading, part.answer.liftsOff});
    }
  }
  model.flexibility = plateFlexibility(seated, patches);
  return model;
}

}  // namespace

Result<SettlingModel> settlingModel(const SettlingJoint& joint) {
  CW_CHECK(checkJoint(joint));
  SettlingModel model;
  if (const auto* part = std::get_if<FlexiblePart>(&joint.body)) {
    model = partModel(*part, joint);
  } else {
    model.flexibility = std::get<Flexibility>(joint.body);
  }
  const Stiffness seated = newtonsPerMetre(1 / (1 / joint.bolts.stiffness.si() + headSqueeze(joint).si()));
  model.bolts.assign(static_cast<std::size_t>(boltCount(joint)), seated);
  model.places = boltPlaces(joint.bolts);
  model.boltsGoSlack = joint.bolts.goSlack;
  return model;
}

Result<Flexibility> boltFlexibility(const SettlingJoint& joint) {
  SettlingJoint linear = joint;
  if (auto* part = std::get_if<FlexiblePart>(&linear.body)) part->answer = {};
  CW_TRY(model, settlingModel(linear));
  Flexibility out = std::move(model.flexibility);
  for (int i = 0; i < out.size(); ++i) out.set(i, i, out(i, i) + headSqueeze(joint));
  return out;
}

}  // namespace cw

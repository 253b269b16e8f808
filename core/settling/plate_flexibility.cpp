#include "core/settling/plate_flexibility.h"

#include <cmath>

#include "core/settling/plate_annulus.h"
#include "core/settling/plate_outline.h"
#include "core/settling/plate_polygon.h"
#include "core/settling/plate_rectangle.h"

namespace cw {
namespace {

double ringArea(const Annulus& ring) {
  return kPi * (ring.outer.si() * ring.outer.si() - ring.inner.si() * ring.inner.si());
}

Flexibility onePlate(const PlateOnGasket& plate, const Patches& patches) {
  if (std::holds_alternative<Annulus>(plate.plate.shape)) return annulusFlexibility(plate, patches);
  if (std::holds_alternative<Rectangle>(plate.plate.shape)) return rectangleFlexibility(plate, patches);
  return outlineFlexibility(plate, patches);
}

}  // namespace

Hub Hub::cylinder(Length meanRadius, Length wall, Stress modulus, double poisson) {
  const double t = wall.si();
  const double stretch = 1 - poisson * poisson;
  const double rigidity = modulus.si() * t * t * t / (12 * stretch);
  const double beta = std::pow(3 * stretch, 0.25) / std::sqrt(meanRadius.si() * t);
  return {newtons(2 * beta * rigidity)};
}

Area gasketArea(const GasketShape& gasket) {
  if (const auto* ring = std::get_if<Annulus>(&gasket)) return Area::si(ringArea(*ring));
  if (const auto* path = std::get_if<GasketPath>(&gasket)) return polygonLength(path->corners) * path->width;
  Area area;
  for (const Band& band : std::get<std::vector<Band>>(gasket))
    area += band.sign * ((band.toX - band.fromX) * (band.toY - band.fromY));
  return area;
}

Flexibility plateFlexibility(const PlateOnGasket& plate, const Patches& patches) {
  if (!plate.pair) return onePlate(plate, patches);
  // By symmetry each of the two sees half the gasket's height, twice as stiff, and both approach.
  PlateOnGasket half = plate;
  half.gasketStiffness = 2 * plate.gasketStiffness;
  Flexibility both = onePlate(half, patches);
  for (int j = 0; j < both.size(); ++j)
    for (int i = 0; i < both.size(); ++i) both.set(i, j, 2 * both(i, j));
  return both;
}

}  // namespace cw

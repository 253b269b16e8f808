#include "core/joint/settling_examples.h"

#include <cmath>

namespace cw {
namespace {

struct ExampleRing {
  int bolts;
  double boltCircle, ringMiddle, ringWidth, ringHeight;  // mm, radii
  double gasketRadius, gasketWidth, boltArea, hubRadius, hubWall;
};

/// Loading stiffness in MPa/mm, and how much stiffer it is let go.
struct ExampleGasket {
  double loading, unloadingRatio, thickness;
};

constexpr ExampleGasket kSpiralWound{150, 8, 4.5}, kFibre{400, 2.5, 1.5};
constexpr double kSteel = 200;              // GPa
constexpr double kStressMegapascals = 345;  // aimed at in the bolts

SettlingBolts boltsOf(std::variant<BoltCircle, std::vector<Point>> places, double area, double grip) {
  const double diameter = std::sqrt(4 * area / kPi);
  return {std::move(places), millimetres(1.1 * diameter), millimetres(1.6 * diameter),
          newtonsPerMetre(kSteel * 1e9 * area * 1e-6 / ((grip + 0.8 * diameter) * 1e-3)), true};
}

SettlingExample flangePair(Message name, const ExampleRing& ring, const ExampleGasket& gasket) {
  PlateOnGasket plate;
  plate.plate = {Annulus{millimetres(ring.ringMiddle - ring.ringWidth / 2),
                         millimetres(ring.ringMiddle + ring.ringWidth / 2)},
                 millimetres(ring.ringHeight), gigapascals(kSteel), 0.3};
  plate.gasket = Annulus{millimetres(ring.gasketRadius - ring.gasketWidth / 2),
                         millimetres(ring.gasketRadius + ring.gasketWidth / 2)};
  plate.gasketStiffness = newtonsPerMetre(gasket.loading * 1e9 * gasketArea(plate.gasket).si());
  plate.hub = Hub::cylinder(millimetres(ring.hubRadius), millimetres(ring.hubWall), gigapascals(kSteel), 0.3);
  plate.pair = true;
  SettlingJoint joint;
  joint.body = FlexiblePart{plate, {gasket.unloadingRatio, true}};
  joint.bolts = boltsOf(BoltCircle{ring.bolts, millimetres(ring.boltCircle)}, ring.boltArea,
                        2 * ring.ringHeight + gasket.thickness);
  return {std::move(name), std::move(joint),
          megapascals(kStressMegapascals) * squareMillimetres(ring.boltArea)};
}

/// A cover on a rigid casing, its gasket a strip along the bolts.
SettlingExample coverOn(Message name, const std::vector<Point>& bolts, double thickness, double modulus,
                        double area, double growth) {
  const auto grown = [&](double factor) {
    std::vector<Point> out;
    for (const Point& bolt : bolts) out.push_back({bolt.x * factor, bolt.y * factor});
    return out;
  };
  PlateOnGasket plate;
  plate.plate = {PolygonOutline{grown(growth)}, millimetres(thickness), gigapascals(modulus), 0.33};
  plate.gasket = GasketPath{grown(1), millimetres(10)};
  plate.gasketStiffness = newtonsPerMetre(kFibre.loading * 1e9 * gasketArea(plate.gasket).si());
  SettlingJoint joint;
  joint.body = FlexiblePart{plate, {kFibre.unloadingRatio, true}};
  joint.bolts = boltsOf(bolts, area, thickness + kFibre.thickness);
  return {std::move(name), std::move(joint), megapascals(kStressMegapascals) * squareMillimetres(area)};
}

std::vector<Point> housing() {
  const std::pair<double, double> places[] = {{-60, 40}, {0, 70},    {55, 50},  {75, -10},
                                              {40, -60}, {-25, -70}, {-80, -20}};
  std::vector<Point> out;
  for (const auto& [x, y] : places) out.push_back({millimetres(x), millimetres(y)});
  return out;
}

}  // namespace

std::vector<SettlingExample> settlingExamples() {
  return {flangePair("Flange pair, 8 bolts, spiral-wound gasket",
                     {8, 100, 90, 75, 32, 69.1, 11.2, 215.5, 57, 11}, kSpiralWound),
          flangePair("Flange pair, 12 bolts, fibre gasket",
                     {12, 165, 150, 80, 41.3, 124.3, 15.2, 298, 110, 14}, kFibre),
          flangePair("Flange pair, 24 bolts, spiral-wound gasket",
                     {24, 342.9, 320, 133, 63.5, 282.6, 19, 645, 254, 22}, kSpiralWound),
          coverOn("Aluminium pump cover, 7 bolts, fibre gasket", housing(), 12, 70, 36.6, 1.25)};
}

}  // namespace cw

#include "core/settling/settling_examples.h"

#include <algorithm>
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

struct Cover {
  PlateShape shape;
  GasketShape gasket;
  double thickness, modulus;  // mm, GPa
};

/// A cover on a rigid casing.
SettlingExample coverOn(Message name, const Cover& cover, std::variant<BoltCircle, std::vector<Point>> bolts,
                        double area) {
  PlateOnGasket plate;
  plate.plate = {cover.shape, millimetres(cover.thickness), gigapascals(cover.modulus), 0.33};
  plate.gasket = cover.gasket;
  plate.gasketStiffness = newtonsPerMetre(kFibre.loading * 1e9 * gasketArea(plate.gasket).si());
  SettlingJoint joint;
  joint.body = FlexiblePart{plate, {kFibre.unloadingRatio, true}};
  joint.bolts = boltsOf(std::move(bolts), area, cover.thickness + kFibre.thickness);
  return {std::move(name), std::move(joint), megapascals(kStressMegapascals) * squareMillimetres(area)};
}

std::vector<Point> housing() {
  const std::pair<double, double> places[] = {{-60, 40}, {0, 70},    {55, 50},  {75, -10},
                                              {40, -60}, {-25, -70}, {-80, -20}};
  std::vector<Point> out;
  for (const auto& [x, y] : places) out.push_back({millimetres(x), millimetres(y)});
  return out;
}

/// Its outline and gasket follow the bolts.
Cover coverAlong(const std::vector<Point>& bolts, Length gasketWidth, double growth, double thickness,
                 double modulus) {
  std::vector<Point> rim;
  for (const Point& bolt : bolts) rim.push_back({bolt.x * growth, bolt.y * growth});
  return {PolygonOutline{std::move(rim)}, GasketPath{bolts, gasketWidth}, thickness, modulus};
}

Point middleOf(const std::vector<Position>& places) {
  Point sum;
  for (const Position& place : places) sum.x += place.x, sum.y += place.y;
  const double count = static_cast<double>(places.size());
  return {sum.x / count, sum.y / count};
}

double angleOf(const Point& place) {
  return std::atan2(place.y.si(), place.x.si());
}

/// About their middle, in turn; refused where that is no line round it.
Result<std::vector<Point>> lineRound(const std::vector<Position>& places, Length rim) {
  const auto refused =
      fail(ErrorCode::OutOfRange, "layout", std::to_string(places.size()),
           "these bolts do not stand on one line round a middle", "compare a joint whose bolts go round it");
  const Point middle = middleOf(places);
  std::vector<Point> out;
  for (const Position& place : places) out.push_back({place.x - middle.x, place.y - middle.y});
  std::sort(out.begin(), out.end(), [](const Point& a, const Point& b) { return angleOf(a) < angleOf(b); });
  for (std::size_t i = 0; i < out.size(); ++i) {
    const double step = angleOf(out[(i + 1) % out.size()]) - angleOf(out[i]);
    const double turn = i + 1 < out.size() ? step : step + 2 * kPi;
    if (std::hypot(out[i].x.si(), out[i].y.si()) < rim.si() || turn < 0.01 || turn > 0.95 * kPi)
      return refused;
  }
  return out;
}

}  // namespace

Result<SettlingExample> coverWith(const Layout& layout, const Thread& thread, Message name) {
  CW_TRY(places, positions(layout));
  if (places.size() < 4 || places.size() > static_cast<std::size_t>(kMostSettlingBolts))
    return fail(ErrorCode::OutOfRange, "layout", std::to_string(places.size()),
                {"%1 bolts are not compared", {std::to_string(places.size())}}, "compare 4 to 128");
  const Length d = thread.diameter, rim = 2 * d;
  const double area = thread.stressArea.si() * 1e6, thickness = 1.5 * d.si() * 1e3;
  const auto* circle = std::get_if<Circle>(&layout.shape);
  if (circle != nullptr && layout.leftOut.empty()) {
    const Length radius = circle->diameter / 2;
    return coverOn(std::move(name),
                   {Annulus{{}, radius + rim}, Annulus{radius - d / 2, radius + d / 2}, thickness, kSteel},
                   BoltCircle{static_cast<int>(places.size()), radius}, area);
  }
  CW_TRY(bolts, lineRound(places, rim));
  double mean = 0;
  for (const Point& bolt : bolts)
    mean += std::hypot(bolt.x.si(), bolt.y.si()) / static_cast<double>(bolts.size());
  return coverOn(std::move(name), coverAlong(bolts, d, 1 + rim.si() / mean, thickness, kSteel), bolts, area);
}

std::vector<SettlingExample> settlingExamples() {
  return {flangePair("Flange pair, 8 bolts, spiral-wound gasket",
                     {8, 100, 90, 75, 32, 69.1, 11.2, 215.5, 57, 11}, kSpiralWound),
          flangePair("Flange pair, 12 bolts, fibre gasket",
                     {12, 165, 150, 80, 41.3, 124.3, 15.2, 298, 110, 14}, kFibre),
          flangePair("Flange pair, 24 bolts, spiral-wound gasket",
                     {24, 342.9, 320, 133, 63.5, 282.6, 19, 645, 254, 22}, kSpiralWound),
          coverOn("Aluminium pump cover, 7 bolts, fibre gasket",
                  coverAlong(housing(), millimetres(10), 1.25, 12, 70), housing(), 36.6)};
}

}  // namespace cw

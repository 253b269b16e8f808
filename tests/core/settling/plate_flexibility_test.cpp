// The plate against closed forms.
#include "core/settling/plate_flexibility.h"

#include <gtest/gtest.h>

#include <cmath>

namespace cw {
namespace {

PlateOnGasket ring(double inner, double outer, double thickness, double modulus, const Annulus& gasket) {
  PlateOnGasket plate;
  plate.plate = {Annulus{millimetres(inner), millimetres(outer)}, millimetres(thickness),
                 gigapascals(modulus), 0.3};
  plate.gasket = gasket;
  plate.gasketStiffness = newtonsPerMetre(1e9);
  return plate;
}

Patches headsOnCircles(int count, std::initializer_list<double> radii, double bearing) {
  Patches patches;
  const int head = patches.add(headForm({}, millimetres(bearing)));
  for (const double radius : radii)
    for (int i = 0; i < count; ++i) {
      const double angle = 2 * kPi * i / count;
      patches.patches.push_back(
          {{millimetres(radius * std::cos(angle)), millimetres(radius * std::sin(angle))},
           radians(angle),
           head});
    }
  return patches;
}

// C(φ) = 1/K·(1 + r²·cos φ/i²), i the gasket's radius of gyration about a diameter.
TEST(PlateFlexibility, ARigidRingSinksAndTilts) {
  const auto plate = ring(50, 120, 40, 1e6, {millimetres(60), millimetres(80)});
  const auto flexibility = plateFlexibility(plate, headsOnCircles(8, {100}, 16));
  const double gyration2 = (60.0 * 60 + 80 * 80) / 4;
  for (int i = 0; i < 8; ++i) {
    const double closed = 1e-9 * (1 + 100 * 100 * std::cos(kPi * i / 4) / gyration2);
    EXPECT_NEAR(flexibility(i, 0).si(), closed, 2e-3 * 1e-9 * (1 + 1e4 / gyration2)) << i;
  }
}

// A thin ring under moments M per length all round turns by M·R²/(E·I) everywhere
// (Timoshenko, Strength of Materials II, from memory).
TEST(PlateFlexibility, AThinRingTurnsUnderAnEvenMoment) {
  constexpr int kBolts = 64;
  const auto plate = ring(970, 1030, 60, 200, {millimetres(984), millimetres(986)});
  const auto flexibility = plateFlexibility(plate, headsOnCircles(kBolts, {1015, 985}, 12));
  double atBolt = 0;
  double atGasket = 0;
  for (int i = 0; i < kBolts; ++i) {
    atBolt += flexibility(i, 0).si();
    atGasket += flexibility(i + kBolts, kBolts / 2).si();
  }
  const double moment = kBolts * 0.030 / (2 * kPi * 1.0);
  const double turn = moment / (200e9 * 0.060 * std::pow(0.060, 3) / 12);
  EXPECT_NEAR((atBolt - atGasket) / 0.030 / turn, 1, 0.05);
}

// w = P·β/(2·k)·e^(-βx)·(cos βx + sin βx), β⁴ = k/(4·E·I), k per length
// (Hetényi, Beams on Elastic Foundation, infinite beam under a point load, from memory).
TEST(PlateFlexibility, ALongStripIsABeamOnAnElasticFoundation) {
  PlateOnGasket strip;
  strip.plate = {Rectangle{metres(1), millimetres(20)}, millimetres(10), gigapascals(200), 0};
  strip.gasket =
      std::vector<Band>{{millimetres(-500), millimetres(500), millimetres(-10), millimetres(10), 1}};
  const double rigidity = 200e9 * 0.020 * std::pow(0.010, 3) / 12;
  const double beta = 1 / 0.120;
  const double bed = 4 * rigidity * std::pow(beta, 4);
  strip.gasketStiffness = newtonsPerMetre(bed * 1.0);
  Patches patches;
  const int across = patches.add(rectangleForm(millimetres(4), millimetres(20)));
  for (const double x : {0.0, 60.0, 120.0, 240.0})
    patches.patches.push_back({{millimetres(x), {}}, {}, across});
  const auto flexibility = plateFlexibility(strip, patches);
  for (int i = 0; i < 4; ++i) {
    const double phase = beta * patches.patches[std::size_t(i)].centre.x.si();
    const double closed = beta / (2 * bed) * std::exp(-phase) * (std::cos(phase) + std::sin(phase));
    EXPECT_NEAR(flexibility(i, 0).si(), closed, 0.01 * beta / (2 * bed)) << i;
  }
}

TEST(PlateFlexibility, IsSymmetric) {
  const auto plate = ring(0, 120, 12, 70, {millimetres(60), millimetres(80)});
  const auto flexibility = plateFlexibility(plate, headsOnCircles(5, {100, 30}, 16));
  for (int i = 0; i < flexibility.size(); ++i)
    for (int j = 0; j < i; ++j) EXPECT_NEAR(flexibility(i, j).si(), flexibility(j, i).si(), 1e-18);
}

TEST(PlateFlexibility, APairOfFlangesMovesTwiceAsMuchOnTwiceTheStiffness) {
  auto plate = ring(50, 120, 20, 205, {millimetres(60), millimetres(80)});
  const auto patches = headsOnCircles(4, {100}, 16);
  plate.pair = true;
  const auto pair = plateFlexibility(plate, patches);
  plate.pair = false;
  plate.gasketStiffness = 2 * plate.gasketStiffness;
  const auto one = plateFlexibility(plate, patches);
  EXPECT_NEAR(pair(1, 0) / one(1, 0), 2, 1e-12);
}

TEST(PlateFlexibility, AHubHoldsTheBoreButFollowsATilt) {
  auto plate = ring(50, 120, 20, 205, {millimetres(60), millimetres(80)});
  const auto patches = headsOnCircles(4, {100}, 16);
  const auto without = plateFlexibility(plate, patches);
  plate.hub = Hub::cylinder(millimetres(45), millimetres(10), gigapascals(205), 0.3);
  const auto with = plateFlexibility(plate, patches);
  EXPECT_LT(with(0, 0), without(0, 0));
  // The part of C that turns once round, C(0) - C(180°), is tilt and odd waves: the tilt stays.
  EXPECT_GT((with(0, 0) - with(2, 0)) / (without(0, 0) - without(2, 0)), 0.8);
}

}  // namespace
}  // namespace cw

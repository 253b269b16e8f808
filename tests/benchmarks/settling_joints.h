#pragma once
#include <ctime>

#include "core/settling/settling_joint.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// A steel ring flange pair on a soft gasket that lifts off, sized to its bolts. Invented.
inline SettlingJoint benchmarkJoint(int bolts, bool oneWay) {
  const double radius = 14.0 * bolts;  // mm; 88 mm from bolt to bolt
  PlateOnGasket plate;
  plate.plate = {Annulus{millimetres(radius - 90), millimetres(radius + 40)}, millimetres(50),
                 gigapascals(205), 0.3};
  plate.gasket = Annulus{millimetres(radius - 75), millimetres(radius - 55)};
  plate.gasketStiffness = newtonsPerMetre(150e9 * gasketArea(plate.gasket).si());
  plate.pair = true;
  SettlingJoint joint;
  joint.body = FlexiblePart{plate, {oneWay ? 8.0 : 1.0, oneWay}};
  joint.bolts = {BoltCircle{bolts, millimetres(radius)}, millimetres(30), millimetres(46),
                 newtonsPerMetre(8e8), oneWay};
  return joint;
}

/// Opposite bolts in turn, at 30, 60 and 100 %, then once round.
inline TighteningPlan benchmarkTightening(int bolts) {
  std::vector<int> opposite;
  std::vector<int> round;
  for (int i = 1; i <= bolts / 2; ++i) opposite.insert(opposite.end(), {i, i + bolts / 2});
  for (int i = 1; i <= bolts; ++i) round.push_back(i);
  return {{kilonewtons(200)}, 0.03, {{0.3, opposite}, {0.6, opposite}, {1, opposite}, {1, round}}};
}

/// Milliseconds of processor time that `work` takes: other programs do not count.
template <class Work>
double milliseconds(Work work) {
  const std::clock_t from = std::clock();
  work();
  return 1e3 * static_cast<double>(std::clock() - from) / CLOCKS_PER_SEC;
}

}  // namespace cw

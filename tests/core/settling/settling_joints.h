#pragma once
#include <vector>

#include "core/settling/settling_joint.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// An eight-bolt steel ring, 60/110 mm, 20 mm thick, on a gasket of 62/80 mm. Invented for the tests.
inline SettlingJoint ringJoint(int bolts = 8) {
  PlateOnGasket plate;
  plate.plate = {Annulus{millimetres(60), millimetres(110)}, millimetres(20), gigapascals(205), 0.3};
  plate.gasket = Annulus{millimetres(62), millimetres(80)};
  plate.gasketStiffness = newtonsPerMetre(1e9);
  SettlingJoint joint;
  joint.body = FlexiblePart{plate, {}};
  joint.bolts.places = BoltCircle{bolts, millimetres(95)};
  joint.bolts.hole = millimetres(13);
  joint.bolts.bearing = millimetres(18);
  joint.bolts.stiffness = newtonsPerMetre(3.8e8);
  return joint;
}

/// A four-bolt aluminium cover, 120 × 80 × 8 mm, on a frame of gasket. Invented for the tests.
inline SettlingJoint coverJoint() {
  PlateOnGasket plate;
  plate.plate = {Rectangle{millimetres(120), millimetres(80)}, millimetres(8), gigapascals(70), 0.33};
  plate.gasket =
      std::vector<Band>{{millimetres(-46), millimetres(46), millimetres(-26), millimetres(26), 1},
                        {millimetres(-40), millimetres(40), millimetres(-20), millimetres(20), -1}};
  plate.gasketStiffness = newtonsPerMetre(2e8);
  SettlingJoint joint;
  joint.body = FlexiblePart{plate, {}};
  joint.bolts.places = std::vector<Point>{{millimetres(50), millimetres(30)},
                                          {millimetres(-50), millimetres(30)},
                                          {millimetres(-50), millimetres(-30)},
                                          {millimetres(50), millimetres(-30)}};
  joint.bolts.hole = millimetres(6.6);
  joint.bolts.bearing = millimetres(10);
  joint.bolts.stiffness = newtonsPerMetre(1.4e8);
  return joint;
}

inline FlexiblePart& partOf(SettlingJoint& joint) {
  return std::get<FlexiblePart>(joint.body);
}

/// The joint on a gasket that lifts off and is let go stiffer, with bolts that go slack.
inline SettlingJoint oneWay(SettlingJoint joint, double unloadingRatio = 3) {
  partOf(joint).answer = {unloadingRatio, true};
  joint.bolts.goSlack = true;
  return joint;
}

inline std::vector<int> circular(int bolts) {
  std::vector<int> order;
  for (int i = 1; i <= bolts; ++i) order.push_back(i);
  return order;
}

inline TighteningPlan onePass(std::vector<int> order, double snugShare = 0) {
  return {{kilonewtons(50)}, snugShare, {{1, std::move(order)}}};
}

}  // namespace cw

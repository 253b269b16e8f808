#pragma once
#include <fstream>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "core/settling/settling_joint.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// The finite-element joints of tests/data/settling/flange_fe.json.
inline const nlohmann::json& flangeCases() {
  static const auto file = nlohmann::json::parse(std::ifstream(CW_TEST_DATA "/settling/flange_fe.json"));
  return file.at("cases");
}

inline void setRing(const nlohmann::json& from, SettlingJoint& joint, PlateOnGasket& plate) {
  const double inner = from.at("r_inner");
  plate.plate.shape = Annulus{metres(inner > 0.002 ? inner : 0), metres(from.at("r_outer"))};
  plate.gasket = Annulus{metres(from.at("gasket_r_inner")), metres(from.at("gasket_r_outer"))};
  joint.bolts.places = BoltCircle{from.at("n_bolts"), metres(from.at("r_bolts"))};
}

inline void setRectangle(const nlohmann::json& from, SettlingJoint& joint, PlateOnGasket& plate) {
  plate.plate.shape = Rectangle{metres(from.at("lx")), metres(from.at("ly"))};
  std::vector<Band> bands;
  for (const auto& b : from.at("gasket_rectangles"))
    bands.push_back({metres(b[0]), metres(b[1]), metres(b[2]), metres(b[3]), b[4]});
  plate.gasket = bands;
  std::vector<Point> places;
  for (const auto& p : from.at("bolts_xy")) places.push_back({metres(p[0]), metres(p[1])});
  joint.bolts.places = places;
}

/// The joint as it stands in the file.
inline SettlingJoint flangeJoint(const nlohmann::json& from) {
  SettlingJoint joint;
  PlateOnGasket plate;
  plate.plate.thickness = metres(from.at("thickness"));
  plate.plate.modulus = Stress::si(from.at("E"));
  plate.plate.poisson = from.at("nu");
  plate.gasketStiffness = newtonsPerMetre(from.at("total_gasket_stiffness"));
  joint.bolts.hole = metres(from.at("bearing_hole_diameter"));
  joint.bolts.bearing = metres(from.at("bearing_outer_diameter"));
  joint.bolts.stiffness = newtonsPerMetre(from.at("bolt_stiffness"));
  if (from.contains("r_inner")) {
    setRing(from, joint, plate);
  } else {
    setRectangle(from, joint, plate);
  }
  joint.body = FlexiblePart{plate, {}};
  return joint;
}

inline TighteningPlan flangeTightening(const nlohmann::json& from, const nlohmann::json& programme) {
  TighteningPlan tightening{{newtons(from.at("target"))}, 0, {}};
  for (const auto& pass : programme.at("passes"))
    tightening.passes.push_back({pass.at("fraction"), pass.at("order").get<std::vector<int>>()});
  return tightening;
}

inline Flexibility flangeMatrix(const nlohmann::json& from) {
  const auto& rows = from.at("C");
  Flexibility matrix(static_cast<int>(rows.size()));
  for (int i = 0; i < matrix.size(); ++i)
    for (int j = 0; j < matrix.size(); ++j)
      matrix.set(i, j, metresPerNewton(rows[static_cast<std::size_t>(i)][static_cast<std::size_t>(j)]));
  return matrix;
}

}  // namespace cw

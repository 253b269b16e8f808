#pragma once
#include <nlohmann/json.hpp>
#include <string>

#include "core/settling/settling_model.h"

namespace cw {

/// The outputs of tests/data/settling/ring_cases.json.
const nlohmann::json& ringCases();

/// Two equal ring flanges as closed grillages of Timoshenko beams with torsion on one line of gasket
/// springs: the model that ring_cases.json was computed with, built anew as an oracle for the tightening
/// algebra. It serves rings only and shares no code with the plate.
SettlingModel ringBeamModel(int bolts, const std::string& gasket);

/// Target of the reference cases: 345 MPa on the bolt's area.
Force ringTarget(int bolts);

/// Star of the reference cases, for multiples of four.
std::vector<int> ringStar(int bolts);
std::vector<int> ringCircular(int bolts);

}  // namespace cw

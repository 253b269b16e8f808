#pragma once
#include <string_view>
#include <vector>

#include "core/units/unit.h"

namespace cw {

/// The unit somebody means by this spelling ("in lbs", "Nm", "foot-pounds", "″"), or nullptr. Blanks, hyphens
/// and dots between and after words do not matter. Nor do capitals, except where they tell one SI prefix from
/// another: "mPa" is not MPa.
template <class Tag>
const Unit<Tag>* unitSpelled(std::string_view spelling);
template <>
const TorqueUnit* unitSpelled<TorqueTag>(std::string_view spelling);

/// The torque units of which this word is only the force or only the arm: "lb" gives in·lbf and ft·lbf.
std::vector<const TorqueUnit*> torquesHalfSpelled(std::string_view word);

}  // namespace cw

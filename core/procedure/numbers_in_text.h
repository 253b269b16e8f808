#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/units/stated.h"

namespace cw {

/// What a number in a sentence is the number of.
enum class Counts {
  Nothing,   ///< bare: "60" in "Tighten to 60."
  Things,    ///< "6 screws", "step 4"
  Quantity,  ///< "0.5 mm", "80 %"
  Torques,   ///< "60 in-lb"
};

struct NumberInText {
  std::string digits;
  Counts counts = Counts::Nothing;
  std::optional<StatedTorque> torque;  ///< where it counts a torque
  bool operator==(const NumberInText&) const = default;
};

/// The numbers of a text in their order. In "60-70 in. lbs." and "60 to 70 N·m" both have the unit. Numbers
/// that belong to a name are left out: "M8", "1/4-20", "PCC-1".
std::vector<NumberInText> numbersIn(std::string_view text);

}  // namespace cw

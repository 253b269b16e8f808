#pragma once
#include <string_view>
#include <vector>

#include "core/procedure/sheet.h"
#include "core/units/stated.h"

namespace cw {

// What is inside and what is outside, answered once.

/// Least, wanted and most torque at a position. `low` is zero where the source states a highest torque only.
struct JobTorque {
  StatedTorque low, aim, high;
  bool empty() const { return aim.empty(); }
  bool operator==(const JobTorque&) const = default;
};

/// low <= value <= high, across units. False where there is no torque to compare with.
bool within(const StatedTorque& value, const JobTorque& torque);

/// The same torque, whatever the unit and the digits: 22 and 22.0, 12 in·lbf and 1 ft·lbf.
bool sameTorque(const StatedTorque& a, const StatedTorque& b);

/// The same mark on a tool, letter case and blanks at the ends apart: "t-15" and "T-15".
bool sameMark(std::string_view a, std::string_view b);

/// Widest less narrowest; nothing differs from nothing.
Length differenceOf(const std::vector<StatedLength>& gaps);
/// Do they differ by no more than the sheet allows?
bool even(const std::vector<StatedLength>& gaps, const GapReadings& wanted);

/// Is a measured value, digits in the step's unit, inside the step's limits?
bool withinLimits(const Step& step, const std::string& value);

}  // namespace cw

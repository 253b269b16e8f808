#pragma once
#include <string>

#include "core/base/result.h"
#include "core/fastener/condition.h"
#include "core/units/parse.h"

namespace cw {

// What stands behind an option, read; a refusal names the option.

/// `result`, its refusal placed at the option.
template <class T>
Result<T> named(std::string_view option, Result<T> result) {
  if (!result) result.error().place = option;
  return result;
}

/// A quantity with its unit: "30 N.m", "10 in". The errors of parse().
template <class Tag>
Result<Stated<Tag>> readStated(std::string_view option, std::string_view typed) {
  return named(option, parse<Tag>(typed));
}

/// "75%" as 0.75. InvalidInput without the percent sign: a bare 1 could be 1 % or all.
Result<double> readShare(std::string_view option, std::string_view typed);

/// "0.12", or "0.10..0.14" with its middle as the typical value.
Result<Range> readRange(std::string_view option, std::string_view typed);

/// "45", "45 deg" or "0.8 rad"; a bare number is degrees.
Result<Angle> readAngle(std::string_view option, std::string_view typed);

/// "5..25 N.m" as its two ends.
struct StatedRange {
  StatedTorque low;
  StatedTorque high;
};
Result<StatedRange> readTorqueRange(std::string_view option, std::string_view typed);

}  // namespace cw

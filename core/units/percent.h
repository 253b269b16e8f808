#pragma once
#include <optional>
#include <string_view>

#include "core/base/result.h"
#include "core/units/parse.h"
#include "core/units/rounding.h"

namespace cw {

/// "4 %", "±4 %", "4%", "4 percent" as a fraction: 0.04. Zero or more. InvalidInput for a bare number or
/// anything else, with what to write.
Result<double> parsePercent(std::string_view text, DecimalMark mark = DecimalMark::Point);

/// "4 %" for 0.04, to three significant digits.
std::string percentOf(double fraction);

/// What may be applied where `aim` is wanted, as people write it: "±5 %", "5 %", "±2 N·m", "2 N·m",
/// "26 to 34 N·m", "26-34 N·m", "26 N·m to 34 N·m". InvalidInput for anything else; OutOfRange if the aim is
/// not inside, and for 100 % or more.
Result<TorqueBand> parseTolerance(std::string_view text, const StatedTorque& aim,
                                  DecimalMark mark = DecimalMark::Point);

}  // namespace cw

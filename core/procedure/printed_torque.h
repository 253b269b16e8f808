#pragma once
#include <optional>
#include <string>

#include "core/procedure/sheet.h"

namespace cw {

/// What a printed line says of a torque, as far as it says it: a proposal to whoever answers for the reading.
struct PrintedTorque {
  Reading reading = Reading::Words;
  std::optional<StatedTorque> low, aim, high;
  bool toleranceStated = false;  ///< false: `why` says what was assumed
  std::string why;
};

/// Where a source prints a single value, so much either way is proposed. Common shop practice, no source.
inline constexpr double kAssumedTolerance = 0.10;

/// "60 in. lbs.", "60-70 in-lb", "20 ± 2 N·m", "not over 40 ft-lb", "35 lbs" (nothing is proposed: no unit
/// of torque). A maximum gets no aim, for the source gives none. Digits and unit stay as printed; what is
/// computed from them has at most four digits.
PrintedTorque readPrinted(const std::string& printed);

}  // namespace cw

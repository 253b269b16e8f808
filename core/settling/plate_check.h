#pragma once
#include "core/settling/plate_flexibility.h"

namespace cw {

/// Passes if the part and its gasket can be computed; otherwise the first thing wrong, in one sentence.
/// The limits are those of checkSettling.
Result<void> checkPlate(const PlateOnGasket& plate);

}  // namespace cw

#pragma once
#include "core/settling/plate_flexibility.h"

namespace cw {

/// plateFlexibility for a ring or disc on a ring gasket, one flange: every Fourier term is solved alone.
Flexibility annulusFlexibility(const PlateOnGasket& plate, const Patches& patches);

}  // namespace cw

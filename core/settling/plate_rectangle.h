#pragma once
#include "core/settling/plate_flexibility.h"

namespace cw {

/// plateFlexibility for a rectangle on gasket bands, one plate: products of Legendre polynomials, whose
/// integrals over the plate and over every band are products of integrals along x and along y.
Flexibility rectangleFlexibility(const PlateOnGasket& plate, const Patches& patches);

}  // namespace cw

#pragma once
#include "core/base/result.h"
#include "core/fastener/size_limits.h"
#include "core/fastener/thread.h"

namespace cw {

/// Tolerance classes of bolt and tapped hole that mate.
enum class Fit {
  Metric6g6H,   ///< ISO 965, medium: what is sold where nothing is said
  Metric6h6H,   ///< without allowance
  Unified2A2B,  ///< ASME B1.1, general purpose
  Unified3A3B,  ///< close
};

/// The limits of size that decide how much thread is left to shear: bolt at its least, hole at its widest.
struct ThreadLimits {
  Length majorMin;  ///< Ds,min, external
  Length pitchMin;  ///< Es,min, external
  Length minorMax;  ///< Kn,max, internal
  Length pitchMax;  ///< En,max, internal
};

/// The usual fit of a thread system: 6g/6H or 2A/2B.
Fit usualFit(ThreadSystem system);

/// Limits by the standards' formulas, engagement of one diameter. Metric: ISO 965-1 tolerances rounded to
/// R40 preferred numbers (from memory; of 80 printed limits M1.6 to M64 it meets 69, the rest within 26 µm).
/// Unified: ASME B1.1, class 2 confirmed on printed tables, class 3 from memory. OutOfRange for a fit of the
/// other system or an impossible thread. Checked by: published tests Strip*.
Result<ThreadLimits> limitsOf(const Thread& thread, Fit fit);

/// The same from the library's tables of bolt and hole. InvalidInput if a limit that counts is not tabulated.
Result<ThreadLimits> limitsOf(const SizeLimits& bolt, const SizeLimits& hole);

}  // namespace cw

#pragma once
#include "core/fastener/thread.h"

namespace cw {

/// Basic dimensions that the 60° profile gives to a diameter and a pitch, H = (√3/2)·P:
/// d2 = d − 3H/4, D1 = d − 5H/4 (ISO 68-1:1998, ASME B1.1), d3 = d − 17H/12 (ISO 898-1) or, unified,
/// d − 11H/8 (UNR root, ASME B1.1). `diameter` > 1.3·`pitch` > 0, else the dimensions mean nothing.
Length pitchDiameter(Length diameter, Length pitch);
Length minorDiameter(Length diameter, Length pitch);
Length rootDiameter(ThreadSystem system, Length diameter, Length pitch);

/// Stress area by formula. Metric (ISO 898-1, 9.1.6.1): π/4·((d2 + d3)/2)².
/// Unified (ASME B1.1, appendix B, steel up to 100 ksi): π/4·(d − 0.9743·P)².
Area stressAreaByFormula(ThreadSystem system, Length diameter, Length pitch);

/// Where this thread's stress area comes from: its table, or the formula above, in words for a working.
std::string stressAreaSource(const Thread& thread);

}  // namespace cw

#pragma once
#include <string>

#include "core/fastener/thread.h"
#include "core/units/format.h"
#include "core/units/unit.h"

namespace cw {

/// "9.525 mm (0.375 in)": the value in its own unit, then in the other system's.
template <class Tag>
std::string inBoth(Quantity<Tag> value, const Unit<Tag>& own, const Unit<Tag>& other) {
  return text(value, own, 6) + " (" + text(value, other, 4) + ")";
}

inline std::string inBoth(Length value, ThreadSystem system) {
  return system == ThreadSystem::Metric ? inBoth(value, kMillimetre, kInch)
                                        : inBoth(value, kInch, kMillimetre);
}

inline std::string inBoth(Area value, ThreadSystem system) {
  return system == ThreadSystem::Metric ? inBoth(value, kSquareMillimetre, kSquareInch)
                                        : inBoth(value, kSquareInch, kSquareMillimetre);
}

inline std::string inBoth(Stress value, const StressUnit& own) {
  return inBoth(value, own, &own == &kMegapascal ? kKsi : kMegapascal);
}

}  // namespace cw

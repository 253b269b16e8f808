#pragma once
#include <cmath>
#include <string>

#include "core/units/format.h"

namespace cw {

/// A share of the target as findings name it: "30 %"; "not a number" for what is none.
inline std::string percent(double share) {
  return std::isfinite(share) ? significant(share * 100, 6) + " %" : "not a number";
}

}  // namespace cw

#include "core/units/format.h"

#include <fmt/format.h>

#include <cmath>

#include "core/units/decimal.h"

namespace cw {

std::string fixed(double value, int decimals) {
  if (!std::isfinite(value)) return fmt::format("{}", value);
  return plainText(roundedToPlaces(decimalOf(value), decimals), decimals);
}

std::string significant(double value, int digits) {
  if (!std::isfinite(value)) return fmt::format("{}", value);
  return plainText(roundedToDigits(decimalOf(value), digits));
}

}  // namespace cw

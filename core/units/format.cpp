#include "core/units/format.h"

#include <fmt/format.h>

#include <cmath>

namespace cw {
namespace {

void dropNegativeZero(std::string& text) {
  if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos) text.erase(0, 1);
}

}  // namespace

std::string fixed(double value, int decimals) {
  // Round the shortest text, not the binary value: 2.675 shown to two places is 2.68 to whoever reads 2.675.
  const double nudged = value + std::copysign(std::abs(value) * 1e-15, value);
  std::string out = fmt::format("{:.{}f}", nudged, decimals);
  dropNegativeZero(out);
  return out;
}

std::string significant(double value, int digits) {
  if (value == 0) return "0";
  const int exponent = static_cast<int>(std::floor(std::log10(std::abs(value) * (1 + 1e-15))));
  int decimals = digits - 1 - exponent;
  std::string out;
  if (decimals >= 0) {
    out = fixed(value, decimals);
    if (out.find('.') != std::string::npos) {
      out.erase(out.find_last_not_of('0') + 1);
      if (out.back() == '.') out.pop_back();
    }
  } else {
    const double unit = std::pow(10.0, -decimals);
    out = fixed(std::round(value / unit) * unit, 0);
  }
  dropNegativeZero(out);
  return out;
}

}  // namespace cw

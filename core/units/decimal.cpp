#include "core/units/decimal.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>
#include <cmath>

namespace cw {
namespace {

Decimal withoutOuterZeros(Decimal value) {
  value.digits.erase(value.digits.find_last_not_of('0') + 1);
  if (value.digits.empty()) return Decimal{};
  const std::size_t leading = value.digits.find_first_not_of('0');
  value.digits.erase(0, leading);
  value.exponent -= static_cast<int>(leading);
  return value;
}

/// Adds one to the last digit; "99" becomes "1" with one more place before the point.
void addOneToLast(Decimal& value) {
  value.digits.erase(value.digits.find_last_not_of('9') + 1);
  if (value.digits.empty()) {
    value.digits = "1";
    ++value.exponent;
  } else {
    ++value.digits.back();
  }
}

}  // namespace

int Decimal::places() const {
  return digits.empty() ? 0 : std::max(static_cast<int>(digits.size()) - exponent, 0);
}

Decimal decimalOf(double value) {
  assert(std::isfinite(value));
  std::array<char, 32> buffer;  // the longest is -1.7976931348623157e+308
  const auto written =
      std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, std::chars_format::scientific);
  const std::string_view text(buffer.data(), static_cast<std::size_t>(written.ptr - buffer.data()));
  const std::size_t mark = text.find('e');
  Decimal out = decimalOf(text.substr(0, mark));
  if (out.digits.empty()) return out;

  int power = 0;
  const std::size_t start = mark + (text[mark + 1] == '+' ? 2 : 1);
  std::from_chars(text.data() + start, text.data() + text.size(), power);
  out.exponent += power;
  return out;
}

Decimal decimalOf(std::string_view stated) {
  Decimal out;
  out.negative = stated.starts_with('-');
  if (out.negative) stated.remove_prefix(1);
  const std::size_t whole = std::min(stated.find('.'), stated.size());
  out.exponent = static_cast<int>(whole);
  out.digits = stated.substr(0, whole);
  if (whole < stated.size()) out.digits += stated.substr(whole + 1);
  return withoutOuterZeros(std::move(out));
}

Decimal roundedToDigits(Decimal value, int count) {
  const auto kept = static_cast<std::size_t>(std::max(count, 0));
  if (kept >= value.digits.size()) return value;
  const bool up = count >= 0 && value.digits[kept] >= '5';
  value.digits.erase(kept);
  if (up) addOneToLast(value);
  return withoutOuterZeros(std::move(value));
}

Decimal roundedToPlaces(Decimal value, int places) {
  const int count = value.exponent + places;
  return roundedToDigits(std::move(value), count);
}

std::string plainText(const Decimal& value, int places) {
  const auto digitAt = [&](int i) {
    return i >= 0 && i < static_cast<int>(value.digits.size()) ? value.digits[static_cast<std::size_t>(i)]
                                                               : '0';
  };
  std::string out = value.negative ? "-" : "";
  if (value.exponent <= 0) out += '0';
  for (int i = 0; i < value.exponent; ++i) out += digitAt(i);
  const int shown = std::max(places, value.places());
  if (shown > 0) out += '.';
  for (int i = value.exponent; i < value.exponent + shown; ++i) out += digitAt(i);
  return out;
}

}  // namespace cw

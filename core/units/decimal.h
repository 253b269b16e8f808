#pragma once
#include <string>
#include <string_view>

namespace cw {

/// A number digit by digit: ±0.d₁d₂d₃… × 10^exponent, first and last digit not zero; zero has no digits.
/// Rounding happens here, on the digits a reader sees, and not on the binary value behind them.
struct Decimal {
  bool negative = false;
  std::string digits;
  int exponent = 0;

  /// Digits after the point that it takes to write the number out.
  int places() const;
  bool operator==(const Decimal&) const = default;
};

/// The shortest decimal that reads back as the same double: 2.675 is 2.675. `value` must be finite.
Decimal decimalOf(double value);

/// The number written as a stated value's digits: "60.50", "-0.125", ".5".
Decimal decimalOf(std::string_view stated);

/// Half away from zero, to the first `count` digits; to zero where `count` is below none.
Decimal roundedToDigits(Decimal value, int count);

/// Half away from zero, to `places` digits after the point.
Decimal roundedToPlaces(Decimal value, int places);

/// Plain notation with `places` digits after the point or as many as the number has, never "-0".
std::string plainText(const Decimal& value, int places = 0);

}  // namespace cw

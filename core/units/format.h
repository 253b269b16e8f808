#pragma once
#include <string>

#include "core/units/stated.h"

namespace cw {

/// `value` with `decimals` (0 or more) digits after the point, in plain notation, never "-0". Rounds half
/// away from zero on the shortest decimal text of the double, so 2.675 to two places is "2.68". A value that
/// is not finite comes out as "inf", "-inf" or "nan".
std::string fixed(double value, int decimals);

/// `value` to `digits` (1 or more) significant digits, rounded as by `fixed`, in plain notation without
/// trailing zeros after the point: 8.13, 1200, 0.0023.
std::string significant(double value, int digits);

/// Between a number and its unit: thin, and no line ends there (U+202F).
inline constexpr char kUnitSpace[] = "\u202f";

/// Digits with a unit's symbol as on screen: "60 in·lbf" with that space, "90°" with none.
template <class Tag>
std::string withSymbol(const std::string& digits, const Unit<Tag>& unit) {
  return digits + (unit.symbol == "°" ? "" : kUnitSpace) + std::string(unit.symbol);
}

/// A stated value as on screen, to the letter. Nothing stated gives no text; so do the two below.
template <class Tag>
std::string text(const Stated<Tag>& stated) {
  return stated.empty() ? std::string() : withSymbol(stated.digits, *stated.unit);
}

/// A derived value in a unit, to `digits` significant digits, as on screen.
template <class Tag>
std::string text(Quantity<Tag> value, const Unit<Tag>& unit, int digits = 3) {
  return withSymbol(significant(in(unit, value), digits), unit);
}

/// "60 inch-pounds": where a wrench is set.
template <class Tag>
std::string inWords(const Stated<Tag>& stated) {
  return stated.empty() ? std::string() : stated.digits + " " + std::string(stated.unit->words);
}

/// "60 lbf.in": plain ASCII for files and the command line; parse() reads it back.
template <class Tag>
std::string codeText(const Stated<Tag>& stated) {
  return stated.empty() ? std::string() : stated.digits + " " + std::string(stated.unit->code);
}

}  // namespace cw

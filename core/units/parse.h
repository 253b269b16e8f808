#pragma once
#include <string_view>

#include "core/base/result.h"
#include "core/units/stated.h"

namespace cw {

/// What separates decimals where the text was typed. Stored text always uses Point.
enum class DecimalMark { Point, Comma };

/// Reads digits with an optional decimal fraction and gives them back with a point, otherwise as typed.
/// Takes '.', and ',' where `mark` is Comma. Refused (InvalidInput, with what to write): a comma before
/// exactly three digits, a point there too where `mark` is Comma (both unless the number starts with 0),
/// exponents, grouping, NaN, infinity, empty, more than 20 digits. A sign is kept only if `mayBeNegative`.
Result<std::string> parseNumber(std::string_view text, DecimalMark mark = DecimalMark::Point,
                                bool mayBeNegative = false);

/// Reads a number and its unit as people write it: "60 in-lb", "7,5 Nm" (comma locale), "3 kg-m".
/// InvalidInput for a bare number or a word that is no unit of this kind, naming what to write;
/// "lb" alone is refused as a torque. OutOfRange for a negative value of a kind that has none.
template <class Tag>
Result<Stated<Tag>> parse(std::string_view text, DecimalMark mark = DecimalMark::Point);

/// From a file: number text (point, see parseNumber) and unit code. InvalidInput naming the known codes.
template <class Tag>
Result<Stated<Tag>> statedFromCode(std::string_view digits, std::string_view unitCode);

/// The unit somebody means by this spelling ("in lbs", "Nm", "foot-pounds"), or nullptr.
template <class Tag>
const Unit<Tag>* unitSpelled(std::string_view spelling);

}  // namespace cw

#pragma once
#include <string_view>

#include "core/base/result.h"
#include "core/units/spelling.h"
#include "core/units/stated.h"

namespace cw {

/// What separates decimals where the text was typed. Stored text always uses Point.
enum class DecimalMark { Point, Comma };

/// Reads digits with an optional decimal fraction and gives them back with a point, otherwise as typed.
/// Takes '.', and ',' where `mark` is Comma. Refused (InvalidInput, with what to write): a comma before
/// exactly three digits, a point there too where `mark` is Comma (both unless the number starts with 0),
/// exponents, grouping, NaN, infinity, empty, more than 20 digits. A minus sign is kept if `mayBeNegative`,
/// else it is OutOfRange; a plus sign is dropped.
Result<std::string> parseNumber(std::string_view text, DecimalMark mark = DecimalMark::Point,
                                bool mayBeNegative = false);

/// Reads a number and its unit as people write it: "60 in-lb", "7,5 Nm" (comma locale), "3 kg-m".
/// InvalidInput for a bare number or a word that is no unit of this kind, naming what to write ("60 lb": 60
/// in·lbf or 60 ft·lbf), and for more than 200 bytes. OutOfRange for a negative value of a kind that has
/// none.
template <class Tag>
Result<Stated<Tag>> parse(std::string_view text, DecimalMark mark = DecimalMark::Point);

/// From a file: number text (point, see parseNumber) and unit code. InvalidInput naming the known codes.
template <class Tag>
Result<Stated<Tag>> statedFromCode(std::string_view digits, std::string_view unitCode);

}  // namespace cw

#pragma once
#include <string>

#include "core/base/json.h"
#include "core/units/format.h"
#include "core/units/parse.h"

namespace cw {

/// Digits of a number to nine places, without zeros at the end: "7.5". Read back and written again they
/// stay the same.
inline std::string numeral(double value) {
  std::string text = fixed(value, 9);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text;
}

/// The same of a quantity, in a unit that is named elsewhere.
template <class Tag>
std::string numeral(Quantity<Tag> value, const Unit<Tag>& unit) {
  return numeral(in(unit, value));
}

/// The member `key` as digits in quotes, taken in `unit`; may be negative. InvalidInput otherwise.
template <class Tag>
Result<Quantity<Tag>> readQuantity(JsonReader& reader, std::string_view key, const Unit<Tag>& unit) {
  CW_TRY(text, reader.text(key));
  auto digits = parseNumber(text, DecimalMark::Point, true);
  if (!digits) return fail(within(reader.placeOf(key), digits.error()));
  return quantity(numberOf(*digits), unit);
}

/// The same, or `otherwise` where the member is absent.
template <class Tag>
Result<Quantity<Tag>> readQuantityOr(JsonReader& reader, std::string_view key, const Unit<Tag>& unit,
                                     Quantity<Tag> otherwise) {
  if (!reader.has(key)) return otherwise;
  return readQuantity(reader, key, unit);
}

}  // namespace cw

#pragma once
#include <string>

#include "core/base/json.h"
#include "core/units/decimal.h"
#include "core/units/parse.h"

namespace cw {

/// Digits of a quantity to nine places, without zeros at the end, in a unit that is named elsewhere: "7.5".
/// Read back and written again they stay the same.
template <class Tag>
std::string numeral(Quantity<Tag> value, const Unit<Tag>& unit) {
  return plainText(roundedToPlaces(decimalOf(in(unit, value)), 9));
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

#pragma once
#include "core/base/json.h"
#include "core/units/parse.h"

namespace cw {

/// {"unit":"lbf.in","value":"60"}: how every stated quantity stands in our files.
template <class Tag>
Json toJson(const Stated<Tag>& stated) {
  Json out;
  out.set("value", stated.digits);
  out.set("unit", std::string(stated.unit->code));
  return out;
}

/// Reads that form. InvalidInput naming `place` for anything else, an unknown unit or a third
/// member included.
template <class Tag>
Result<Stated<Tag>> statedFromJson(const Json& value, const std::string& place) {
  CW_TRY(reader, JsonReader::of(value, place));
  CW_TRY(digits, reader.text("value"));
  CW_TRY(unit, reader.text("unit"));
  CW_CHECK(reader.nothingElse());
  auto stated = statedFromCode<Tag>(digits, unit);
  if (!stated) return fail(within(place, stated.error()));
  return stated;
}

/// The member `key`, which must be there.
template <class Tag>
Result<Stated<Tag>> readStated(JsonReader& reader, std::string_view key) {
  const Json* value = reader.optional(key);
  if (value == nullptr)
    return fail(ErrorCode::InvalidInput, reader.placeOf(key), "", "this field is missing",
                R"(write a quantity, for example {"value":"60","unit":"lbf.in"})");
  return statedFromJson<Tag>(*value, reader.placeOf(key));
}

/// The member `key`, or nothing if it is absent or null.
template <class Tag>
Result<std::optional<Stated<Tag>>> readOptionalStated(JsonReader& reader, std::string_view key) {
  const Json* value = reader.optional(key);
  if (value == nullptr) return std::optional<Stated<Tag>>();
  CW_TRY(stated, statedFromJson<Tag>(*value, reader.placeOf(key)));
  return std::optional<Stated<Tag>>(std::move(stated));
}

}  // namespace cw

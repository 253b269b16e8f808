#include <algorithm>
#include <charconv>
#include <cmath>

#include "core/base/json.h"

namespace cw {
namespace {

Message wholeNumber(std::int64_t low, std::int64_t high) {
  return {"write a whole number from %1 to %2", {std::to_string(low), std::to_string(high)}};
}

Result<std::int64_t> integerFrom(const Json& value, std::string place, std::int64_t low, std::int64_t high) {
  const std::string text = canonical(value);
  const auto* digits = value.number();
  const auto end = digits == nullptr ? nullptr : digits->text.data() + digits->text.size();
  std::int64_t number = 0;
  if (digits == nullptr || std::from_chars(digits->text.data(), end, number).ptr != end)
    return fail(ErrorCode::InvalidInput, std::move(place), text, {"%1 is not a whole number", {shown(text)}},
                wholeNumber(low, high));
  if (number < low || number > high)
    return fail(ErrorCode::OutOfRange, std::move(place), text, {"%1 is out of range", {text}},
                wholeNumber(low, high));
  return number;
}

Result<double> decimalFrom(const Json& value, std::string place) {
  double number = 0;
  const auto* digits = value.number();
  const auto end = digits == nullptr ? nullptr : digits->text.data() + digits->text.size();
  if (digits != nullptr && std::from_chars(digits->text.data(), end, number).ptr == end &&
      std::isfinite(number))
    return number;
  const std::string text = canonical(value);
  return fail(ErrorCode::InvalidInput, std::move(place), text, {"%1 is not a number", {shown(text)}},
              "write a number");
}

}  // namespace

Result<std::vector<double>> decimalsFrom(const Json& value, const std::string& place) {
  if (value.array() == nullptr)
    return fail(ErrorCode::InvalidInput, place, canonical(value), "this is not a list", "write [ … ]");
  std::vector<double> out;
  for (const Json& item : *value.array()) {
    CW_TRY(number, decimalFrom(item, place + "[" + std::to_string(out.size()) + "]"));
    out.push_back(number);
  }
  return out;
}

Result<JsonReader> JsonReader::of(const Json& value, std::string place) {
  if (const auto* members = value.object()) return JsonReader(*members, std::move(place));
  return fail(ErrorCode::InvalidInput, std::move(place), "", "this is not an object", "write { … }");
}

std::string JsonReader::placeOf(std::string_view key) const {
  return m_place.empty() ? std::string(key) : m_place + "." + std::string(key);
}

const Json* JsonReader::take(std::string_view key) {
  const auto found = m_members->find(key);
  if (found == m_members->end()) return nullptr;
  m_asked.push_back(found->first);
  return &found->second;
}

const Json* JsonReader::optional(std::string_view key) {
  const Json* value = take(key);
  return value == nullptr || value->isNull() ? nullptr : value;
}

bool JsonReader::has(std::string_view key) const {
  return m_members->find(key) != m_members->end();
}

Result<std::string> JsonReader::text(std::string_view key) {
  const Json* value = take(key);
  if (value == nullptr)
    return fail(ErrorCode::InvalidInput, placeOf(key), "", "this field is missing", "write a text");
  if (const auto* string = value->string()) return *string;
  return fail(ErrorCode::InvalidInput, placeOf(key), canonical(*value),
              {"%1 is not a text", {shown(canonical(*value))}}, "write a text in quotes");
}

Result<std::string> JsonReader::nonEmpty(std::string_view key) {
  CW_TRY(value, text(key));
  if (value.find_first_not_of(" \t\n") == std::string::npos)
    return fail(ErrorCode::InvalidInput, placeOf(key), value, "this text is empty", "write it out");
  return value;
}

Result<std::string> JsonReader::textOr(std::string_view key, std::string otherwise) {
  if (optional(key) == nullptr) return otherwise;
  return text(key);
}

Result<std::int64_t> JsonReader::integer(std::string_view key, std::int64_t low, std::int64_t high) {
  if (const Json* value = take(key)) return integerFrom(*value, placeOf(key), low, high);
  return fail(ErrorCode::InvalidInput, placeOf(key), "", "this field is missing", wholeNumber(low, high));
}

Result<std::vector<std::int64_t>> JsonReader::integers(std::string_view key, std::int64_t low,
                                                       std::int64_t high) {
  CW_TRY(items, list(key));
  std::vector<std::int64_t> out;
  for (const Json& item : *items) {
    CW_TRY(number, integerFrom(item, placeOf(key) + "[" + std::to_string(out.size()) + "]", low, high));
    out.push_back(number);
  }
  return out;
}

Result<double> JsonReader::decimal(std::string_view key) {
  if (const Json* value = take(key)) return decimalFrom(*value, placeOf(key));
  return fail(ErrorCode::InvalidInput, placeOf(key), "", "this field is missing", "write a number");
}

Result<double> JsonReader::decimalOr(std::string_view key, double otherwise) {
  const Json* value = optional(key);
  return value == nullptr ? Result<double>(otherwise) : decimalFrom(*value, placeOf(key));
}

Result<std::vector<double>> JsonReader::decimals(std::string_view key) {
  CW_CHECK(list(key));
  return decimalsFrom(*take(key), placeOf(key));
}

Result<bool> JsonReader::booleanOr(std::string_view key, bool otherwise) {
  const Json* value = optional(key);
  if (value == nullptr) return otherwise;
  if (const bool* flag = value->boolean()) return *flag;
  return fail(ErrorCode::InvalidInput, placeOf(key), canonical(*value),
              {"%1 is neither true nor false", {shown(canonical(*value))}}, "write true or false");
}

Result<const Json::Array*> JsonReader::list(std::string_view key) {
  const Json* value = take(key);
  if (value != nullptr && value->array() != nullptr) return value->array();
  return fail(ErrorCode::InvalidInput, placeOf(key), value == nullptr ? "" : canonical(*value),
              value == nullptr ? Message("this field is missing") : Message("this is not a list"),
              "write [ … ]");
}

Result<const Json::Array*> JsonReader::listOrEmpty(std::string_view key) {
  static const Json::Array kNone;
  if (optional(key) == nullptr) return &kNone;
  return list(key);
}

Result<std::vector<std::string>> JsonReader::textsOrEmpty(std::string_view key) {
  CW_TRY(items, listOrEmpty(key));
  std::vector<std::string> out;
  for (const Json& item : *items) {
    const auto* string = item.string();
    if (string == nullptr || string->find_first_not_of(" \t\n") == std::string::npos)
      return fail(ErrorCode::InvalidInput, placeOf(key) + "[" + std::to_string(out.size()) + "]",
                  canonical(item), {"%1 is not a text", {shown(canonical(item))}}, "write a text in quotes");
    out.push_back(*string);
  }
  return out;
}

Result<JsonReader> JsonReader::object(std::string_view key) {
  if (const Json* value = take(key)) return of(*value, placeOf(key));
  return fail(ErrorCode::InvalidInput, placeOf(key), "", "this field is missing", "write { … }");
}

Json::Object JsonReader::rest() const {
  Json::Object out;
  for (const auto& [key, value] : *m_members)
    if (std::find(m_asked.begin(), m_asked.end(), key) == m_asked.end()) out.emplace(key, value);
  return out;
}

Result<void> JsonReader::nothingElse() const {
  const Json::Object unknown = rest();
  if (unknown.empty()) return {};
  const std::string key = shown(unknown.begin()->first);
  return fail(ErrorCode::InvalidInput, m_place, key, {"the field “%1” is not known here", {key}},
              "leave it out");
}

}  // namespace cw

#pragma once
#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "core/base/result.h"

namespace cw {

/// A JSON value (RFC 8259) that loses nothing: numbers keep their text ("60.50" stays so), objects are kept
/// in key order, which is also the canonical order for ASCII keys. Our own files hold no number but whole
/// ones below 2^53; a decimal number is only met in files that others write (settle, layout).
class Json {
 public:
  struct Number {
    std::string text;
    bool operator==(const Number&) const = default;
  };
  using Array = std::vector<Json>;
  using Object = std::map<std::string, Json, std::less<>>;

  Json() = default;  ///< null
  Json(bool value) : m_value(value) {}
  Json(const char* value) : m_value(std::string(value)) {}
  Json(std::string value) : m_value(std::move(value)) {}
  Json(std::string_view value) : m_value(std::string(value)) {}
  Json(std::int64_t value) : m_value(Number{std::to_string(value)}) {}
  Json(int value) : Json(std::int64_t{value}) {}
  Json(std::size_t value) : Json(static_cast<std::int64_t>(value)) {}
  Json(Number value) : m_value(std::move(value)) {}
  Json(Array value) : m_value(std::move(value)) {}
  Json(Object value) : m_value(std::move(value)) {}

  /// A finite double at full precision (shortest text that reads back the same); for command-line answers
  /// only.
  static Json decimal(double value);

  bool isNull() const { return std::holds_alternative<std::monostate>(m_value); }
  const bool* boolean() const { return std::get_if<bool>(&m_value); }
  const std::string* string() const { return std::get_if<std::string>(&m_value); }
  const Number* number() const { return std::get_if<Number>(&m_value); }
  const Array* array() const { return std::get_if<Array>(&m_value); }
  const Object* object() const { return std::get_if<Object>(&m_value); }
  Array* array() { return std::get_if<Array>(&m_value); }
  Object* object() { return std::get_if<Object>(&m_value); }

  /// Member of an object, or nullptr (also if this is no object).
  const Json* find(std::string_view key) const;

  /// Sets a member; a value that is not an object becomes one.
  Json& set(std::string key, Json value);

  bool operator==(const Json&) const = default;

 private:
  std::variant<std::monostate, bool, std::string, Number, Array, Object> m_value;
};

/// What a file may be at most; more is refused while reading, before memory is spent on it.
struct JsonLimits {
  std::size_t bytes = 64u << 20;
  std::size_t depth = 32;
  std::size_t values = 2'000'000;
};

/// Reads one JSON text. InvalidInput with "line L, column C" as place for: syntax errors, duplicate keys,
/// invalid UTF-8, and anything past a limit.
Result<Json> parseJson(std::string_view text, const JsonLimits& limits = {});

/// One line in canonical form (RFC 8785) for values without decimal numbers: keys sorted, shortest escapes.
/// Non-ASCII keys sort by UTF-8 bytes, which RFC 8785 does not; our own keys are ASCII.
std::string canonical(const Json& value);

/// Indented by two spaces, for files that people read; same key order.
std::string pretty(const Json& value);

/// A list of finite numbers. InvalidInput naming `place` otherwise.
Result<std::vector<double>> decimalsFrom(const Json& value, const std::string& place);

/// Reads the members of one object and remembers which were asked for. Errors carry "place.key".
class JsonReader {
 public:
  /// InvalidInput if `value` is not an object. `value` must outlive the reader.
  static Result<JsonReader> of(const Json& value, std::string place);

  Result<std::string> text(std::string_view key);      ///< a string that is present; may be empty
  Result<std::string> nonEmpty(std::string_view key);  ///< a string with more than blanks
  Result<std::string> textOr(std::string_view key, std::string otherwise);  ///< absent or null: `otherwise`
  Result<std::int64_t> integer(std::string_view key, std::int64_t low, std::int64_t high);
  Result<std::vector<std::int64_t>> integers(std::string_view key, std::int64_t low, std::int64_t high);
  Result<double> decimal(std::string_view key);  ///< any finite number
  Result<double> decimalOr(std::string_view key, double otherwise);
  Result<std::vector<double>> decimals(std::string_view key);
  Result<bool> booleanOr(std::string_view key, bool otherwise);
  Result<const Json::Array*> list(std::string_view key);  ///< an array that is present
  Result<const Json::Array*> listOrEmpty(std::string_view key);
  Result<std::vector<std::string>> textsOrEmpty(std::string_view key);  ///< a list of non-empty strings
  Result<JsonReader> object(std::string_view key);                      ///< reads the members of an object
  const Json* optional(std::string_view key);                           ///< nullptr if absent or null
  bool has(std::string_view key) const;

  /// The members nobody asked for, so that a newer file's fields survive a round trip.
  Json::Object rest() const;

  /// InvalidInput naming the first member nobody asked for: where there is no place to keep it.
  Result<void> nothingElse() const;

  std::string placeOf(std::string_view key) const;
  const std::string& place() const { return m_place; }

 private:
  JsonReader(const Json::Object& members, std::string place)
      : m_members(&members), m_place(std::move(place)) {}
  const Json* take(std::string_view key);
  const Json::Object* m_members;
  std::string m_place;
  std::vector<std::string_view> m_asked;
};

}  // namespace cw

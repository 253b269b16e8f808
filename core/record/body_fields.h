#pragma once
#include <optional>
#include <string>

#include "core/record/body.h"
#include "core/units/stated_json.h"

namespace cw {

// The visitors that write and read the fields of an entry; one overload for each type of field.

/// Adds each field that says something.
class FieldWriter {
 public:
  void operator()(std::string_view key, const std::string& value) {
    if (!value.empty()) put(key, value);
  }
  void operator()(std::string_view key, bool value) {
    if (value) put(key, value);
  }
  void operator()(std::string_view key, int value) { put(key, value); }
  void operator()(std::string_view key, const StatedTorque& value) {
    if (!value.empty()) put(key, toJson(value));
  }
  void operator()(std::string_view key, const Json& value) {
    if (!value.isNull()) put(key, value);
  }
  template <class E>
  requires std::is_enum_v<E>
  void operator()(std::string_view key, E value) { put(key, wordOf(value)); }
  template <class T>
  void operator()(std::string_view key, const std::optional<T>& value) {
    if (value) (*this)(key, *value);
  }
  template <class T>
  void operator()(std::string_view key, const std::vector<T>& value) {
    Json::Array out;
    for (const T& one : value) out.push_back(element(one));
    if (!out.empty()) put(key, std::move(out));
  }
  template <class Tag>
  void operator()(std::string_view key, const Name<Tag>& value) { (*this)(key, value.text); }
  template <class T>
  void operator()(std::string_view key, const Derived<T>& value) { (*this)(key, value.value); }
  template <class T>
  void operator()(std::string_view key, const AsAtUse<T>& value) { (*this)(key, value.value); }

  Json take() { return Json(std::move(m_members)); }

 private:
  static Json element(const std::string& text) { return text; }
  static Json element(int number) { return number; }
  static Json element(const StatedLength& length) { return toJson(length); }
  void put(std::string_view key, Json value) { m_members.emplace(std::string(key), std::move(value)); }
  Json::Object m_members;
};

/// Reads each field that is there, keeping the first error. An enum must be there.
class FieldReader {
 public:
  FieldReader(JsonReader& reader, From from) : m_reader(reader), m_from(from) {}

  void operator()(std::string_view key, std::string& out) { keep(m_reader.textOr(key, ""), out); }
  void operator()(std::string_view key, bool& out) { keep(m_reader.booleanOr(key, false), out); }
  void operator()(std::string_view key, int& out) {
    if (m_reader.has(key)) keep(m_reader.integer(key, 0, 1'000'000), out);
  }
  void operator()(std::string_view key, StatedTorque& out) {
    std::optional<StatedTorque> value;
    (*this)(key, value);
    if (value) out = *value;
  }
  void operator()(std::string_view key, std::optional<StatedTorque>& out) {
    keep(readOptionalStated<TorqueTag>(m_reader, key), out);
  }
  void operator()(std::string_view key, Json& out) {
    if (const Json* value = m_reader.optional(key)) out = *value;
  }
  void operator()(std::string_view key, std::optional<int>& out) {
    if (!m_reader.has(key)) return;
    int value = 0;
    (*this)(key, value);
    out = value;
  }
  template <class E>
  requires std::is_enum_v<E>
  void operator()(std::string_view key, E& out) {
    const auto word = m_reader.text(key);
    if (!word) return keepError(word.error());
    keep(fromWord<E>(*word, m_reader.placeOf(key)), out);
  }
  template <class E>
  requires std::is_enum_v<E>
  void operator()(std::string_view key, std::optional<E>& out) {
    if (!m_reader.has(key)) return;
    E value{};
    (*this)(key, value);
    out = value;
  }
  template <class T>
  void operator()(std::string_view key, std::vector<T>& out) {
    const auto list = m_reader.listOrEmpty(key);
    if (!list) return keepError(list.error());
    out.clear();
    for (const Json& one : **list) {
      auto value = element<T>(one, m_reader.placeOf(key));
      if (!value) return keepError(value.error());
      out.push_back(*std::move(value));
    }
  }
  template <class Tag>
  void operator()(std::string_view key, Name<Tag>& out) { (*this)(key, out.text); }
  template <class T>
  void operator()(std::string_view key, Derived<T>& out) { theProgramsOwn(key, out.value); }
  template <class T>
  void operator()(std::string_view key, AsAtUse<T>& out) { theProgramsOwn(key, out.value); }

  /// The first error, or InvalidInput for a field that no kind's list has asked for.
  Result<void> finish();

 private:
  template <class T>
  void theProgramsOwn(std::string_view key, T& out) {
    if (m_from == From::Chain) {
      if (m_reader.has(key)) (*this)(key, out);
    } else if (m_reader.has(key)) {
      keepError({ErrorCode::InvalidInput, m_reader.placeOf(key), std::string(key),
                 {"“%1” is not stated, the program works it out", {std::string(key)}}, "leave it out"});
    }
  }
  template <class T>
  static Result<T> element(const Json& json, const std::string& place);
  template <class From, class To>
  void keep(Result<From> value, To& out) {
    if (value)
      out = static_cast<To>(*std::move(value));
    else
      keepError(std::move(value).error());
  }
  void keepError(Error error) {
    if (!m_error) m_error = std::move(error);
  }

  JsonReader& m_reader;
  From m_from;
  std::optional<Error> m_error;
};

}  // namespace cw

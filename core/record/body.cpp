#include "core/record/body.h"

#include "core/units/stated_json.h"

namespace cw {
namespace {

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
  void operator()(std::string_view key, const std::optional<int>& value) {
    if (value) put(key, *value);
  }
  void operator()(std::string_view key, const StatedTorque& value) {
    if (!value.empty()) put(key, toJson(value));
  }
  void operator()(std::string_view key, const std::optional<StatedTorque>& value) {
    if (value) put(key, toJson(*value));
  }
  void operator()(std::string_view key, const std::vector<StatedLength>& value) {
    Json::Array lengths;
    for (const StatedLength& length : value) lengths.push_back(toJson(length));
    if (!lengths.empty()) put(key, std::move(lengths));
  }
  void operator()(std::string_view key, const std::vector<std::string>& value) {
    if (!value.empty()) put(key, Json::Array(value.begin(), value.end()));
  }
  void operator()(std::string_view key, const Json& value) {
    if (!value.isNull()) put(key, value);
  }
  template <class E>
  requires std::is_enum_v<E>
  void operator()(std::string_view key, E value) { put(key, wordOf(value)); }
  Json take() { return Json(std::move(m_members)); }

 private:
  void put(std::string_view key, Json value) { m_members.emplace(std::string(key), std::move(value)); }
  Json::Object m_members;
};

/// Reads each field, keeping the first error.
class FieldReader {
 public:
  explicit FieldReader(JsonReader& reader) : m_reader(reader) {}

  void operator()(std::string_view key, std::string& out) { keep(m_reader.textOr(key, ""), out); }
  void operator()(std::string_view key, bool& out) { keep(m_reader.booleanOr(key, false), out); }
  void operator()(std::string_view key, int& out) {
    if (m_reader.has(key)) keep(m_reader.integer(key, 0, 1'000'000), out);
  }
  void operator()(std::string_view key, std::optional<int>& out) {
    if (!m_reader.has(key)) return;
    int value = 0;
    (*this)(key, value);
    out = value;
  }
  void operator()(std::string_view key, StatedTorque& out) {
    std::optional<StatedTorque> value;
    (*this)(key, value);
    if (value) out = *value;
  }
  void operator()(std::string_view key, std::optional<StatedTorque>& out) {
    keep(readOptionalStated<TorqueTag>(m_reader, key), out);
  }
  void operator()(std::string_view key, std::vector<std::string>& out) {
    const auto list = m_reader.listOrEmpty(key);
    if (!list) return keepError(list.error());
    for (const Json& element : **list) {
      const auto* text = element.string();
      if (text == nullptr)
        return keepError({ErrorCode::InvalidInput,
                          m_reader.placeOf(key),
                          canonical(element),
                          {"%1 is not a text", {shown(canonical(element))}},
                          "write texts in quotes"});
      out.push_back(*text);
    }
  }
  void operator()(std::string_view key, std::vector<StatedLength>& out) {
    const auto list = m_reader.listOrEmpty(key);
    if (!list) return keepError(list.error());
    for (const Json& element : **list) {
      auto length = statedFromJson<LengthTag>(element, m_reader.placeOf(key));
      if (!length) return keepError(length.error());
      out.push_back(*std::move(length));
    }
  }
  void operator()(std::string_view key, Json& out) {
    if (const Json* value = m_reader.optional(key)) out = *value;
  }
  template <class E>
  requires std::is_enum_v<E>
  void operator()(std::string_view key, E& out) {
    const auto word = m_reader.text(key);
    if (!word) return keepError(word.error());
    std::string known;
    for (const auto& [value, text] : Words<E>::kAll) {
      if (text == *word) return void(out = value);
      known += (known.empty() ? "" : ", ") + std::string(text);
    }
    keepError({ErrorCode::InvalidInput,
               m_reader.placeOf(key),
               shown(*word),
               {"“%1” is not known here", {shown(*word)}},
               {"write one of %1", {known}}});
  }

  Result<void> finish() {
    if (m_error) return fail(*m_error);
    for (const auto& [key, value] : m_reader.rest())
      return fail(ErrorCode::InvalidInput, m_reader.placeOf(key), key, "this field is not known here",
                  "leave it out, or check its spelling");
    return {};
  }

 private:
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
  std::optional<Error> m_error;
};

template <class T>
Result<Body> readAs(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  T body;
  FieldReader fields(reader);
  T::fields(body, fields);
  CW_CHECK(fields.finish());
  return Body(std::move(body));
}

/// Calls `f.template operator()<T>()` for each alternative of Body.
template <class F, std::size_t... I>
void forEachBody(F&& f, std::index_sequence<I...>) {
  (f.template operator()<std::variant_alternative_t<I, Body>>(), ...);
}
template <class F>
void forEachBody(F&& f) {
  forEachBody(std::forward<F>(f), std::make_index_sequence<std::variant_size_v<Body>>());
}

}  // namespace

std::string_view kindOf(const Body& body) {
  return std::visit([](const auto& b) { return b.kKind; }, body);
}

std::vector<std::string_view> bodyKinds() {
  std::vector<std::string_view> out;
  forEachBody([&]<class T>() { out.push_back(T::kKind); });
  return out;
}

Json bodyToJson(const Body& body) {
  FieldWriter writer;
  std::visit([&]<class T>(const T& b) { T::fields(b, writer); }, body);
  return writer.take();
}

Result<Body> bodyFromJson(std::string_view kind, const Json& json, const std::string& place) {
  std::optional<Result<Body>> out;
  forEachBody([&]<class T>() {
    if (T::kKind == kind) out = readAs<T>(json, place);
  });
  if (out) return *out;
  std::string known;
  for (const auto word : bodyKinds()) known += (known.empty() ? "" : ", ") + std::string(word);
  return fail(ErrorCode::InvalidInput, place + ".kind", kind, {"“%1” is no kind of entry", {shown(kind)}},
              {"write one of %1", {known}});
}

std::string stepOf(const Body& body) {
  return std::visit(
      []<class T>(const T& b) {
        if constexpr (requires { b.step; })
          return b.step;
        else
          return std::string();
      },
      body);
}

}  // namespace cw

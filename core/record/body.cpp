#include "core/record/body.h"

#include "core/record/body_fields.h"

namespace cw {
namespace {

tl::unexpected<Error> wrongElement(const Json& json, const std::string& place, Message what, Message right) {
  what.arguments = {shown(canonical(json))};
  return fail(ErrorCode::InvalidInput, place, canonical(json), std::move(what), std::move(right));
}

template <class T>
Result<Body> readAs(const Json& json, const std::string& place, From from) {
  CW_TRY(reader, JsonReader::of(json, place));
  T body;
  FieldReader fields(reader, from);
  T::fields(body, fields);
  CW_CHECK(fields.finish());
  return Body(std::move(body));
}

/// Reads only the fields that were typed, each over what stands there.
class Overlay {
 public:
  Overlay(const Json& typed, JsonReader& reader) : m_typed(typed), m_fields(reader, From::Chain) {}

  template <class T>
  void operator()(std::string_view key, T& out) {
    if (m_typed.find(key) == nullptr) return;
    if constexpr (kStays<T>)
      m_stays = m_stays.empty() ? std::string(key) : m_stays;
    m_fields(key, out);
  }
  Result<void> finish(const std::string& place) {
    if (!m_stays.empty())
      return fail(ErrorCode::InvalidInput, place + "." + m_stays, m_stays,
                  {"a correction does not change “%1”", {m_stays}},
                  "leave it out; what was done elsewhere or by somebody else is stated anew");
    return m_fields.finish();
  }

 private:
  const Json& m_typed;
  FieldReader m_fields;
  std::string m_stays;
};

}  // namespace

template <>
Result<std::string> FieldReader::element<std::string>(const Json& json, const std::string& place) {
  if (const auto* text = json.string()) return *text;
  return wrongElement(json, place, "%1 is not a text", "write texts in quotes");
}

template <>
Result<int> FieldReader::element<int>(const Json& json, const std::string& place) {
  Json wrapped;
  wrapped.set("number", json);
  CW_TRY(reader, JsonReader::of(wrapped, place));
  const auto number = reader.integer("number", 0, 1'000'000);
  if (number) return static_cast<int>(*number);
  return wrongElement(json, place, "%1 is not a whole number", "write the numbers of entries");
}

template <>
Result<StatedLength> FieldReader::element<StatedLength>(const Json& json, const std::string& place) {
  return statedFromJson<LengthTag>(json, place);
}

Result<void> FieldReader::finish() {
  if (m_error) return fail(*m_error);
  for (const auto& [key, value] : m_reader.rest())
    return fail(ErrorCode::InvalidInput, m_reader.placeOf(key), key, "this field is not known here",
                "leave it out, or check its spelling");
  return {};
}

std::string_view kindOf(const Body& body) {
  return std::visit([](const auto& b) { return b.kKind; }, body);
}

std::vector<std::string_view> bodyKinds() {
  std::vector<std::string_view> out;
  forEachKind([&]<class T>() { out.push_back(T::kKind); });
  return out;
}

bool isCorrectable(const Body& body) {
  return std::visit([](const auto& b) { return b.kCorrection == Correction::Values; }, body);
}

Json bodyToJson(const Body& body) {
  FieldWriter writer;
  std::visit([&]<class T>(const T& b) { T::fields(b, writer); }, body);
  return writer.take();
}

Result<Body> bodyFromJson(std::string_view kind, const Json& json, const std::string& place, From from) {
  std::optional<Result<Body>> out;
  forEachKind([&]<class T>() {
    if (T::kKind == kind) out = readAs<T>(json, place, from);
  });
  if (out) return *out;
  std::string known;
  for (const auto word : bodyKinds()) known += (known.empty() ? "" : ", ") + std::string(word);
  return fail(ErrorCode::InvalidInput, place + ".kind", kind, {"“%1” is no kind of entry", {shown(kind)}},
              {"write one of %1", {known}});
}

Result<Body> overlaid(Body body, const Json& typed, const std::string& place) {
  CW_TRY(reader, JsonReader::of(typed, place));
  Overlay overlay(typed, reader);
  std::visit([&]<class T>(T& b) { T::fields(b, overlay); }, body);
  CW_CHECK(overlay.finish(place));
  return body;
}

const std::string& stepOf(const Body& body) {
  static const std::string kNone;
  return std::visit(
      []<class T>(const T& b) -> const std::string& {
        if constexpr (requires { b.step; })
          return b.step.text;
        else
          return kNone;
      },
      body);
}

}  // namespace cw

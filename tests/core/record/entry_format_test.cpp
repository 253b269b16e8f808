// What is written of the kinds of entry, for people and for other programs, held against the kinds
// themselves.
#include <fstream>

#include "core/record/body.h"
#include "core/record/body_fields.h"
#include "core/record/entry.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

std::string textOf(const std::string& path) {
  std::ifstream in(std::string(CW_SOURCE) + "/" + path, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

template <class E>
Json wordsOf() {
  Json::Array out;
  for (const auto& [value, word] : Words<E>::kAll) out.push_back(word);
  return out;
}

Json referenceTo(const std::string& name) {
  Json out;
  out.set("$ref", "#/$defs/" + name);
  return out;
}

Json ofType(const char* type) {
  Json out;
  out.set("type", type);
  return out;
}

Json listOf(Json item) {
  Json out = ofType("array");
  return out.set("minItems", 1).set("items", std::move(item));
}

/// What a type of field is called, and what stands in its place in a file. One overload for each: a type that
/// is not named here does not compile.
template <class T>
struct Sort;
template <>
struct Sort<std::string> {
  static std::string name() { return "text"; }
  static Json schema() { return referenceTo("text"); }
};
template <>
struct Sort<bool> {
  static std::string name() { return "flag"; }
  static Json schema() {
    Json out;
    return out.set("const", true);  // left out where it is not so
  }
};
template <>
struct Sort<int> {
  static std::string name() { return "number"; }
  static Json schema() {
    Json out = ofType("integer");
    return out.set("minimum", 0).set("maximum", 1'000'000);
  }
};
template <>
struct Sort<Json> {
  static std::string name() { return "object"; }
  static Json schema() { return ofType("object"); }
};
template <>
struct Sort<StatedTorque> {
  static std::string name() { return "torque"; }
  static Json schema() { return referenceTo("torque"); }
};
template <>
struct Sort<StatedLength> {
  static std::string name() { return "length"; }
  static Json schema() { return referenceTo("length"); }
};
template <>
struct Sort<PersonSign> : Sort<std::string> {
  static std::string name() { return "person"; }
};
template <>
struct Sort<ToolId> : Sort<std::string> {
  static std::string name() { return "tool"; }
};
template <>
struct Sort<StepId> : Sort<std::string> {
  static std::string name() { return "step"; }
};
template <>
struct Sort<PositionLabel> : Sort<std::string> {
  static std::string name() { return "position"; }
};
template <class E>
requires std::is_enum_v<E>
struct Sort<E> {
  static std::string name() {
    std::string out;
    for (const auto& [value, word] : Words<E>::kAll) out += (out.empty() ? "" : ", ") + std::string(word);
    return out;
  }
  static Json schema() {
    Json out;
    return out.set("enum", wordsOf<E>());
  }
};
template <class T>
struct Sort<std::optional<T>> : Sort<T> {};
template <class T>
struct Sort<std::vector<T>> {
  static std::string name() { return "list of " + Sort<T>::name() + "s"; }
  static Json schema() { return listOf(Sort<T>::schema()); }
};
template <class T>
struct Sort<Derived<T>> : Sort<T> {
  static std::string name() { return Sort<T>::name() + ", worked out"; }
};
template <class T>
struct Sort<AsAtUse<T>> : Sort<T> {
  static std::string name() { return Sort<T>::name() + ", from the shop"; }
};

/// Always written: what has no value that says nothing.
template <class T>
inline constexpr bool kAlways = std::is_enum_v<T> || std::is_same_v<T, int>;
template <class T>
inline constexpr bool kAlways<Derived<T>> = kAlways<T>;
template <class T>
inline constexpr bool kAlways<AsAtUse<T>> = kAlways<T>;

struct Described {
  std::string words;
  Json::Object properties;
  Json::Array required;

  template <class T>
  void operator()(std::string_view key, const T&) {
    words += (words.empty() ? "" : "; ") + ("`" + std::string(key) + "` ") + Sort<T>::name();
    properties.emplace(std::string(key), Sort<T>::schema());
    if constexpr (kAlways<T>) required.push_back(key);
  }
};

template <class T>
Described described() {
  Described out;
  const T body;
  T::fields(body, out);
  return out;
}

std::string tableOfKinds() {
  std::string out = "| kind | fields | corrected |\n|---|---|---|\n";
  forEachKind([&]<class T>() {
    const std::string words = described<T>().words;
    out += "| `" + std::string(T::kKind) + "` | " + (words.empty() ? "none" : words) + " | " +
           (T::kCorrection == Correction::Values ? "yes" : "no") + " |\n";
  });
  return out;
}

template <class Tag>
Json quantity() {
  Json::Array units;
  for (const auto* unit : unitsOf<Tag>()) units.push_back(unit->code);
  Json unit, value = ofType("string"), properties, out = ofType("object");
  unit.set("enum", std::move(units));
  value.set("pattern", "^[0-9]*(\\.[0-9]+)?$").set("minLength", 1);
  properties.set("unit", std::move(unit)).set("value", std::move(value));
  return out.set("required", Json::Array{"unit", "value"})
      .set("additionalProperties", false)
      .set("properties", std::move(properties));
}

Json closed(Json::Object properties, Json::Array required) {
  Json out = ofType("object");
  if (!required.empty()) out.set("required", std::move(required));
  return out.set("additionalProperties", false).set("properties", Json(std::move(properties)));
}

Json pattern(const char* text, const char* says) {
  Json out = ofType("string");
  return out.set("description", says).set("pattern", text);
}

Json voucher() {
  Json role, how, apprentice, all = ofType("array");
  role.set("enum", wordsOf<Role>()), how.set("enum", wordsOf<Vouch>()), apprentice.set("const", true);
  all.set("items", std::move(role));
  return closed({{"person", referenceTo("text")},
                 {"name", ofType("string")},
                 {"roles", std::move(all)},
                 {"apprentice", std::move(apprentice)},
                 {"how", std::move(how)}},
                {"person", "name", "roles", "how"});
}

Json schemaOfEntries() {
  const char* time =
      "^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]+)?(Z|[+-][0-9]{2}:[0-9]{2})$";
  Json text = ofType("string"), version, sequence = ofType("integer"), kind;
  text.set("minLength", 1);
  version.set("const", kEntryVersion);
  sequence.set("minimum", 1);
  Json::Object definitions{
      {"text", std::move(text)},
      {"torque", quantity<TorqueTag>()},
      {"length", quantity<LengthTag>()},
      {"doer", closed({{"person", referenceTo("text")}, {"tool", referenceTo("text")}}, {"person"})},
      {"voucher", voucher()}};
  Json::Array kinds, bodies;
  forEachKind([&]<class T>() {
    Described fields = described<T>();
    definitions.emplace(T::kKind, closed(std::move(fields.properties), std::move(fields.required)));
    Json is, only, given, body, then, rule;
    is.set("const", T::kKind), only.set("kind", std::move(is)), given.set("properties", std::move(only));
    body.set("body", referenceTo(std::string(T::kKind))), then.set("properties", std::move(body));
    bodies.push_back(rule.set("if", std::move(given)).set("then", std::move(then)));
    kinds.push_back(T::kKind);
  });
  kind.set("enum", std::move(kinds));
  Json out = closed({{"v", std::move(version)},
                     {"seq", std::move(sequence)},
                     {"id", pattern("^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$",
                                    "The caller's UUID: a replay doubles nothing.")},
                     {"time", pattern(time, "When it was entered.")},
                     {"done", pattern(time, "When it was done, of a late entry.")},
                     {"entered_by", referenceTo("text")},
                     {"by", listOf(referenceTo("doer"))},
                     {"supervisor", referenceTo("text")},
                     {"vouched", listOf(referenceTo("voucher"))},
                     {"kind", std::move(kind)},
                     {"body", ofType("object")}},
                    {"v", "seq", "id", "time", "entered_by", "by", "vouched", "kind", "body"});
  return out.set("$schema", "https://json-schema.org/draft/2020-12/schema")
      .set("$id", "clampwright.entry." + std::to_string(kEntryVersion))
      .set("title", "Clampwright entry, version " + std::to_string(kEntryVersion))
      .set("description",
           "One entry of a job, as in the list of a torque record. What is empty or not so is left out. "
           "Whether an "
           "entry was allowed where it stands is judged by the program.")
      .set("allOf", std::move(bodies))
      .set("$defs", Json(std::move(definitions)));
}

TEST(EntryFormat, EachKindStandsInTheDocumentsAsItIs) {
  EXPECT_NE(textOf("DEVELOPERS.md").find("\n" + tableOfKinds() + "\n"), std::string::npos)
      << "DEVELOPERS.md, “Kinds of entry”, is to hold:\n"
      << tableOfKinds();
}

TEST(EntryFormat, TheSchemaIsThatOfTheKinds) {
  EXPECT_EQ(textOf("resources/formats/entry.schema.json"), pretty(schemaOfEntries()));
}

}  // namespace
}  // namespace cw

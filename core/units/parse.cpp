#include "core/units/parse.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <vector>

namespace cw {
namespace {

/// Blank, NBSP and thin spaces, at either end.
std::string_view trimmed(std::string_view text) {
  static constexpr std::string_view kBlanks[] = {" ", "\t", "\u00a0", "\u2009", "\u202f"};
  for (bool again = true; again;) {
    again = false;
    for (const auto blank : kBlanks) {
      while (text.starts_with(blank)) text.remove_prefix(blank.size()), again = true;
      while (text.ends_with(blank)) text.remove_suffix(blank.size()), again = true;
    }
  }
  return text;
}

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

/// Length of the leading run that could belong to a number.
std::size_t numberLength(std::string_view text) {
  std::size_t i = !text.empty() && (text[0] == '-' || text[0] == '+') ? 1 : 0;
  while (i < text.size() && (isDigit(text[i]) || text[i] == '.' || text[i] == ',')) ++i;
  return i;
}

/// Folds a unit's spelling to letters only: "In-Lbs." and "in·lbs" both become "inlbs".
std::string folded(std::string_view text) {
  static constexpr std::string_view kJoiners[] = {" ", ".", "-", "*",      "·",      "⋅",
                                                  "•", "‑", "–", "\u00a0", "\u2009", "\u202f"};
  std::string out;
  while (!text.empty()) {
    const auto joiner = std::find_if(std::begin(kJoiners), std::end(kJoiners),
                                     [&](std::string_view j) { return text.starts_with(j); });
    if (joiner != std::end(kJoiners)) {
      text.remove_prefix(joiner->size());
      continue;
    }
    const char c = text.front();
    out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    text.remove_prefix(1);
  }
  return out;
}

template <class Tag>
struct Spellings;  // per kind: words, a noun for messages, an example

template <>
struct Spellings<TorqueTag> {
  static constexpr const char* kNoun = "torque";
  static constexpr const char* kExample = "write one, for example 60 in·lbf, 5 ft·lbf or 7 N·m";
  static constexpr bool kNegative = false;
  static const std::vector<std::pair<std::string_view, const TorqueUnit*>>& words() {
    static const std::vector<std::pair<std::string_view, const TorqueUnit*>> kWords = [] {
      std::vector<std::pair<std::string_view, const TorqueUnit*>> all{
          {"nm", &kNewtonMetre},
          {"newtonmetre", &kNewtonMetre},
          {"newtonmetres", &kNewtonMetre},
          {"newtonmeter", &kNewtonMetre},
          {"newtonmeters", &kNewtonMetre},
          {"ncm", &kNewtonCentimetre},
          {"newtoncentimetres", &kNewtonCentimetre},
          {"newtoncentimeters", &kNewtonCentimetre},
          {"inozf", &kOunceInch},
          {"ozfin", &kOunceInch},
          {"inoz", &kOunceInch},
          {"ozin", &kOunceInch},
          {"inounces", &kOunceInch},
          {"inchounces", &kOunceInch},
          {"ounceinches", &kOunceInch},
          {"kgfm", &kKilogramMetre},
          {"kgm", &kKilogramMetre},
          {"mkg", &kKilogramMetre},
          {"mkgf", &kKilogramMetre},
          {"kpm", &kKilogramMetre},
          {"kilogrammetres", &kKilogramMetre},
          {"kilogrammeters", &kKilogramMetre},
          {"kgfcm", &kKilogramCentimetre},
          {"kgcm", &kKilogramCentimetre},
          {"cmkg", &kKilogramCentimetre},
          {"kilogramcentimetres", &kKilogramCentimetre},
          {"kilogramcentimeters", &kKilogramCentimetre}};
      static constexpr std::string_view kInches[] = {
          "inlb",       "inlbs",     "inlbf",       "lbin",    "lbsin",    "lbfin",
          "inchlb",     "inchlbs",   "inchlbf",     "inpound", "inpounds", "inchpound",
          "inchpounds", "poundinch", "poundinches", "lbinch",  "lbfinch"};
      static constexpr std::string_view kFeet[] = {
          "ftlb",       "ftlbs",     "ftlbf",     "lbft",    "lbsft",    "lbfft",
          "footlb",     "footlbs",   "footlbf",   "ftpound", "ftpounds", "footpound",
          "footpounds", "poundfoot", "poundfeet", "lbfoot",  "lbffoot"};
      for (const auto word : kInches) all.emplace_back(word, &kPoundInch);
      for (const auto word : kFeet) all.emplace_back(word, &kPoundFoot);
      return all;
    }();
    return kWords;
  }
};

#define CW_SPELLINGS(Tag, UnitType, noun, example, negative, ...)                                 \
  template <>                                                                                     \
  struct Spellings<Tag> {                                                                         \
    static constexpr const char* kNoun = noun;                                                    \
    static constexpr const char* kExample = example;                                              \
    static constexpr bool kNegative = negative;                                                   \
    static const std::vector<std::pair<std::string_view, const UnitType*>>& words() {             \
      static const std::vector<std::pair<std::string_view, const UnitType*>> kWords{__VA_ARGS__}; \
      return kWords;                                                                              \
    }                                                                                             \
  };

CW_SPELLINGS(ForceTag, ForceUnit, "force", "write one, for example 17 kN or 3800 lbf", false,
             {"newtons", &kNewton}, {"lb", &kPoundForce}, {"lbs", &kPoundForce}, {"kg", &kKilogramForce},
             {"kips", &kKip})
CW_SPELLINGS(LengthTag, LengthUnit, "length", "write one, for example 12 mm or 0.5 in", true,
             {"inch", &kInch}, {"inches", &kInch}, {"\"", &kInch}, {"foot", &kFoot}, {"feet", &kFoot},
             {"µm", &kMicrometre}, {"μm", &kMicrometre})
CW_SPELLINGS(AreaTag, AreaUnit, "area", "write one, for example 58 mm2 or 0.09 in2", false,
             {"mm²", &kSquareMillimetre}, {"in²", &kSquareInch})
CW_SPELLINGS(StressTag, StressUnit, "pressure or stress", "write one, for example 640 MPa or 15 psi", true,
             {"n/mm2", &kMegapascal}, {"n/mm²", &kMegapascal}, {"lb/in2", &kPsi})
CW_SPELLINGS(AngleTag, AngleUnit, "angle", "write one, for example 90°", true, {"°", &kDegree},
             {"degree", &kDegree}, {"degrees", &kDegree})
CW_SPELLINGS(StiffnessTag, StiffnessUnit, "stiffness", "write one, for example 400 kN/mm", false, {})
CW_SPELLINGS(TemperatureTag, TemperatureUnit, "temperature", "write one, for example 20 °C or 68 °F", true,
             {"°c", &kCelsius}, {"c", &kCelsius}, {"°f", &kFahrenheit}, {"f", &kFahrenheit})
CW_SPELLINGS(MassTag, MassUnit, "mass", "write one, for example 2 kg", false, {})
CW_SPELLINGS(VolumeTag, VolumeUnit, "volume", "write one, for example 0.76 L", false, {})
CW_SPELLINGS(DurationTag, DurationUnit, "time", "write one, for example 20 min", false, {"minutes", &kMinute},
             {"minute", &kMinute}, {"hours", &kHour}, {"hour", &kHour}, {"seconds", &kSecond})

#undef CW_SPELLINGS

tl::unexpected<Error> noNumber(std::string_view text, Message expected) {
  return fail(ErrorCode::InvalidInput, "", text, {"“%1” is not a number", {shown(text)}},
              std::move(expected));
}

}  // namespace

double numberOf(const std::string& digits) {
  double value = 0;
  const char* first = digits.data() + (digits.starts_with('+') ? 1 : 0);
  std::from_chars(first, digits.data() + digits.size(), value);
  return value;
}

Result<std::string> parseNumber(std::string_view typed, DecimalMark mark, bool mayBeNegative) {
  const std::string_view text = trimmed(typed);
  std::string_view body = text;
  const bool signedText = !body.empty() && (body[0] == '-' || body[0] == '+');
  if (signedText) body.remove_prefix(1);

  const auto separators =
      std::count_if(body.begin(), body.end(), [](char c) { return c == '.' || c == ','; });
  const auto digits = std::count_if(body.begin(), body.end(), isDigit);
  if (digits == 0 || static_cast<std::size_t>(digits + separators) != body.size() || body.back() == '.' ||
      body.back() == ',')
    return noNumber(typed, "write plain digits with at most one decimal point, for example 12.5");
  if (digits > 20) return noNumber(typed, "write at most 20 digits");
  if (separators > 1) return noNumber(typed, "write no grouping marks, and at most one decimal mark");

  std::string out(text);
  if (separators == 1) {
    const std::size_t at = out.find_first_of(".,");
    const bool comma = out[at] == ',';
    const bool couldGroup = out.size() - at - 1 == 3 && body[0] != '0' && body[0] != '.' && body[0] != ',';
    if (couldGroup && (comma || mark == DecimalMark::Comma))
      return fail(ErrorCode::InvalidInput, "", typed, {"“%1” could mean two numbers", {shown(typed)}},
                  {"write %1%2 without the mark, or with other decimals",
                   {std::string(out, 0, at), out.substr(at + 1)}});
    if (comma && mark == DecimalMark::Point) return noNumber(typed, "write a decimal point, not a comma");
    out[at] = '.';
  }
  if (signedText && text[0] == '-' && !mayBeNegative)
    return fail(ErrorCode::OutOfRange, "", typed, {"“%1” is below zero", {shown(typed)}},
                "write a value of zero or more");
  if (out.starts_with('+')) out.erase(0, 1);
  return out;
}

template <class Tag>
const Unit<Tag>* unitSpelled(std::string_view spelling) {
  for (const Unit<Tag>* unit : unitsOf<Tag>())
    if (spelling == unit->code || spelling == unit->symbol) return unit;
  const std::string word = folded(spelling);
  for (const auto& [known, unit] : Spellings<Tag>::words())
    if (word == known) return unit;
  return nullptr;
}

template <class Tag>
Result<Stated<Tag>> parse(std::string_view typed, DecimalMark mark) {
  using Words = Spellings<Tag>;
  const std::string_view text = trimmed(typed);
  if (text.empty())
    return fail(ErrorCode::InvalidInput, "", typed, {"the %1 is empty", {Words::kNoun}}, Words::kExample);
  const std::size_t length = numberLength(text);
  if (text.substr(0, length).find_first_of("0123456789") == std::string_view::npos)
    return noNumber(
        typed,
        Message{"a %1 starts with a number and has a unit: " + std::string(Words::kExample), {Words::kNoun}});
  const std::string_view word = trimmed(text.substr(length));
  CW_TRY(digits, parseNumber(text.substr(0, length), mark, Words::kNegative));
  if (word.empty())
    return fail(ErrorCode::InvalidInput, "", typed, {"“%1” has no %2 unit", {shown(typed), Words::kNoun}},
                Words::kExample);
  const Unit<Tag>* unit = unitSpelled<Tag>(word);
  if (unit == nullptr)
    return fail(ErrorCode::InvalidInput, "", typed, {"“%1” is no %2 unit", {shown(word), Words::kNoun}},
                Words::kExample);
  return Stated<Tag>{std::move(digits), unit};
}

template <class Tag>
Result<Stated<Tag>> statedFromCode(std::string_view digits, std::string_view unitCode) {
  CW_TRY(number, parseNumber(digits, DecimalMark::Point, Spellings<Tag>::kNegative));
  if (const Unit<Tag>* unit = unitWithCode<Tag>(unitCode)) return Stated<Tag>{std::move(number), unit};
  std::string known;
  for (const Unit<Tag>* unit : unitsOf<Tag>()) known += (known.empty() ? "" : ", ") + std::string(unit->code);
  return fail(ErrorCode::InvalidInput, "", unitCode,
              {"“%1” is no %2 unit", {shown(unitCode), Spellings<Tag>::kNoun}}, {"write one of %1", {known}});
}

#define CW_PARSE(Tag)                                                     \
  template const Unit<Tag>* unitSpelled<Tag>(std::string_view);           \
  template Result<Stated<Tag>> parse<Tag>(std::string_view, DecimalMark); \
  template Result<Stated<Tag>> statedFromCode<Tag>(std::string_view, std::string_view);
CW_PARSE(TorqueTag)
CW_PARSE(ForceTag)
CW_PARSE(LengthTag)
CW_PARSE(AreaTag)
CW_PARSE(StressTag)
CW_PARSE(AngleTag)
CW_PARSE(StiffnessTag)
CW_PARSE(TemperatureTag)
CW_PARSE(MassTag)
CW_PARSE(VolumeTag)
CW_PARSE(DurationTag)
#undef CW_PARSE

}  // namespace cw

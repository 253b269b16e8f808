#include "core/units/parse.h"

#include <algorithm>
#include <charconv>

#include "core/units/kind.h"
#include "core/units/typed_text.h"

namespace cw {
namespace {

constexpr std::size_t kMostDigits = 20;
constexpr std::size_t kMostBytes = 200;

bool isDigit(char c) {
  return c >= '0' && c <= '9';
}

bool isMark(char c) {
  return c == '.' || c == ',';
}

/// A number as typed, taken apart but not yet judged.
struct TypedNumber {
  bool plus = false;
  bool minus = false;
  std::string_view body;  ///< digits and marks
  std::string_view rest;  ///< all that follows

  auto count(bool (*matches)(char)) const { return std::count_if(body.begin(), body.end(), matches); }
  std::size_t mark() const { return std::min(body.find_first_of(".,"), body.size()); }
};

TypedNumber takeNumber(std::string_view text) {
  TypedNumber number;
  const std::size_t hyphen = hyphenLength(text);
  number.minus = hyphen > 0;
  number.plus = text.starts_with('+');
  text.remove_prefix(number.plus ? 1 : hyphen);
  const auto end = std::find_if_not(text.begin(), text.end(), [](char c) { return isDigit(c) || isMark(c); });
  number.body = text.substr(0, static_cast<std::size_t>(end - text.begin()));
  number.rest = text.substr(number.body.size());
  return number;
}

/// "1,200" is 1200 to one reader and 1.2 to the next.
bool couldMeanTwo(const TypedNumber& number, DecimalMark mark) {
  const std::size_t at = number.mark();
  const bool groups = at + 4 == number.body.size() && at > 0 && number.body[0] != '0';
  return groups && (number.body[at] == ',' || mark == DecimalMark::Comma);
}

tl::unexpected<Error> noNumber(std::string_view typed, Message expected) {
  return fail(ErrorCode::InvalidInput, "", typed, {"“%1” is not a number", {shown(typed)}},
              std::move(expected));
}

tl::unexpected<Error> twoMeanings(std::string_view typed, const TypedNumber& number, DecimalMark mark) {
  const std::string whole(number.body.substr(0, number.mark()));
  const std::string fraction(number.body.substr(number.mark() + 1));
  return fail(ErrorCode::InvalidInput, "", typed, {"“%1” could mean two numbers", {shown(typed)}},
              {"write %1 or %2",
               {whole + fraction,
                mark == DecimalMark::Comma ? whole + "," + fraction + "0" : whole + "." + fraction}});
}

Message anyOf(const std::vector<const TorqueUnit*>& units, const std::string& digits) {
  const auto with = [&](const TorqueUnit* unit) { return digits + " " + std::string(unit->symbol); };
  if (units.size() == 1) return {"write %1", {with(units[0])}};
  return {"write %1 or %2", {with(units[0]), with(units[1])}};
}

/// What to write in place of a unit that is none of this kind.
template <class Tag>
Message insteadOf(std::string_view, const std::string& digits) {
  return {kKindOf<Tag>.instead, {digits}};
}

template <>
Message insteadOf<TorqueTag>(std::string_view word, const std::string& digits) {
  const auto meant = torquesHalfSpelled(word);
  return meant.empty() ? Message{kKindOf<TorqueTag>.instead, {digits}} : anyOf(meant, digits);
}

/// The unit that follows a number, or what to write with that number instead.
template <class Tag>
Result<const Unit<Tag>*> unitAfter(const std::string& digits, std::string_view word, std::string_view typed) {
  const std::string noun(kKindOf<Tag>.noun);
  if (word.empty())
    return fail(ErrorCode::InvalidInput, "", typed, {"“%1” has no %2 unit", {shown(typed), noun}},
                insteadOf<Tag>(word, digits));
  if (const Unit<Tag>* unit = unitSpelled<Tag>(word)) return unit;
  if (const TypedNumber second = takeNumber(word); second.count(isDigit) > 0)
    return fail(ErrorCode::InvalidInput, "", typed, {"“%1” holds more than one number", {shown(typed)}},
                "write one number without gaps, then its unit");
  return fail(ErrorCode::InvalidInput, "", typed, {"“%1” is no %2 unit", {shown(word), noun}},
              insteadOf<Tag>(word, digits));
}

}  // namespace

double numberOf(std::string_view digits) {
  double value = 0;
  std::from_chars(digits.data(), digits.data() + digits.size(), value);
  return value;
}

Result<std::string> parseNumber(std::string_view typed, DecimalMark mark, bool mayBeNegative) {
  const TypedNumber number = takeNumber(withoutOuterBlanks(typed));
  if (number.count(isDigit) == 0 || !number.rest.empty() || isMark(number.body.back()))
    return noNumber(typed, "write plain digits with at most one decimal mark, for example 12.5");
  if (static_cast<std::size_t>(number.count(isDigit)) > kMostDigits)
    return noNumber(typed, "write at most 20 digits");
  if (number.count(isMark) > 1)
    return noNumber(typed, "write no grouping marks, and at most one decimal mark");
  if (couldMeanTwo(number, mark)) return twoMeanings(typed, number, mark);

  std::string out = (number.minus ? "-" : "") + std::string(number.body);
  if (const std::size_t comma = out.find(','); comma != std::string::npos) {
    if (mark == DecimalMark::Point) return noNumber(typed, "write a decimal point, not a comma");
    out[comma] = '.';
  }
  if (number.minus && !mayBeNegative)
    return fail(ErrorCode::OutOfRange, "", typed, {"“%1” is negative", {shown(typed)}},
                "write a value of zero or more");
  return out;
}

template <class Tag>
Result<Stated<Tag>> parse(std::string_view typed, DecimalMark mark) {
  const Kind& kind = kKindOf<Tag>;
  const std::string_view text = withoutOuterBlanks(typed);
  if (text.empty())
    return fail(ErrorCode::InvalidInput, "", typed, {"the %1 is empty", {std::string(kind.noun)}},
                kind.example);
  if (text.size() > kMostBytes)
    return fail(ErrorCode::InvalidInput, "", typed, {"“%1” is too long", {shown(text)}}, kind.example);
  const TypedNumber number = takeNumber(text);
  if (number.count(isDigit) == 0) return noNumber(typed, kind.example);
  CW_TRY(digits, parseNumber(text.substr(0, text.size() - number.rest.size()), mark, kind.mayBeNegative));
  CW_TRY(unit, unitAfter<Tag>(digits, withoutOuterBlanks(number.rest), typed));
  return Stated<Tag>{std::move(digits), unit};
}

template <class Tag>
Result<Stated<Tag>> statedFromCode(std::string_view digits, std::string_view unitCode) {
  CW_TRY(number, parseNumber(digits, DecimalMark::Point, kKindOf<Tag>.mayBeNegative));
  if (const Unit<Tag>* unit = unitWithCode<Tag>(unitCode)) return Stated<Tag>{std::move(number), unit};
  std::string known;
  for (const Unit<Tag>* unit : unitsOf<Tag>()) known += (known.empty() ? "" : ", ") + std::string(unit->code);
  return fail(ErrorCode::InvalidInput, "", unitCode,
              {"“%1” is no %2 unit", {shown(unitCode), std::string(kKindOf<Tag>.noun)}},
              {"write one of %1", {known}});
}

#define CW_PARSE(Tag)                                                     \
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

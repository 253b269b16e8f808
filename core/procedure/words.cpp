#include "core/procedure/words.h"

#include <array>
#include <utility>

namespace cw {
namespace {

template <class Enum>
using Row = std::pair<Enum, std::string_view>;

constexpr std::array<Row<FastenerKind>, 4> kFastenerKinds{{{FastenerKind::Bolt, "bolt"},
                                                           {FastenerKind::Screw, "screw"},
                                                           {FastenerKind::Stud, "stud"},
                                                           {FastenerKind::Nut, "nut"}}};
constexpr std::array<Row<Reading>, 4> kReadings{{{Reading::Value, "value"},
                                                 {Reading::Range, "range"},
                                                 {Reading::Maximum, "maximum"},
                                                 {Reading::Words, "words"}}};
constexpr std::array<Row<Method>, 2> kMethods{
    {{Method::TorqueOnly, "torque"}, {Method::TorqueAndAngle, "torque-and-angle"}}};
constexpr std::array<Row<StepKind>, 6> kStepKinds{{{StepKind::Act, "act"},
                                                   {StepKind::Check, "check"},
                                                   {StepKind::Measure, "measure"},
                                                   {StepKind::Apply, "apply"},
                                                   {StepKind::Tighten, "tighten"},
                                                   {StepKind::Hold, "hold"}}};
constexpr std::array<Row<Witness>, 2> kWitnesses{
    {{Witness::Watched, "watched"}, {Witness::Independent, "independent"}}};

constexpr std::array<Row<Ungrounded>, 5> kReasons{{{Ungrounded::Plug, "plug"},
                                                   {Ungrounded::BearingPreload, "bearing-preload"},
                                                   {Ungrounded::UnmarkedFastener, "unmarked"},
                                                   {Ungrounded::LimitedByGasket, "gasket"},
                                                   {Ungrounded::LimitedByPlastic, "plastic"}}};
constexpr std::array<Row<NoSecondTurn>, 4> kBars{{{NoSecondTurn::SetThreadlocker, "set-threadlocker"},
                                                  {NoSecondTurn::CuredSealant, "cured-sealant"},
                                                  {NoSecondTurn::AngleTightening, "angle"},
                                                  {NoSecondTurn::SoftGasket, "soft-gasket"}}};

template <class Rows, class Enum>
std::string_view wordIn(const Rows& rows, Enum value) {
  for (const auto& [each, text] : rows)
    if (each == value) return text;
  return {};
}

template <class Enum, class Rows>
Result<Enum> valueIn(const Rows& rows, std::string_view word) {
  std::string known;
  for (const auto& [each, text] : rows) {
    if (text == word) return each;
    known += (known.empty() ? "" : ", ") + std::string(text);
  }
  return fail(ErrorCode::InvalidInput, "", word, {"“%1” is not known here", {shown(word)}},
              {"write one of: %1", {known}});
}

}  // namespace

std::string_view word(FastenerKind kind) {
  return wordIn(kFastenerKinds, kind);
}
std::string_view word(Reading reading) {
  return wordIn(kReadings, reading);
}
std::string_view word(Method method) {
  return wordIn(kMethods, method);
}
std::string_view word(StepKind kind) {
  return wordIn(kStepKinds, kind);
}
std::string_view word(Witness witness) {
  return wordIn(kWitnesses, witness);
}
std::string_view word(Ungrounded reason) {
  return wordIn(kReasons, reason);
}
std::string_view word(NoSecondTurn bar) {
  return wordIn(kBars, bar);
}

template <>
Result<FastenerKind> fromWord(std::string_view word) {
  return valueIn<FastenerKind>(kFastenerKinds, word);
}
template <>
Result<Reading> fromWord(std::string_view word) {
  return valueIn<Reading>(kReadings, word);
}
template <>
Result<Method> fromWord(std::string_view word) {
  return valueIn<Method>(kMethods, word);
}
template <>
Result<StepKind> fromWord(std::string_view word) {
  return valueIn<StepKind>(kStepKinds, word);
}
template <>
Result<Witness> fromWord(std::string_view word) {
  return valueIn<Witness>(kWitnesses, word);
}
template <>
Result<Ungrounded> fromWord(std::string_view word) {
  return valueIn<Ungrounded>(kReasons, word);
}
template <>
Result<NoSecondTurn> fromWord(std::string_view word) {
  return valueIn<NoSecondTurn>(kBars, word);
}

}  // namespace cw

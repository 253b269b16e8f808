#include "core/units/spelling.h"

#include <algorithm>
#include <array>

#include "core/units/typed_text.h"

namespace cw {
namespace {

template <class Tag>
struct Spellings {
  const Unit<Tag>* unit;
  std::string_view words;  ///< as from `folded`, with a blank between them
};

/// What people write besides a unit's own code, symbol and words.
template <class Tag>
constexpr auto kSpellingsOf = nullptr;

template <>
constexpr auto kSpellingsOf<ForceTag> = std::to_array<Spellings<ForceTag>>({
    {&kNewton, "n newton"},
    {&kKilonewton, "kn kilonewton"},
    {&kPoundForce, "lb lbs lbf pound pounds poundforce"},
    {&kKip, "kip"},
    {&kKilogramForce, "kg kgs kgf kp kilogramforce"},
});
template <>
constexpr auto kSpellingsOf<LengthTag> = std::to_array<Spellings<LengthTag>>({
    {&kMillimetre, "mm millimetre millimeter millimeters"},
    {&kMetre, "metre meter meters"},
    {&kMicrometre, "\u03bcm \u00b5m micron microns micrometer micrometers"},
    {&kInch, "in ins inch \" ″"},
    {&kFoot, "ft foot ' ′"},
});
template <>
constexpr auto kSpellingsOf<AreaTag> = std::to_array<Spellings<AreaTag>>({
    {&kSquareMillimetre, "mm^2 sqmm squaremillimeters"},
    {&kSquareInch, "in^2 sqin squareinch"},
});
template <>
constexpr auto kSpellingsOf<StressTag> = std::to_array<Spellings<StressTag>>({
    {&kMegapascal, "n/mm2 n/mm² n/mm^2"},
    {&kPsi, "psi lb/in2 lb/in² lb/in^2 lbf/in2 lbf/in² lbf/in^2"},
    {&kKsi, "ksi"},
});
template <>
constexpr auto kSpellingsOf<AngleTag> = std::to_array<Spellings<AngleTag>>({
    {&kDegree, "deg degs degree \u00ba"},
    {&kRadian, "radian"},
});
template <>
constexpr auto kSpellingsOf<StiffnessTag> = std::to_array<Spellings<StiffnessTag>>({
    {&kNewtonPerMetre, "newtonspermeter"},
    {&kKilonewtonPerMillimetre, "kilonewtonspermillimeter"},
});
template <>
constexpr auto kSpellingsOf<TemperatureTag> = std::to_array<Spellings<TemperatureTag>>({
    {&kCelsius, "c °c \u00bac ℃ degc celsius"},
    {&kFahrenheit, "f °f \u00baf ℉ degf fahrenheit"},
});
template <>
constexpr auto kSpellingsOf<MassTag> = std::to_array<Spellings<MassTag>>({
    {&kKilogram, "kg kgs kilogram"},
    {&kGram, "gram"},
});
template <>
constexpr auto kSpellingsOf<VolumeTag> = std::to_array<Spellings<VolumeTag>>({
    {&kLitre, "l litre liter liters"},
    {&kMillilitre, "ml cc millilitre milliliter milliliters"},
});
template <>
constexpr auto kSpellingsOf<DurationTag> = std::to_array<Spellings<DurationTag>>({
    {&kSecond, "sec secs second"},
    {&kMinute, "mins minute"},
    {&kHour, "hr hrs hour"},
});

/// Lower case, and nothing between the words: "sq. in" gives "sqin".
std::string folded(std::string_view text) {
  std::string out = joinedWords(text);
  std::erase(out, '-');
  return out;
}

bool holdsWord(std::string_view words, std::string_view word) {
  while (!words.empty()) {
    const std::size_t end = std::min(words.find(' '), words.size());
    if (words.substr(0, end) == word) return true;
    words.remove_prefix(std::min(end + 1, words.size()));
  }
  return false;
}

}  // namespace

template <class Tag>
const Unit<Tag>* unitSpelled(std::string_view spelling) {
  const std::string_view text = withoutOuterBlanks(spelling);
  const std::string word = folded(text);
  for (const Unit<Tag>* unit : unitsOf<Tag>())
    if (text == unit->code || text == unit->symbol || word == folded(unit->words)) return unit;
  for (const auto& [unit, words] : kSpellingsOf<Tag>)
    if (holdsWord(words, word)) return unit;
  return nullptr;
}

template const ForceUnit* unitSpelled<ForceTag>(std::string_view);
template const LengthUnit* unitSpelled<LengthTag>(std::string_view);
template const AreaUnit* unitSpelled<AreaTag>(std::string_view);
template const StressUnit* unitSpelled<StressTag>(std::string_view);
template const AngleUnit* unitSpelled<AngleTag>(std::string_view);
template const StiffnessUnit* unitSpelled<StiffnessTag>(std::string_view);
template const TemperatureUnit* unitSpelled<TemperatureTag>(std::string_view);
template const MassUnit* unitSpelled<MassTag>(std::string_view);
template const VolumeUnit* unitSpelled<VolumeTag>(std::string_view);
template const DurationUnit* unitSpelled<DurationTag>(std::string_view);

}  // namespace cw

#include <algorithm>
#include <array>
#include <span>

#include "core/units/spelling.h"
#include "core/units/typed_text.h"

namespace cw {
namespace {

using WordList = std::span<const std::string_view>;

constexpr std::string_view kNewtons[] = {"n", "newton", "newtons"};
constexpr std::string_view kPounds[] = {"lb",    "lbs",    "lbf",         "lbsf",
                                        "pound", "pounds", "pound-force", "pounds-force"};
constexpr std::string_view kOunces[] = {"oz", "ozs", "ozf", "ounce", "ounces", "ounce-force", "ounces-force"};
constexpr std::string_view kKilograms[] = {
    "kg", "kgs", "kgf", "kp", "kilogram", "kilograms", "kilogram-force", "kilograms-force"};
constexpr std::string_view kMetres[] = {"m", "metre", "metres", "meter", "meters"};
constexpr std::string_view kCentimetres[] = {"cm", "centimetre", "centimetres", "centimeter", "centimeters"};
constexpr std::string_view kInches[] = {"in", "ins", "inch", "inches"};
constexpr std::string_view kFeet[] = {"ft", "foot", "feet"};

/// A torque is spelled as a force and an arm: inch-pounds, lb-ft, kg-m.
struct Product {
  const TorqueUnit* unit;
  WordList force;
  WordList arm;
  bool eitherOrder;  ///< not with newtons, where "mN" is a millinewton
};

constexpr Product kProducts[] = {
    {&kNewtonMetre, kNewtons, kMetres, false},
    {&kNewtonCentimetre, kNewtons, kCentimetres, false},
    {&kPoundInch, kPounds, kInches, true},
    {&kPoundFoot, kPounds, kFeet, true},
    {&kOunceInch, kOunces, kInches, true},
    {&kKilogramMetre, kKilograms, kMetres, true},
    {&kKilogramCentimetre, kKilograms, kCentimetres, true},
};

bool has(WordList words, std::string_view word) {
  return std::find(words.begin(), words.end(), word) != words.end();
}

/// True if `text` is a word of each list in this order, joined by '-' or run together.
bool isPair(std::string_view text, WordList firsts, WordList seconds) {
  return std::any_of(firsts.begin(), firsts.end(), [&](std::string_view first) {
    if (!text.starts_with(first)) return false;
    std::string_view rest = text.substr(first.size());
    if (rest.starts_with('-')) rest.remove_prefix(1);
    return has(seconds, rest);
  });
}

}  // namespace

template <>
const TorqueUnit* unitSpelled<TorqueTag>(std::string_view spelling) {
  const std::string text = joinedWords(spelling);
  for (const Product& product : kProducts)
    if (isPair(text, product.force, product.arm) ||
        (product.eitherOrder && isPair(text, product.arm, product.force)))
      return product.unit;
  return nullptr;
}

std::vector<const TorqueUnit*> torquesHalfSpelled(std::string_view word) {
  const std::string text = joinedWords(word);
  std::vector<const TorqueUnit*> out;
  for (const Product& product : kProducts)
    if (has(product.force, text) || has(product.arm, text)) out.push_back(product.unit);
  return out;
}

}  // namespace cw

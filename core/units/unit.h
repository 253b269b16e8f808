#pragma once
#include <array>
#include <cstdint>
#include <span>
#include <string_view>

#include "core/units/quantity.h"

namespace cw {

/// A unit of one kind, with its exact factor to SI as a fraction.
/// Every unit in use is one of the constants below; they are compared by address.
template <class Tag>
struct Unit {
  std::string_view code;    ///< in files: "lbf.in"
  std::string_view symbol;  ///< on screen: "in·lbf"
  std::string_view words;   ///< where a wrench is set: "inch-pounds"
  std::int64_t numerator;   ///< SI value of one unit = numerator / denominator, exactly
  std::int64_t denominator;
  long double offset = 0;  ///< what to add to count from absolute zero: 273.15 for °C, else nothing
};

using TorqueUnit = Unit<TorqueTag>;
using ForceUnit = Unit<ForceTag>;
using LengthUnit = Unit<LengthTag>;
using AreaUnit = Unit<AreaTag>;
using StressUnit = Unit<StressTag>;
using AngleUnit = Unit<AngleTag>;
using StiffnessUnit = Unit<StiffnessTag>;
using TemperatureUnit = Unit<TemperatureTag>;
using MassUnit = Unit<MassTag>;
using VolumeUnit = Unit<VolumeTag>;
using DurationUnit = Unit<DurationTag>;

// 1 lbf = 0.45359237 kg × 9.80665 m/s² = 4.4482216152605 N, 1 in = 0.0254 m, 1 kgf = 9.80665 N: all exact
// (NIST SP 811:2008, B.8).
inline constexpr TorqueUnit kNewtonMetre{"N.m", "N·m", "newton-metres", 1, 1};
inline constexpr TorqueUnit kNewtonCentimetre{"N.cm", "N·cm", "newton-centimetres", 1, 100};
inline constexpr TorqueUnit kPoundInch{"lbf.in", "in·lbf", "inch-pounds", 1129848290276167,
                                       10000000000000000};
inline constexpr TorqueUnit kPoundFoot{"lbf.ft", "ft·lbf", "foot-pounds", 3389544870828501, 2500000000000000};
inline constexpr TorqueUnit kKilogramMetre{"kgf.m", "kgf·m", "kilogram-metres", 196133, 20000};
inline constexpr TorqueUnit kKilogramCentimetre{"kgf.cm", "kgf·cm", "kilogram-centimetres", 196133, 2000000};
inline constexpr TorqueUnit kOunceInch{"ozf.in", "in·ozf", "inch-ounces", 1129848290276167,
                                       160000000000000000};

inline constexpr ForceUnit kNewton{"N", "N", "newtons", 1, 1};
inline constexpr ForceUnit kKilonewton{"kN", "kN", "kilonewtons", 1000, 1};
inline constexpr ForceUnit kPoundForce{"lbf", "lbf", "pounds-force", 8896443230521, 2000000000000};
inline constexpr ForceUnit kKip{"kip", "kip", "kips", 8896443230521, 2000000000};
inline constexpr ForceUnit kKilogramForce{"kgf", "kgf", "kilograms-force", 196133, 20000};

inline constexpr LengthUnit kMetre{"m", "m", "metres", 1, 1};
inline constexpr LengthUnit kMillimetre{"mm", "mm", "millimetres", 1, 1000};
inline constexpr LengthUnit kMicrometre{"um", "µm", "micrometres", 1, 1000000};
inline constexpr LengthUnit kInch{"in", "in", "inches", 127, 5000};
inline constexpr LengthUnit kFoot{"ft", "ft", "feet", 381, 1250};

inline constexpr AreaUnit kSquareMillimetre{"mm2", "mm²", "square millimetres", 1, 1000000};
inline constexpr AreaUnit kSquareInch{"in2", "in²", "square inches", 16129, 25000000};

inline constexpr StressUnit kPascal{"Pa", "Pa", "pascals", 1, 1};
inline constexpr StressUnit kKilopascal{"kPa", "kPa", "kilopascals", 1000, 1};
inline constexpr StressUnit kMegapascal{"MPa", "MPa", "megapascals", 1000000, 1};
inline constexpr StressUnit kGigapascal{"GPa", "GPa", "gigapascals", 1000000000, 1};
inline constexpr StressUnit kBar{"bar", "bar", "bar", 100000, 1};
inline constexpr StressUnit kPsi{"psi", "psi", "pounds per square inch", 8896443230521, 1290320000};
inline constexpr StressUnit kKsi{"ksi", "ksi", "kips per square inch", 8896443230521, 1290320};

// The one factor that is not exact: π to the 16 digits that a double holds.
inline constexpr AngleUnit kDegree{"deg", "°", "degrees", 3141592653589793, 180000000000000000};
inline constexpr AngleUnit kRadian{"rad", "rad", "radians", 1, 1};

inline constexpr StiffnessUnit kNewtonPerMetre{"N/m", "N/m", "newtons per metre", 1, 1};
inline constexpr StiffnessUnit kKilonewtonPerMillimetre{"kN/mm", "kN/mm", "kilonewtons per millimetre",
                                                        1000000, 1};

inline constexpr TemperatureUnit kKelvin{"K", "K", "kelvin", 1, 1};
inline constexpr TemperatureUnit kCelsius{"degC", "°C", "degrees Celsius", 1, 1, 273.15L};
inline constexpr TemperatureUnit kFahrenheit{"degF", "°F", "degrees Fahrenheit", 5, 9, 459.67L};

inline constexpr MassUnit kKilogram{"kg", "kg", "kilograms", 1, 1};
inline constexpr MassUnit kGram{"g", "g", "grams", 1, 1000};
inline constexpr VolumeUnit kLitre{"L", "L", "litres", 1, 1000};
inline constexpr VolumeUnit kMillilitre{"mL", "mL", "millilitres", 1, 1000000};
inline constexpr DurationUnit kSecond{"s", "s", "seconds", 1, 1};
inline constexpr DurationUnit kMinute{"min", "min", "minutes", 60, 1};
inline constexpr DurationUnit kHour{"h", "h", "hours", 3600, 1};

/// All units of a kind, in the order they are offered.
template <class Tag>
inline constexpr auto kUnitsOf = nullptr;

template <>
inline constexpr auto kUnitsOf<TorqueTag> =
    std::array{&kNewtonMetre,   &kNewtonCentimetre,   &kPoundInch, &kPoundFoot,
               &kKilogramMetre, &kKilogramCentimetre, &kOunceInch};
template <>
inline constexpr auto kUnitsOf<ForceTag> =
    std::array{&kNewton, &kKilonewton, &kPoundForce, &kKip, &kKilogramForce};
template <>
inline constexpr auto kUnitsOf<LengthTag> = std::array{&kMillimetre, &kMetre, &kMicrometre, &kInch, &kFoot};
template <>
inline constexpr auto kUnitsOf<AreaTag> = std::array{&kSquareMillimetre, &kSquareInch};
template <>
inline constexpr auto kUnitsOf<StressTag> =
    std::array{&kMegapascal, &kPascal, &kKilopascal, &kGigapascal, &kBar, &kPsi, &kKsi};
template <>
inline constexpr auto kUnitsOf<AngleTag> = std::array{&kDegree, &kRadian};
template <>
inline constexpr auto kUnitsOf<StiffnessTag> = std::array{&kNewtonPerMetre, &kKilonewtonPerMillimetre};
template <>
inline constexpr auto kUnitsOf<TemperatureTag> = std::array{&kCelsius, &kFahrenheit, &kKelvin};
template <>
inline constexpr auto kUnitsOf<MassTag> = std::array{&kKilogram, &kGram};
template <>
inline constexpr auto kUnitsOf<VolumeTag> = std::array{&kLitre, &kMillilitre};
template <>
inline constexpr auto kUnitsOf<DurationTag> = std::array{&kMinute, &kSecond, &kHour};

template <class Tag>
constexpr std::span<const Unit<Tag>* const> unitsOf() {
  return kUnitsOf<Tag>;
}

/// The unit with this file code, or nullptr.
template <class Tag>
const Unit<Tag>* unitWithCode(std::string_view code) {
  for (const Unit<Tag>* unit : unitsOf<Tag>())
    if (unit->code == code) return unit;
  return nullptr;
}

/// `value` of one unit in another of the same kind, rounded to a double only at the end: within one unit in
/// the last place of the exact rational number (a temperature point near zero: of the number before its
/// offset).
template <class Tag>
constexpr double convert(double value, const Unit<Tag>& from, const Unit<Tag>& to) {
  if (from.code == to.code) return value;
  const long double si = (from.offset + static_cast<long double>(value)) * from.numerator / from.denominator;
  return static_cast<double>(si * to.denominator / to.numerator - to.offset);
}

/// `value` in units of `unit` as a quantity, and back.
template <class Tag>
constexpr Quantity<Tag> quantity(double value, const Unit<Tag>& unit) {
  const long double si = (unit.offset + static_cast<long double>(value)) * unit.numerator / unit.denominator;
  return Quantity<Tag>::si(static_cast<double>(si));
}
template <class Tag>
constexpr double in(const Unit<Tag>& unit, Quantity<Tag> value) {
  return static_cast<double>(static_cast<long double>(value.si()) * unit.denominator / unit.numerator -
                             unit.offset);
}

}  // namespace cw

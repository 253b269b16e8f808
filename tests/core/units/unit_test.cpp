#include "core/units/unit.h"

#include <set>

#include "core/units/stated.h"
#include "tests/support/matchers.h"
#include "tests/support/sweep.h"

namespace cw {
namespace {

template <class Tag>
constexpr bool isExactly(const Unit<Tag>& unit, std::int64_t numerator, std::int64_t denominator) {
  return unit.numerator == numerator && unit.denominator == denominator;
}

// The products of the definitions 1 lb = 0.45359237 kg, g = 9.80665 m/s², 1 in = 0.0254 m, multiplied out as
// whole numbers: 45359237 × 980665 × 254 = 11298482902761670 (× 10⁻¹⁷ N·m an in·lbf), and so on.
static_assert(45359237LL * 980665LL == 44482216152605LL);
static_assert(44482216152605LL * 254LL == 1129848290276167LL * 10LL);
static_assert(isExactly(kPoundForce, 44482216152605LL / 5, 10000000000000LL / 5));
static_assert(isExactly(kPoundInch, 1129848290276167LL, 10000000000000000LL));
static_assert(kPoundFoot.numerator * 4 == kPoundInch.numerator * 12 &&
              kPoundFoot.denominator * 4 == kPoundInch.denominator);
static_assert(kOunceInch.numerator == kPoundInch.numerator &&
              kOunceInch.denominator == 16 * kPoundInch.denominator);
static_assert(isExactly(kKilogramForce, 980665LL / 5, 100000LL / 5));
static_assert(isExactly(kKilogramMetre, 980665LL / 5, 100000LL / 5));
static_assert(isExactly(kKilogramCentimetre, 980665LL / 5, 10000000LL / 5));
static_assert(isExactly(kInch, 254 / 2, 10000 / 2));
static_assert(isExactly(kFoot, 3048 / 8, 10000 / 8));
static_assert(isExactly(kSquareInch, 127 * 127, 5000 * 5000));
// lbf/in²: numerator and denominator of lbf over those of in².
static_assert(kPsi.numerator == kPoundForce.numerator && kPsi.denominator == 80000LL * 16129LL);
static_assert(kPoundForce.denominator / kSquareInch.denominator == 80000LL);
static_assert(kKsi.numerator == kPsi.numerator && kKsi.denominator * 1000 == kPsi.denominator);

static_assert(convert(60.0, kPoundInch, kPoundFoot) == 5.0);
static_assert(convert(1.0, kPoundFoot, kPoundInch) == 12.0);
static_assert(convert(1.0, kPoundInch, kOunceInch) == 16.0);
static_assert(convert(1.0, kKilogramMetre, kKilogramCentimetre) == 100.0);
static_assert(convert(1.0, kPoundFoot, kNewtonMetre) == 1.3558179483314004);
static_assert(convert(1.0, kPoundInch, kNewtonMetre) == 0.1129848290276167);
static_assert(convert(1.0, kPsi, kPascal) == 6894.757293168362);
static_assert(in(kMillimetre, inches(1)) == 25.4);

template <class Tag>
void expectDistinctNames() {
  std::set<std::string_view> codes, symbols, words;
  for (const Unit<Tag>* unit : unitsOf<Tag>()) {
    EXPECT_TRUE(codes.insert(unit->code).second) << unit->code;
    EXPECT_TRUE(symbols.insert(unit->symbol).second) << unit->code;
    EXPECT_TRUE(words.insert(unit->words).second) << unit->code;
    EXPECT_EQ(unitWithCode<Tag>(unit->code), unit);
    EXPECT_TRUE(
        std::all_of(unit->code.begin(), unit->code.end(), [](char c) { return c > ' ' && c < 0x7f; }));
  }
  EXPECT_EQ(unitWithCode<Tag>("furlong"), nullptr);
}

template <class Tag>
void expectRoundTrips() {
  sweep(500, [](Random& random) {
    const double value = betweenMagnitudes(1e-6, 1e9, random);
    for (const Unit<Tag>* from : unitsOf<Tag>()) {
      EXPECT_DOUBLE_EQ(in(*from, quantity(value, *from)), value) << from->code;
      for (const Unit<Tag>* to : unitsOf<Tag>())
        EXPECT_DOUBLE_EQ(convert(convert(value, *from, *to), *to, *from), value)
            << from->code << ' ' << to->code;
    }
  });
}

TEST(Units, HaveDistinctNamesInEveryKind) {
  expectDistinctNames<TorqueTag>();
  expectDistinctNames<ForceTag>();
  expectDistinctNames<LengthTag>();
  expectDistinctNames<AreaTag>();
  expectDistinctNames<StressTag>();
  expectDistinctNames<AngleTag>();
  expectDistinctNames<StiffnessTag>();
  expectDistinctNames<TemperatureTag>();
  expectDistinctNames<MassTag>();
  expectDistinctNames<VolumeTag>();
  expectDistinctNames<DurationTag>();
}

TEST(Units, GoThereAndBackInEveryKind) {
  expectRoundTrips<TorqueTag>();
  expectRoundTrips<ForceTag>();
  expectRoundTrips<LengthTag>();
  expectRoundTrips<AreaTag>();
  expectRoundTrips<StressTag>();
  expectRoundTrips<AngleTag>();
  expectRoundTrips<StiffnessTag>();
  expectRoundTrips<MassTag>();
  expectRoundTrips<VolumeTag>();
  expectRoundTrips<DurationTag>();
}

TEST(Units, ConvertPointsOnTheTemperatureScales) {
  EXPECT_EQ(convert(0, kCelsius, kFahrenheit), 32);
  EXPECT_EQ(convert(100, kCelsius, kFahrenheit), 212);
  EXPECT_EQ(convert(20, kCelsius, kFahrenheit), 68);
  EXPECT_EQ(convert(-40, kFahrenheit, kCelsius), -40);
  EXPECT_EQ(convert(68, kFahrenheit, kCelsius), 20);
  EXPECT_EQ(convert(0, kKelvin, kCelsius), -273.15);
  EXPECT_EQ(quantity(20, kCelsius).si(), 293.15);
}

TEST(Quantities, MultiplyOnlyIntoWhatPhysicsNames) {
  EXPECT_THAT(kilonewtons(2) * millimetres(50), IsNear(newtonMetres(100), newtonMetres(1e-12)));
  EXPECT_THAT(newtonMetres(100) / millimetres(50), IsNear(newtons(2000), newtons(1e-9)));
  EXPECT_THAT(newtons(1000) / squareMillimetres(10), IsNear(megapascals(100), megapascals(1e-9)));
  EXPECT_THAT(kilonewtons(1) / millimetres(1), IsNear(newtonsPerMetre(1e6), newtonsPerMetre(1e-6)));
  EXPECT_THAT(newtonsPerMetre(1e6) * millimetres(1), IsNear(newtons(1000), newtons(1e-9)));
  EXPECT_EQ(newtonMetres(6) / newtonMetres(3), 2.0);
  EXPECT_LT(newtonMetres(6), newtonMetres(7));
}

}  // namespace
}  // namespace cw

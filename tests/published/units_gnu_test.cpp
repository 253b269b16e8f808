// What GNU units (Debian package "units") and exact rational arithmetic (Python's fractions) say about
// conversions between torque units.
#include <fmt/format.h>
#include <gtest/gtest.h>

#include <map>

#include "core/units/unit.h"
#include "tests/support/program.h"
#include "tests/support/sweep.h"

namespace cw {
namespace {

constexpr int kValuesPerPair = 1000;

struct Conversion {
  const TorqueUnit* from;
  const TorqueUnit* to;
  double value;

  double answer() const { return convert(value, *from, *to); }
};

std::vector<Conversion> randomConversions() {
  std::vector<Conversion> out;
  sweep(kValuesPerPair, [&](Random& random) {
    for (const TorqueUnit* from : unitsOf<TorqueTag>())
      for (const TorqueUnit* to : unitsOf<TorqueTag>())
        if (from != to) out.push_back({from, to, betweenMagnitudes(1e-3, 1e6, random)});
  });
  return out;
}

/// The unit in the language of GNU units, which knows no "ozf" but turns any mass into a force.
const std::string& gnuName(const TorqueUnit* unit) {
  static const std::map<const TorqueUnit*, std::string> kNames{
      {&kNewtonMetre, "newton meter"}, {&kNewtonCentimetre, "newton cm"}, {&kPoundInch, "lbf inch"},
      {&kPoundFoot, "lbf foot"},       {&kKilogramMetre, "kgf meter"},    {&kKilogramCentimetre, "kgf cm"},
      {&kOunceInch, "oz force inch"},
  };
  return kNames.at(unit);
}

TEST(ConvertTorque, AgreesWithGnuUnits) {
  const auto conversions = randomConversions();
  std::string questions;
  for (const Conversion& conversion : conversions)
    questions +=
        fmt::format("{:.17g} {}\n{}\n", conversion.value, gnuName(conversion.from), gnuName(conversion.to));

  const Answer gnu = run("LC_ALL=C units --terse --output-format %.17g", questions);
  ASSERT_EQ(gnu.exitCode, 0) << "is there no program units? Install the Debian package units";
  const auto answers = gnu.lines();
  ASSERT_EQ(answers.size(), conversions.size()) << gnu.output.substr(0, 200);
  for (std::size_t i = 0; i < answers.size(); ++i)
    ASSERT_DOUBLE_EQ(conversions[i].answer(), std::stod(answers[i]))  // within 4 units in the last place
        << conversions[i].value << ' ' << conversions[i].from->code << " in " << conversions[i].to->code;
}

TEST(ConvertTorque, IsWithinOneUnitInTheLastPlaceOfTheExactRational) {
  std::string questions;
  for (const Conversion& conversion : randomConversions())
    questions += fmt::format("{} {} {:a} {:a}\n", conversion.from->code, conversion.to->code,
                             conversion.value, conversion.answer());
  const Answer python = run("python3 " CW_SOURCE "/tests/published/exact_conversions.py", questions);
  EXPECT_EQ(python.output,
            fmt::format("{} conversions within 1 unit in the last place\n", 42 * kValuesPerPair));
  EXPECT_EQ(python.exitCode, 0);
}

struct PrintedFactor {
  const TorqueUnit* unit;
  const char* printed;  ///< N·m in one unit, to seven digits
};

// NIST SP 811 (2008), appendix B.8, as printed there; from memory.
TEST(ConvertTorque, RoundsToTheFactorsThatNistPrints) {
  const PrintedFactor factors[] = {
      {&kPoundInch, "1.129848e-01"},
      {&kPoundFoot, "1.355818e+00"},
      {&kOunceInch, "7.061552e-03"},
      {&kKilogramMetre, "9.806650e+00"},
  };
  for (const auto& [unit, printed] : factors)
    EXPECT_EQ(fmt::format("{:.6e}", convert(1, *unit, kNewtonMetre)), printed) << unit->code;
}

// The same appendix, for the units that a joint is calculated with; from memory.
TEST(ConvertForceAndStress, RoundsToTheFactorsThatNistPrints) {
  EXPECT_EQ(fmt::format("{:.6e}", convert(1, kPoundForce, kNewton)), "4.448222e+00");
  EXPECT_EQ(fmt::format("{:.6e}", convert(1, kKip, kNewton)), "4.448222e+03");
  EXPECT_EQ(fmt::format("{:.6e}", convert(1, kKilogramForce, kNewton)), "9.806650e+00");
  EXPECT_EQ(fmt::format("{:.6e}", convert(1, kPsi, kPascal)), "6.894757e+03");
  EXPECT_EQ(fmt::format("{:.6e}", convert(1, kKsi, kPascal)), "6.894757e+06");
  EXPECT_EQ(fmt::format("{:.6e}", convert(1, kInch, kMetre)), "2.540000e-02");
  EXPECT_EQ(fmt::format("{:.6e}", convert(1, kFoot, kMetre)), "3.048000e-01");
}

}  // namespace
}  // namespace cw

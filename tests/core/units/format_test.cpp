#include "core/units/format.h"

#include <limits>

#include "core/units/decimal.h"
#include "core/units/parse.h"
#include "tests/support/matchers.h"
#include "tests/support/sweep.h"

namespace cw {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

TEST(Fixed, RoundsTheDigitsThatAreReadHalfAwayFromZero) {
  EXPECT_EQ(fixed(2.675, 2), "2.68");  // the binary value lies below the half
  EXPECT_EQ(fixed(-2.675, 2), "-2.68");
  EXPECT_EQ(fixed(1.005, 2), "1.01");
  EXPECT_EQ(fixed(0.5, 0), "1");
  EXPECT_EQ(fixed(1.5, 0), "2");
  EXPECT_EQ(fixed(2.5, 0), "3");
  EXPECT_EQ(fixed(0.49999999999999994, 0), "0");  // the largest double below one half
  EXPECT_EQ(fixed(9.995, 2), "10.00");
  EXPECT_EQ(fixed(999.5, 0), "1000");
  EXPECT_EQ(fixed(2.6749999999, 2), "2.67");
}

TEST(Fixed, FillsTheDecimalsAndNeverSaysMinusZero) {
  EXPECT_EQ(fixed(5, 2), "5.00");
  EXPECT_EQ(fixed(0, 0), "0");
  EXPECT_EQ(fixed(0, 3), "0.000");
  EXPECT_EQ(fixed(-0.0, 1), "0.0");
  EXPECT_EQ(fixed(-0.001, 2), "0.00");
  EXPECT_EQ(fixed(0.1 + 0.2, 2), "0.30");
  EXPECT_EQ(fixed(0.05, 1), "0.1");
}

TEST(Fixed, WritesHugeAndTinyValuesPlainly) {
  EXPECT_EQ(fixed(1e22, 1), "10000000000000000000000.0");
  EXPECT_EQ(fixed(123456789012345680.0, 0), "123456789012345680");
  EXPECT_EQ(fixed(std::numeric_limits<double>::max(), 0).size(), 309U);
  EXPECT_EQ(fixed(std::numeric_limits<double>::denorm_min(), 2), "0.00");
  EXPECT_EQ(fixed(1e-7, 7), "0.0000001");
  EXPECT_EQ(fixed(kInfinity, 2), "inf");
  EXPECT_EQ(fixed(-kInfinity, 2), "-inf");
  EXPECT_EQ(fixed(std::nan(""), 2), "nan");
}

TEST(Significant, KeepsThatManyDigitsAndNoZerosBehindThem) {
  EXPECT_EQ(significant(8.1349, 3), "8.13");
  EXPECT_EQ(significant(8.135, 3), "8.14");
  EXPECT_EQ(significant(1234.5, 3), "1230");
  EXPECT_EQ(significant(1235, 3), "1240");
  EXPECT_EQ(significant(0.0023456, 2), "0.0023");
  EXPECT_EQ(significant(60, 3), "60");
  EXPECT_EQ(significant(6.0000001, 3), "6");
  EXPECT_EQ(significant(99.95, 3), "100");
  EXPECT_EQ(significant(999.5, 3), "1000");
  EXPECT_EQ(significant(0.00099951, 3), "0.001");
  EXPECT_EQ(significant(-6.779, 2), "-6.8");
  EXPECT_EQ(significant(0, 3), "0");
  EXPECT_EQ(significant(-0.0, 3), "0");
  EXPECT_EQ(significant(0.1 + 0.2, 17), "0.30000000000000004");
  EXPECT_EQ(significant(0.1 + 0.2, 15), "0.3");
  EXPECT_EQ(significant(1e21, 3), "1000000000000000000000");
  EXPECT_EQ(significant(5e-324, 1), "0." + std::string(323, '0') + "5");
  EXPECT_EQ(significant(kInfinity, 3), "inf");
}

// The answer is built from the whole number that the digits stand for, apart from `fixed`.
TEST(Fixed, AgreesWithWholeNumberRounding) {
  sweep(20000, [](Random& random) {
    const std::int64_t millionths =
        std::uniform_int_distribution<std::int64_t>(-99'999'999, 99'999'999)(random);
    const std::int64_t thousandths = (std::abs(millionths) + 500) / 1000;
    std::string expected = std::to_string(1000 + thousandths % 1000).substr(1);
    expected = std::to_string(thousandths / 1000) + "." + expected;
    if (millionths < 0 && thousandths > 0) expected.insert(0, "-");
    EXPECT_EQ(fixed(static_cast<double>(millionths) / 1e6, 3), expected) << millionths;
  });
}

TEST(Significant, ReadsBackToWithinHalfOfItsLastDigit) {
  sweep(20000, [](Random& random) {
    const double value = betweenMagnitudes(1e-12, 1e12, random);
    const int digits = wholeBetween(1, 17, random);
    const double again = numberOf(significant(value, digits));
    const double half = 0.5 * std::pow(10.0, std::floor(std::log10(value)) + 1 - digits);
    EXPECT_LE(std::abs(again - value), half * 1.001 + value * 1e-15) << value << " to " << digits;
    EXPECT_TRUE(digits < 17 || again == value) << value;
  });
}

TEST(Decimal, HoldsTheSameNumberHoweverItIsWritten) {
  EXPECT_EQ(decimalOf("60.50"), decimalOf(60.5));
  EXPECT_EQ(decimalOf("060.5"), decimalOf(60.5));
  EXPECT_EQ(decimalOf(".5"), decimalOf(0.5));
  EXPECT_EQ(decimalOf("-0.00125"), decimalOf(-0.00125));
  EXPECT_EQ(decimalOf("0.000"), decimalOf(0.0));
  EXPECT_EQ(decimalOf("1" + std::string(30, '0')), decimalOf(1e30));
  EXPECT_EQ(decimalOf("60.50").places(), 1);
  EXPECT_EQ(decimalOf("1200").places(), 0);
  EXPECT_EQ(decimalOf("0").places(), 0);
}

TEST(Text, ShowsStatedDigitsAndDerivedOnes) {
  const auto torque = parse<TorqueTag>("60.50 in-lb").value();
  EXPECT_EQ(text(torque), "60.50\u202fin·lbf");
  EXPECT_EQ(inWords(torque), "60.50 inch-pounds");
  EXPECT_EQ(codeText(torque), "60.50 lbf.in");
  EXPECT_EQ(text(torque.value(), kNewtonMetre), "6.84\u202fN·m");
  EXPECT_EQ(text(torque.value(), kNewtonMetre, 2), "6.8\u202fN·m");
  EXPECT_EQ(text(degrees(90), kDegree), "90°");
  EXPECT_EQ(text(parse<AngleTag>("90 deg").value()), "90°");
}

TEST(Text, ReadsBackForEveryTorqueUnit) {
  sweep(5000, [](Random& random) {
    const auto units = unitsOf<TorqueTag>();
    const TorqueUnit* unit = units[static_cast<std::size_t>(wholeBetween(0, 6, random))];
    const StatedTorque torque{fixed(betweenMagnitudes(0.001, 1e6, random), wholeBetween(0, 6, random)), unit};
    for (const std::string& written : {text(torque), inWords(torque), codeText(torque)})
      EXPECT_THAT(parse<TorqueTag>(written), IsOkAnd(torque)) << written;
  });
}

}  // namespace
}  // namespace cw

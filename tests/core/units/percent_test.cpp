#include "core/units/percent.h"

#include <gtest/gtest.h>

namespace cw {
namespace {

const StatedTorque kAim{"30", &kNewtonMetre};

TEST(Percent, IsReadAsPeopleWriteIt) {
  for (const char* text : {"4 %", "4%", "±4 %", "+/-4 %", " 4 percent "})
    EXPECT_DOUBLE_EQ(parsePercent(text).value(), 0.04) << text;
  EXPECT_DOUBLE_EQ(parsePercent("2,5 %", DecimalMark::Comma).value(), 0.025);
  for (const char* text : {"4", "", "%", "nan %", "-4 %", "4 % of", "1e3 %", "inf %"})
    EXPECT_FALSE(parsePercent(text)) << text;
}

TEST(Percent, PrintsWhatItReads) {
  for (const double share : {0.0, 0.005, 0.04, 0.25, 1.5})
    EXPECT_DOUBLE_EQ(parsePercent(percentOf(share)).value(), share);
}

TEST(Tolerance, IsASpanAroundTheAimOrARange) {
  const auto expect = [](const char* text, double low, double high) {
    const auto band = parseTolerance(text, kAim);
    ASSERT_TRUE(band) << text << ": " << sentence(band.error());
    EXPECT_NEAR(band->low.si(), low, 1e-9) << text;
    EXPECT_NEAR(band->high.si(), high, 1e-9) << text;
  };
  expect("±5 %", 28.5, 31.5);
  expect("10%", 27, 33);
  expect("±2 N·m", 28, 32);
  expect("2 Nm", 28, 32);
  expect("28 to 32 N·m", 28, 32);
  expect("28-32 Nm", 28, 32);
  expect("28 N·m to 32 N·m", 28, 32);
  // 20 and 24 ft·lbf in N·m, by the exact factor of NIST SP 811
  expect("20 to 24 ft-lb", 20 * 1.3558179483314004, 24 * 1.3558179483314004);
}

TEST(Tolerance, IsRefusedWhenItLeavesTheAimOutOrSaysNothing) {
  for (const char* text :
       {"5", "31 to 35 Nm", "35 to 25 Nm", "100 %", "±40 Nm", "to 5 Nm", "nonsense", "5 to"})
    EXPECT_FALSE(parseTolerance(text, kAim)) << text;
}

}  // namespace
}  // namespace cw

#include "core/units/parse.h"

#include <gtest/gtest.h>

#include "core/units/format.h"

namespace cw {
namespace {

TEST(ParseTorque, KeepsTheDigitsAsTyped) {
  const auto torque = parse<TorqueTag>("60.50 in-lbs");
  ASSERT_TRUE(torque.has_value()) << sentence(torque.error());
  EXPECT_EQ(torque->digits, "60.50");
  EXPECT_EQ(torque->unit, &kPoundInch);
  EXPECT_EQ(codeText(*torque), "60.50 lbf.in");
}

TEST(ParseTorque, RefusesWhatCouldMeanTwoThings) {
  for (const char* text : {"60 lb", "60", "1,200 in.lbf", "-5 N.m", "NaN", "", "1.2.3 Nm", "5 mm"})
    EXPECT_FALSE(parse<TorqueTag>(text).has_value()) << text;
  EXPECT_EQ(sentence(parse<TorqueTag>("60 lb").error()),
            "“lb” is no torque unit; write one, for example 60 in·lbf, 5 ft·lbf or 7 N·m.");
}

}  // namespace
}  // namespace cw

#include "core/procedure/numbers_in_text.h"

#include <gmock/gmock.h>

namespace cw {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

NumberInText counted(std::string digits, Counts counts) {
  return {std::move(digits), counts, std::nullopt};
}
NumberInText torqueNumber(const std::string& digits, const TorqueUnit& unit) {
  return {digits, Counts::Torques, StatedTorque{digits, &unit}};
}

TEST(NumbersIn, TellTorquesByTheirUnit) {
  EXPECT_THAT(numbersIn("60 in-lb"), ElementsAre(torqueNumber("60", kPoundInch)));
  EXPECT_THAT(numbersIn("Tighten to 7.5Nm."), ElementsAre(torqueNumber("7.5", kNewtonMetre)));
  EXPECT_THAT(numbersIn("(88 ft. lbs.)"), ElementsAre(torqueNumber("88", kPoundFoot)));
}

TEST(NumbersIn, GiveARangeItsUnitTwice) {
  EXPECT_THAT(numbersIn("60-70 in. lbs."),
              ElementsAre(torqueNumber("60", kPoundInch), torqueNumber("70", kPoundInch)));
  EXPECT_THAT(numbersIn("20 to 24 ft. lbs."),
              ElementsAre(torqueNumber("20", kPoundFoot), torqueNumber("24", kPoundFoot)));
  EXPECT_THAT(numbersIn("6.8–7.9 N·m"),
              ElementsAre(torqueNumber("6.8", kNewtonMetre), torqueNumber("7.9", kNewtonMetre)));
  EXPECT_THAT(numbersIn("40 ±5 N·m"),
              ElementsAre(torqueNumber("40", kNewtonMetre), torqueNumber("5", kNewtonMetre)));
}

TEST(NumbersIn, TellOtherQuantities) {
  EXPECT_THAT(numbersIn("0.5 mm"), ElementsAre(counted("0.5", Counts::Quantity)));
  EXPECT_THAT(numbersIn("22 N·m ±10 %"),
              ElementsAre(torqueNumber("22", kNewtonMetre), counted("10", Counts::Quantity)));
  EXPECT_THAT(numbersIn("Turn it 90° at 80 °C."),
              ElementsAre(counted("90", Counts::Quantity), counted("80", Counts::Quantity)));
}

TEST(NumbersIn, TellCountedThingsFromBareNumbers) {
  EXPECT_THAT(numbersIn("Fit 6 screws after step 4."),
              ElementsAre(counted("6", Counts::Things), counted("4", Counts::Things)));
  EXPECT_THAT(numbersIn("Tighten to 60."), ElementsAre(counted("60", Counts::Nothing)));
  EXPECT_THAT(numbersIn("Tighten to 60 and go on"), ElementsAre(counted("60", Counts::Nothing)));
}

TEST(NumbersIn, LeaveNamesAlone) {
  EXPECT_THAT(numbersIn("M8x1, 1/4-20 UNC, #10-32, PCC-1 and T-07"), IsEmpty());
}

}  // namespace
}  // namespace cw

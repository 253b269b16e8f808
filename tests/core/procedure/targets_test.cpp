#include "core/procedure/targets.h"

#include "core/procedure/sheet_file.h"
#include "core/units/parse.h"
#include "tests/core/procedure/sheets.h"
#include "tests/support/matchers.h"
#include "tests/support/sweep.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;

Pass share(double value) {
  return {PassKind::Pattern, value};
}

class TargetAt : public testing::Test {
 protected:
  Result<StatedTorque> at(double passShare, std::string_view graduation, const std::string& label = "1") {
    return targetAt(m_sheet, m_sheet.joints[0], label, share(passShare), torque(graduation));
  }
  Specification& specification() { return m_sheet.specifications[0]; }

  Sheet m_sheet = flangeExample();  // 110, 120, 130 ft·lbf
};

TEST_F(TargetAt, IsTheAimOnTheFinalPass) {
  EXPECT_THAT(at(1, "5 lbf.ft"), IsOkAnd(torque("120 lbf.ft")));
}

TEST_F(TargetAt, TakesTheWrenchsUnit) {
  // 120 ft·lbf × 1.3558179483314 = 162.7 N·m
  EXPECT_THAT(at(1, "1 N.m"), IsOkAnd(torque("163 N.m")));
  EXPECT_THAT(at(1, "5 N.m"), IsOkAnd(torque("165 N.m")));
}

TEST_F(TargetAt, StaysInsideTheToleranceOnTheFinalPass) {
  specification().high = torque("121 lbf.ft");  // 164.05 N·m: the nearest mark, 165, is outside
  EXPECT_THAT(at(1, "5 N.m"), IsOkAnd(torque("160 N.m")));
}

TEST_F(TargetAt, IsRefusedWithItsNeighboursIfNoMarkFits) {
  specification().low = torque("119 lbf.ft");
  specification().high = torque("121 lbf.ft");
  EXPECT_THAT(at(1, "50 N.m"), FailsWith(ErrorCode::OutOfRange, AllOf(HasSubstr("150"), HasSubstr("200"))));
}

TEST_F(TargetAt, IsTheNearestMarkToTheShareOnEarlierPasses) {
  EXPECT_THAT(at(0.3, "5 lbf.ft"), IsOkAnd(torque("35 lbf.ft")));  // 36
  EXPECT_THAT(at(0.7, "5 lbf.ft"), IsOkAnd(torque("85 lbf.ft")));  // 84
}

TEST_F(TargetAt, LeavesAMarkBelowAndAboveEarlierPasses) {
  EXPECT_THAT(at(0.3, "40 lbf.ft"), IsOkAnd(torque("40 lbf.ft")));
  EXPECT_THAT(at(0.95, "40 lbf.ft"), IsOkAnd(torque("80 lbf.ft")));
  specification().low = torque("60 lbf.ft");
  EXPECT_THAT(at(0.7, "120 lbf.ft"), FailsWith(ErrorCode::OutOfRange, HasSubstr("finer scale")));
}

TEST_F(TargetAt, KeepsTheStatedDigitsOnAToolWithoutScale) {
  specification().aim = torque("120.0 lbf.ft");
  EXPECT_THAT(at(1, "0 lbf.ft"), IsOkAnd(torque("120.0 lbf.ft")));
  EXPECT_THAT(at(1, "0 N.m"), IsOkAnd(torque("162.7 N.m")));
  EXPECT_THAT(at(0.3, "0 lbf.ft"), IsOkAnd(torque("36.00 lbf.ft")));
}

TEST_F(TargetAt, NeverExceedsTheAimWhereNoUpperLimitIsStated) {
  specification().high.reset();
  EXPECT_THAT(at(1, "5 N.m"), IsOkAnd(torque("160 N.m")));
}

TEST_F(TargetAt, RefusesWhatHasNoTarget) {
  EXPECT_THAT(at(1, "5 lbf.ft", "9"), FailsWith(ErrorCode::NotFound, HasSubstr("“9”")));
  EXPECT_THAT(
      targetAt(m_sheet, m_sheet.joints[0], "1", Pass{PassKind::ByHand, std::nullopt}, torque("5 lbf.ft")),
      FailsWith(ErrorCode::InvalidInput));
  specification().aim.reset();
  EXPECT_THAT(at(1, "5 lbf.ft"), FailsWith(ErrorCode::InvalidInput, HasSubstr("120 ft-lb")));
}

TEST_F(TargetAt, UsesAPositionsOwnSpecification) {
  Specification other = specification();
  other.id = "other";
  other.aim = torque("115 lbf.ft");
  m_sheet.specifications.push_back(other);
  m_sheet.joints[0].positions["3"].specification = "other";
  EXPECT_THAT(at(1, "5 lbf.ft", "3"), IsOkAnd(torque("115 lbf.ft")));
  EXPECT_THAT(at(1, "5 lbf.ft", "2"), IsOkAnd(torque("120 lbf.ft")));
}

TEST_F(TargetAt, IsNeverOutsideTheToleranceWhateverTheMarks) {
  sweep(2000, [&](Random& random) {
    const double aim = betweenMagnitudes(0.5, 500, random);
    specification().low = torque(fixed(aim * between(0.8, 1, random), 2) + " lbf.ft");
    specification().aim = torque(fixed(aim, 2) + " lbf.ft");
    specification().high = torque(fixed(aim * between(1, 1.2, random) + 0.01, 2) + " lbf.ft");
    if (specification().low->value() > specification().aim->value()) return;
    const StatedTorque marks = torque(fixed(betweenMagnitudes(0.01, 50, random), 2) + " N.m");
    const auto found = targetAt(m_sheet, m_sheet.joints[0], "1", share(1), marks);
    if (!found) return;
    // Within the noise of one conversion.
    EXPECT_GE(found->value().si(), specification().low->value().si() * (1 - 1e-14));
    EXPECT_LE(found->value().si(), specification().high->value().si() * (1 + 1e-14));
  });
}

}  // namespace
}  // namespace cw

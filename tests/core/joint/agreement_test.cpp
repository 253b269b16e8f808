#include "core/joint/agreement.h"

#include <gtest/gtest.h>

#include "tests/core/joint/fasteners.h"

namespace cw {
namespace {

using namespace testing_joint;

ColumnsAgreement compared(std::string_view first, std::string_view second) {
  return columnsAgree(torque(first), torque(second)).value();
}

TEST(Agreement, SeesRoundedColumnsAsOneTorque) {
  EXPECT_EQ(compared("30 N.m", "22 ft.lbf").agreement, Agreement::Agrees);
  EXPECT_EQ(compared("6.8 N.m", "60 in.lbf").agreement, Agreement::Agrees);
  EXPECT_EQ(compared("200 N.m", "145 ft.lbf").agreement, Agreement::Rounded);
}

TEST(Agreement, SeesExchangedColumns) {
  const ColumnsAgreement found = compared("22 N.m", "30 ft.lbf");
  EXPECT_EQ(found.agreement, Agreement::Disagrees);
  EXPECT_TRUE(found.exchanged);
  EXPECT_EQ(plain(explain(found, torque("22 N.m"), torque("30 ft.lbf"))),
            "22\u202fN·m and 30\u202fft·lbf agree only if their units change places.");
}

TEST(Agreement, SaysWhatEachColumnWouldBe) {
  const ColumnsAgreement found = compared("30 N.m", "30 ft.lbf");
  EXPECT_FALSE(found.exchanged);
  EXPECT_EQ(
      plain(explain(found, torque("30 N.m"), torque("30 ft.lbf"))),
      "30\u202fN·m and 30\u202fft·lbf are not the same torque: 30\u202fN·m would be 22.1\u202fft·lbf, and "
      "30\u202fft·lbf would be 40.7\u202fN·m.");
}

TEST(Agreement, EveryFootPoundReadAsNewtonMetreIsSeenFromFourOnwards) {
  for (int footPounds = 4; footPounds <= 500; ++footPounds) {
    const StatedTorque printed{std::to_string(footPounds), &kPoundFoot};
    const std::string digits = significant(in(kNewtonMetre, printed.value()), 3);
    EXPECT_EQ(columnsAgree({digits, &kNewtonMetre}, printed)->agreement, Agreement::Agrees) << footPounds;
    EXPECT_EQ(columnsAgree({printed.digits, &kNewtonMetre}, printed)->agreement, Agreement::Disagrees)
        << footPounds;
  }
}

TEST(Agreement, RefusesTwoColumnsInOneUnit) {
  EXPECT_FALSE(columnsAgree(torque("30 N.m"), torque("31 N.m")).has_value());
  EXPECT_FALSE(columnsAgree({}, torque("31 N.m")).has_value());
}

}  // namespace
}  // namespace cw

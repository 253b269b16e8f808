#include "app/figures/figures_place.h"

#include "tests/app/figures/figures_desk.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;

TEST_F(FiguresDesk, ConvertShowsTheStatedUnitFirstAndTheOthersBesideIt) {
  show("convert");
  type("torque", "60 in-lb");
  EXPECT_EQ(number(), "60 in·lbf");
  // 60 × 0.1129848290276167 N·m = 6.779 N·m; 60/12 = 5 ft·lbf
  EXPECT_THAT(said("derived"), AllOf(HasSubstr("6.779 N·m"), HasSubstr("5 ft·lbf")));
}

TEST_F(FiguresDesk, ABareNumberIsRefusedUntilAUnitWasTypedThere) {
  show("convert");
  type("torque", "30");
  EXPECT_THAT(found("torque"), HasSubstr("ft·lbf"));
  EXPECT_EQ(number(), "");
  type("torque", "30 Nm");
  type("torque", "45");
  EXPECT_EQ(number(), "45 N·m");
  EXPECT_THAT(found("torque"), HasSubstr("45 N·m"));
}

}  // namespace
}  // namespace cw

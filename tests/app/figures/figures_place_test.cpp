#include "app/figures/figures_place.h"

#include "tests/app/figures/figures_desk.h"
#include "tests/support/need.h"
#include "tests/support/temporary_folder.h"

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

TEST_F(FiguresDesk, KnowsTheRowsOfTheShopThatIsOpen) {
  show("clamp");
  type("thread", "M12x0.75");
  EXPECT_THAT(found("thread"), HasSubstr("M12x0.75"));
  EXPECT_EQ(number(), "");

  const TemporaryFolder folder;
  test::need(
      workspace.createShop({toQt(folder.path().string() + "/own.shop"), QStringLiteral("Own rows"),
                            QStringLiteral("Lena Fjord"), QStringLiteral("lena"), QStringLiteral("2468")}));
  test::need(workspace.addLibraryRow(
      RowKind::Thread, {"M12x0.75", "12", "0.75", "", "", "mm", "seen", "drawing 7", "Lena", "own"},
      {QStringLiteral("lena"), QStringLiteral("2468"), QString()}));
  settle();
  type("thread", "m12 x 0.75");
  type("grade", "8.8");
  type("condition", "dry");
  type("torque", "60 N.m");
  type("deviation", "4 %");
  EXPECT_THAT(number(), HasSubstr("N"));
}

}  // namespace
}  // namespace cw

#include "app/shell/shop_page.h"

#include <QLabel>
#include <fstream>

#include "app/shell/main_window.h"
#include "tests/app/desk_test.h"

namespace cw {
namespace {

using testing::HasSubstr;

class FirstRun : public DeskTest {
 protected:
  static void type(const QWidget& page, const char* field, const char* text) {
    child<QLineEdit>(page, field).setText(QLatin1String(text));
  }
  static void fillIn(const QWidget& page) {
    type(page, "shopNameField", "Mill Lane pump shed");
    type(page, "leadNameField", "Bea Okafor");
    type(page, "leadSignField", "bea");
    type(page, "leadPinField", "4680");
  }
  QString file(const char* name) const { return toQt((sample.folder() / name).string()); }
};

TEST_F(FirstRun, AsksForAShopBeforeAnythingElse) {
  MainWindow window(workspace);
  window.QMainWindow::show();
  EXPECT_TRUE(window.shopPage()->isVisible());
  showAll(window, QStringLiteral("first_run"));
}

TEST_F(FirstRun, MakesAShopThatItsLeadCanSignIn) {
  MainWindow window(workspace);
  window.QMainWindow::show();
  ShopPage& page = *window.shopPage();
  fillIn(page);
  page.makeAt(file("new.shop"));
  ASSERT_TRUE(workspace.hasShop()) << said(page, "saidText").toStdString();
  EXPECT_FALSE(page.isVisible());
  EXPECT_EQ(test::need(workspace.shop().people().find("bea")).name, "Bea Okafor");
  EXPECT_TRUE(workspace.secretKey().has_value());
  EXPECT_EQ(publicOf(*workspace.secretKey()), workspace.shop().identity().key);
}

TEST_F(FirstRun, SaysInOneSentenceWhatIsWrongAndLeavesNothingBehind) {
  ShopPage page(workspace);
  page.show();
  fillIn(page);
  type(page, "leadPinField", "12");
  page.makeAt(file("a.shop"));
  EXPECT_FALSE(said(page, "saidText").isEmpty());
  fillIn(page);
  type(page, "shopNameField", " ");
  page.makeAt(file("b.shop"));
  EXPECT_FALSE(said(page, "saidText").isEmpty());
  for (const char* name : {"a.shop", "a.shop.secret-key", "b.shop", "b.shop.secret-key"})
    EXPECT_FALSE(std::filesystem::exists(sample.folder() / name)) << name;
  std::ofstream(sample.folder() / "letter") << "Dear shop";
  page.openFrom(file("letter"));
  EXPECT_THAT(said(page, "saidText").toStdString(), HasSubstr("is no shop file"));
  page.makeAt(file("letter"));
  EXPECT_THAT(said(page, "saidText").toStdString(), HasSubstr("nothing was replaced"));
  EXPECT_FALSE(workspace.hasShop());
}

}  // namespace
}  // namespace cw

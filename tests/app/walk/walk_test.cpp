// Every place and every state of the bench, in every size, scheme and size of text: measured against named
// bounds, and a picture of each for people to look at.
#include <gmock/gmock.h>

#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <iostream>

#include "app/command_line/demo_shop.h"
#include "app/common/wording.h"
#include "app/shell/places.h"
#include "core/base/resource.h"
#include "core/procedure/sheet_file.h"
#include "tests/app/look.h"
#include "tests/app/walk/bench_walk.h"
#include "tests/support/need.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

constexpr int kMostRows = 4;

/// Printed once, after the last run.
class TableAtTheEnd final : public testing::Environment {
 public:
  void TearDown() override {
    waitForPictures();
    std::cout << "\nLeast of each state: heights, targets and gaps in mm, contrasts as n : 1\n"
              << fromQt(WalkReport::theOne().table());
  }
};
const testing::Environment* const kTable = testing::AddGlobalTestEnvironment(new TableAtTheEnd);

class WalkTest : public testing::TestWithParam<WalkLook> {
 protected:
  void SetUp() override {
    Settings().setTextScale(GetParam().scale);
    Settings().setPlace(QString());
    useLook(GetParam().scheme);
  }
  void TearDown() override {
    const QString slips = WalkReport::theOne().newSlips();
    EXPECT_TRUE(slips.isEmpty()) << fromQt(slips);
  }

  /// A draft that its review finds fault with, and a sheet that waits for its approver.
  void addSheets() {
    Sheet sheet = test::need(readSheet(resource("demo/sheets/gear_case.json")));
    sheet.revision = "Z";
    sheet.specifications.front().condition.clear();
    const Deed deed{"ines", clock.now(), ""};
    test::need(workspace.shop().sheets().saveDraft(writeSheet(sheet), deed));
    sheet = test::need(readSheet(resource("demo/sheets/trailer_wheel.json")));
    sheet.revision = "Z";
    const SheetRow row = test::need(workspace.shop().sheets().saveDraft(writeSheet(sheet), deed));
    test::need(workspace.shop().sheets().submit(row.sheet, row.revision, deed));
  }

  void everyPlace(Walk& walk, const QString& state) {
    for (const Place& place : places()) {
      walk.window().show(place.key);
      walk.look(place.key, state);
    }
  }

  /// The rows of a place's list, what its actions ask, and a search that finds nothing.
  static void everythingIn(Walk& walk, const QString& key) {
    walk.window().show(key);
    QWidget* place = walk.window().placeWidget(key);
    walk.look(key, QStringLiteral("shown"));
    for (QTableView* list : place->findChildren<QTableView*>()) {
      for (int row = 0; list->isVisible() && row < std::min(list->model()->rowCount(), kMostRows); ++row) {
        list->selectRow(row);
        if (row > 0) walk.look(key, QStringLiteral("row %1").arg(row + 1));
        for (const char* action :
             {"submitButton", "issueButton", "withdrawButton", "dropButton", "addendumButton"})
          pressAndLook(walk, *place, key, QLatin1String(action));
        pressAndLook(walk, *place, key, QStringLiteral("verifyButton"));
      }
    }
    for (QListWidget* list : place->findChildren<QListWidget*>())
      for (int row = 0; list->isVisible() && row < list->count(); ++row) {
        list->setCurrentRow(row);
        if (row > 0) walk.look(key, QStringLiteral("page %1").arg(row + 1));
      }
    if (auto* search = place->findChild<QLineEdit*>(QStringLiteral("deskSearch"))) {
      search->setText(QStringLiteral("nothing is called so"));
      walk.look(key, QStringLiteral("nothing fits"));
      search->clear();
    }
  }
  static void pressAndLook(Walk& walk, QWidget& place, const QString& key, const QString& action) {
    static std::set<std::pair<Walk*, QString>> pressed;
    auto* button = place.findChild<QPushButton*>(action);
    if (button == nullptr || !button->isVisible() || !pressed.insert({&walk, key + action}).second) return;
    button->click();
    walk.look(key, action);
    if (auto* pin = place.findChild<QLineEdit*>(QStringLiteral("signerPin"));
        pin != nullptr && pin->isVisible())
      QTest::keyClick(pin, Qt::Key_Escape);
  }

  TemporaryFolder folder;
  SteppingClock clock{*parseRfc3339("2026-11-25T08:00:00.000+01:00"), std::chrono::seconds(1)};
  Workspace workspace{clock};
};

TEST_P(WalkTest, TheFirstRunWithoutAShop) {
  MainWindow window(workspace);
  window.QMainWindow::show();
  Walk walk(window, GetParam());
  walk.look(QStringLiteral("settings"), QStringLiteral("no shop"));
  everyPlace(walk, QStringLiteral("no shop"));
}

TEST_P(WalkTest, AnEmptyShop) {
  test::need(
      workspace.createShop({toQt(folder.path().string() + "/new.shop"), QStringLiteral("New shop"),
                            QStringLiteral("Lena Fjord"), QStringLiteral("lena"), QStringLiteral("2468")}));
  MainWindow window(workspace);
  window.QMainWindow::show();
  Walk walk(window, GetParam());
  everyPlace(walk, QStringLiteral("empty shop"));
  window.show(QStringLiteral("bench"));
  if (auto* start = window.findChild<QPushButton*>(QStringLiteral("startJobButton")); start->isEnabled())
    start->click();
  walk.look(QStringLiteral("bench"), QStringLiteral("empty shop, start"));
}

TEST_P(WalkTest, TheDemoShop) {
  test::need(playDemo(folder.path().string()));
  Settings().setKeyFile(QString());
  test::need(workspace.openShop(toQt(folder.path().string() + "/demo.shop")));
  addSheets();
  MainWindow window(workspace);
  window.QMainWindow::show();
  window.activateWindow();
  Walk walk(window, GetParam());
  for (const Place& place : places())
    if (place.key != QLatin1String("bench")) everythingIn(walk, place.key);
  window.show(QStringLiteral("bench"));
  BenchWalk bench(walk);
  bench.walkJob(QStringLiteral("Pump cover"));
  bench.walkJob(QStringLiteral("Discharge flange"));
}

INSTANTIATE_TEST_SUITE_P(Everywhere, WalkTest,
                         testing::Values(WalkLook{Scheme::Light, 1}, WalkLook{Scheme::Dark, 1},
                                         WalkLook{Scheme::Light, 2}, WalkLook{Scheme::Dark, 2}),
                         [](const testing::TestParamInfo<WalkLook>& each) {
                           return std::string(each.param.scheme == Scheme::Light ? "Light" : "Dark") +
                                  (each.param.scale > 1 ? "200" : "100");
                         });

}  // namespace
}  // namespace cw

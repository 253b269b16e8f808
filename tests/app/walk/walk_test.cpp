// Every place and every state of the bench, in every size, scheme and size of text: measured against named
// bounds, and a picture of each for people to look at.
#include <gmock/gmock.h>

#include <QPushButton>
#include <iostream>

#include "app/command_line/demo_shop.h"
#include "app/common/wording.h"
#include "app/shell/places.h"
#include "core/base/resource.h"
#include "core/procedure/sheet_file.h"
#include "tests/app/look.h"
#include "tests/app/walk/bench_walk.h"
#include "tests/app/walk/desk_walk.h"
#include "tests/support/need.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

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
    issueFlangeWithGaps(deed);
  }

  void issueFlangeWithGaps(const Deed& deed) {
    Sheet sheet = test::need(readSheet(resource("demo/sheets/discharge_flange.json")));
    sheet.revision = "B";
    sheet.joints.front().passes.gaps = GapReadings{4, {1}, {"0.8", &kMillimetre}};
    Sheets& sheets = workspace.shop().sheets();
    const SheetRow row = test::need(sheets.saveDraft(writeSheet(sheet), deed));
    test::need(sheets.submit(row.sheet, row.revision, deed));
    test::need(sheets.issue(row.sheet, row.revision, {"bea", clock.now(), ""}));
  }

  void everyPlace(Walk& walk, const QString& state) {
    for (const Place& place : places()) {
      walk.window().show(place.key);
      walk.look(place.key, state);
    }
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
  test::need(playDemo(folder.path().string(), Existing::Kept));
  Settings().setKeyFile(QString());
  test::need(workspace.openShop(toQt(folder.path().string() + "/demo.shop")));
  addSheets();
  MainWindow window(workspace);
  window.QMainWindow::show();
  window.activateWindow();
  Walk walk(window, GetParam());
  DeskWalk desk(walk);
  for (const Place& place : places())
    if (place.key != QLatin1String("bench")) desk.everythingIn(place.key);
  desk.everyFigure();
  desk.settings();
  window.show(QStringLiteral("bench"));
  BenchWalk bench(walk);
  bench.quickJoint();
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

#include "app/figures/settling_page.h"

#include <gmock/gmock.h>

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSlider>
#include <QSpinBox>
#include <QTest>
#include <QTimer>

#include "app/common/wording.h"
#include "app/common/workspace.h"
#include "app/documents/document_view.h"
#include "app/figures/figure.h"
#include "app/figures/load_view.h"
#include "app/figures/step_player.h"
#include "app/figures/trials_panel.h"
#include "app/layout/order_form.h"
#include "core/store/file_io.h"
#include "tests/app/look.h"
#include "tests/support/need.h"
#include "tests/support/sample_shop.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

/// Ten thousand turns of the event loop would be minutes: a run that takes longer hangs.
template <class Until>
bool turnUntil(Until until) {
  for (int turn = 0; turn < 20000; ++turn) {
    if (until()) return true;
    QApplication::processEvents(QEventLoop::AllEvents | QEventLoop::WaitForMoreEvents);
  }
  return until();
}

class SettlingPageTest : public testing::Test {
 protected:
  SettlingPageTest() {
    useLook(Scheme::Light);
    page.resize(960, 900);
    page.show();
    computed();
  }
  /// The loop wakes up by itself while a result is waited for.
  void computed() {
    QTimer waker;
    waker.start(10);
    ASSERT_TRUE(turnUntil([&] { return !page.isComputing(); }));
    for (int turn = 0; turn < 4; ++turn) QApplication::processEvents();
  }
  template <class Widget>
  Widget& child(const char* name) const {
    auto* found = page.findChild<Widget*>(QLatin1String(name));
    if (found == nullptr) throw std::runtime_error(std::string("no widget is called ") + name);
    return *found;
  }
  void press(const char* name) const { child<QPushButton>(name).click(); }
  std::string said(const char* name) const { return child<QLabel>(name).text().toStdString(); }
  std::string passes(const char* name) const { return child<DocumentView>(name).toPlainText().toStdString(); }
  void choose(const char* name, int row) {
    auto& box = child<QComboBox>(name);
    box.setCurrentIndex(row);
    emit box.activated(row);
    computed();
  }
  void showPictures(const QString& name) {
    for (const Scheme scheme : {Scheme::Light, Scheme::Dark}) {
      useLook(scheme);
      for (int turn = 0; turn < 4; ++turn) QApplication::processEvents();
      EXPECT_TRUE(savePicture(
          page, name + (scheme == Scheme::Light ? QLatin1String("_light") : QLatin1String("_dark"))));
    }
    useLook(Scheme::Light);
  }

  SystemClock clock;
  Workspace workspace{clock};
  FigureDesk desk{workspace};
  SettlingPage page{desk};
};

TEST_F(SettlingPageTest, ShowsBothWaysAtTheirEnd) {
  EXPECT_EQ(said("leftCaption"), "Pass 3 of 3, bolt 8");
  for (const char* table : {"leftPasses", "rightPasses"}) {
    EXPECT_THAT(passes(table), testing::HasSubstr("Tilt, mrad"));
    EXPECT_THAT(passes(table), testing::HasSubstr("one more"));
  }
  EXPECT_NE(passes("leftPasses"), passes("rightPasses"));
  EXPECT_TRUE(child<LoadView>("leftLoads").accessibleDescription().startsWith(QStringLiteral("bolt 1: ")));
  EXPECT_THAT(said("caution"), testing::HasSubstr("prediction"));
  showPictures(QStringLiteral("settling_eight"));
  choose("jointChoice", 3);
  EXPECT_EQ(child<QComboBox>("leftRule").currentText(),
            QStringLiteral("Balanced"));  // no star without a ring
  showPictures(QStringLiteral("settling_cover"));
  choose("jointChoice", 2);
  showPictures(QStringLiteral("settling_twenty_four"));
}

TEST_F(SettlingPageTest, IsPlayedStepByStepOrAtOnce) {
  auto& slider = child<QSlider>("stepSlider");
  EXPECT_EQ(slider.maximum(), 24);  // three passes of eight bolts
  press("firstStepButton");
  EXPECT_EQ(said("leftCaption"), "Before the first pass: snug");
  press("stepButton");
  EXPECT_EQ(said("leftCaption"), "Pass 1 of 3, bolt 1");
  EXPECT_TRUE(child<LoadView>("leftLoads").accessibleDescription().contains(QStringLiteral("bolt 1: 30 %")));
  press("stepButton");
  EXPECT_EQ(said("leftCaption"), "Pass 1 of 3, bolt 5");
  EXPECT_EQ(said("rightCaption"), "Pass 1 of 3, bolt 2");
  showPictures(QStringLiteral("settling_second_step"));
  QTest::keyClick(&slider, Qt::Key_Right);
  EXPECT_EQ(said("leftCaption"), "Pass 1 of 3, bolt 3");
  press("lastStepButton");
  EXPECT_EQ(slider.value(), 24);
}

TEST_F(SettlingPageTest, PlayingStopsByItselfAtTheEnd) {
  auto& player = *page.findChild<StepPlayer*>();
  EXPECT_FALSE(player.isPlaying());
  child<QSlider>("stepSlider").setValue(23);
  press("playButton");
  EXPECT_TRUE(player.isPlaying());
  EXPECT_TRUE(turnUntil([&] { return !player.isPlaying(); }));
  EXPECT_EQ(player.step(), 24u);
}

TEST_F(SettlingPageTest, AFullRoundMoreIsWhatWasForetold) {
  const std::string before = passes("leftPasses");
  const auto row = [](const std::string& text) {  // the figures of the row "one more"
    std::string out;
    for (std::size_t at = text.find("one more") + 9, cells = 0; at < text.size() && cells < 5; ++at) {
      if (text[at] == '\n') ++cells;
      out += text[at];
    }
    return out;
  };
  const std::string foretold = row(before);
  child<QSpinBox>("leftRounds").setValue(1);
  computed();
  EXPECT_THAT(passes("leftPasses"), testing::HasSubstr("4, round\n" + foretold));
}

TEST_F(SettlingPageTest, TheWindowLivesWhileTrialsRunAndCancelAnswersAtOnce) {
  choose("jointChoice", 2);  // 24 bolts
  auto& trials = *page.findChild<TrialsPanel*>();
  int events = 0;
  QTimer life;
  QObject::connect(&life, &QTimer::timeout, [&] { ++events; });
  life.start(0);
  press("trialsButton");
  EXPECT_TRUE(turnUntil([&] { return events > 50; }));
  life.start(10);
  EXPECT_TRUE(turnUntil([&] { return child<QProgressBar>("trialsProgress").value() > 0; }));
  EXPECT_TRUE(trials.isRunning());
  press("stepBackButton");  // and the rest of the page still answers
  EXPECT_EQ(child<QSlider>("stepSlider").value(), child<QSlider>("stepSlider").maximum() - 1);
  press("cancelTrialsButton");
  EXPECT_FALSE(trials.isRunning());
  EXPECT_EQ(said("trialsSaid"), "Cancelled.");
  for (int turn = 0; turn < 50; ++turn) QApplication::processEvents();
  EXPECT_EQ(said("trialsSaid"), "Cancelled.");  // what was under way never speaks
}

TEST_F(SettlingPageTest, AThousandTrialsSayTheSpread) {
  press("trialsButton");
  QTimer waker;
  waker.start(10);
  ASSERT_TRUE(turnUntil([&] { return !page.findChild<TrialsPanel*>()->isRunning(); }));
  EXPECT_THAT(said("trialsSaid"), testing::HasSubstr("one joint in twenty over"));
  showPictures(QStringLiteral("settling_trials"));
}

TEST_F(SettlingPageTest, SaysWhatIsWrongBesideTheField) {
  auto& shares = child<QLineEdit>("leftSharesField");
  for (const char* bad : {"many", "", "300"}) {
    shares.selectAll();
    QTest::keyClick(&shares, Qt::Key_Delete);
    QTest::keyClicks(&shares, QLatin1String(bad));
    computed();
    EXPECT_THAT(said("leftSharesFound"), testing::EndsWith(".")) << bad;
  }
  choose("leftRule", 9);               // the Army circle is for twelve
  EXPECT_EQ(said("leftCaption"), "");  // nothing of before is left standing
  EXPECT_EQ(child<LoadView>("leftLoads").accessibleDescription(), QString());
  EXPECT_THAT(said("leftSharesFound"), testing::EndsWith("."));
}

TEST_F(SettlingPageTest, OpensASettleFile) {
  const TemporaryFolder folder;
  const auto opened = [&](const std::string& text) {
    const std::string path = (folder.path() / "joint.json").string();
    test::need(writeFile(path, text, Existing::Replaced));
    return page.openFile(toQt(path));
  };
  const std::string head = R"({"format":"clampwright.settle","version":1,"part":{"shape":"annulus",
    "inner_radius_mm":60,"outer_radius_mm":110,"thickness_mm":)";
  const std::string tail = R"(,"modulus_GPa":205},"gasket":{"shape":"annulus","inner_radius_mm":62,
    "outer_radius_mm":80,"stiffness_N_per_m":1e9},"bolts":{"count":6,"circle_radius_mm":92.5,"hole_mm":17.5,
    "bearing_mm":22.5,"stiffness_N_per_m":3.77e8},"target_N":50000,
    "passes":[{"share":1,"order":[1,4,2,5,3,6]}]})";
  test::need(opened(head + "20" + tail));
  computed();
  EXPECT_EQ(child<QSlider>("stepSlider").maximum(), 18);
  EXPECT_THAT(said("settlingSaid"), testing::HasSubstr("50"));
  const auto refused = opened(head + "-20" + tail);
  ASSERT_FALSE(refused.has_value());
  EXPECT_THAT(sentence(refused.error()), testing::HasSubstr("thickness"));
  EXPECT_EQ(child<QSlider>("stepSlider").maximum(), 18);
}

TEST_F(SettlingPageTest, EveryControlHasAName) {
  EXPECT_THAT(namelessFocusTargets(page).join(QLatin1Char(',')).toStdString(), testing::IsEmpty());
}

TEST_F(SettlingPageTest, TakesTheJointsOfTheShopsSheets) {
  test::SampleShop shop;
  test::need(workspace.openShop(toQt(shop.file().string())));
  SettlingPage ofShop{desk};
  auto* choice = ofShop.findChild<QComboBox*>(QStringLiteral("jointChoice"));
  const int row = choice->findText(QStringLiteral("Test cover"), Qt::MatchContains);
  ASSERT_GE(row, 0);
  choice->setCurrentIndex(row);
  emit choice->activated(row);
  QTimer waker;
  waker.start(10);
  ASSERT_TRUE(turnUntil([&] { return !ofShop.isComputing(); }));
  EXPECT_EQ(ofShop.findChild<QComboBox*>(QStringLiteral("leftRule"))->currentText(),
            ruleName(OrderRule::Star));
  EXPECT_EQ(ofShop.findChild<QLineEdit*>(QStringLiteral("leftSharesField"))->text(),
            QStringLiteral("50 100"));
  EXPECT_THAT(ofShop.findChild<QLabel*>(QStringLiteral("settlingSaid"))->text().toStdString(),
              testing::HasSubstr("Target"));
}

}  // namespace
}  // namespace cw

// A whole job at the bench by keyboard, offscreen, with a picture of every stage.
#include "app/bench/bench_place.h"

#include <gmock/gmock.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/bench/run_panel.h"
#include "app/bench/start_panel.h"
#include "app/common/wording.h"
#include "tests/app/look.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

class BenchTest : public testing::TestWithParam<Scheme> {
 protected:
  void SetUp() override {
    useLook(GetParam());
    m_workspace = std::make_unique<Workspace>(m_sample.clock());
    ASSERT_TRUE(m_workspace->openShop(toQt(m_sample.file().string())));
    m_bench = std::make_unique<BenchPlace>(*m_workspace, m_navigator, nullptr);
    m_bench->resize(1150, 800);
    m_bench->show();
  }

  RunPanel& run() { return *m_bench->run(); }
  const Job& job() { return *run().session()->job(); }
  template <class T>
  T* visible(const char* name) {
    for (T* widget : m_bench->findChildren<T*>(QLatin1String(name)))
      if (widget->isVisible()) return widget;
    ADD_FAILURE() << "no visible " << name;
    return new T;
  }
  void key(Qt::Key key) { QTest::keyClick(&run(), key); }
  void type(const char* field, const char* text) {
    QLineEdit* line = visible<QLineEdit>(field);
    line->clear();
    QTest::keyClicks(line, QLatin1String(text));
  }
  std::string said() { return fromQt(run().findChild<QLabel*>(QStringLiteral("saidText"))->text()); }
  void picture(const char* name) {
    for (int pass = 0; pass < 4; ++pass) QCoreApplication::processEvents();  // wrapped text settles in turns
    const QString scheme = GetParam() == Scheme::Light ? QStringLiteral("light") : QStringLiteral("dark");
    EXPECT_TRUE(savePicture(*m_bench, QStringLiteral("bench_%1_%2").arg(QLatin1String(name), scheme)));
    EXPECT_THAT(namelessFocusTargets(*m_bench).join(QLatin1Char('\n')).toStdString(), testing::IsEmpty())
        << name;
  }

  void start() {
    QTest::mouseClick(visible<QPushButton>("startJobButton"), Qt::LeftButton);
    type("workOrderField", "WO 1");
    visible<QComboBox>("machineChoice")->setCurrentIndex(0);
    QComboBox* person = visible<QComboBox>("personChoice");
    person->setCurrentIndex(person->findData(QStringLiteral("mira")));
    type("pinField", "2468");
    picture("start");
    QTest::keyClick(visible<QLineEdit>("pinField"), Qt::Key_Return);
    ASSERT_EQ(run().stage(), Stage::ReadWarnings);
  }
  /// Up to the wrench of the tighten step.
  void walkToTighten() {
    start();
    picture("warnings");
    key(Qt::Key_Return);
    picture("act");
    QTest::keyClick(visible<QCheckBox>("renewedCheck"), Qt::Key_Space);
    key(Qt::Key_Return);
    picture("check");
    key(Qt::Key_Return);
    QTest::keyClicks(&run(), QStringLiteral("0.05"));
    picture("measure");
    key(Qt::Key_Return);
    type("batchField", "B-77");
    picture("apply");
    key(Qt::Key_Return);
    ASSERT_EQ(run().stage(), Stage::HandStart);
  }
  void secondPerson(const char* setting) {
    type("signField", "otto");
    type("pinField", "2468");
    if (*setting != '\0') {
      type("toolField", "T-07");
      type("settingField", setting);
    }
    key(Qt::Key_Return);
  }

  test::SampleShop m_sample;
  Navigator m_navigator;
  std::unique_ptr<Workspace> m_workspace;
  std::unique_ptr<BenchPlace> m_bench;
};

TEST_P(BenchTest, AWholeJobByKeyboardAlone) {
  picture("jobs");
  walkToTighten();
  picture("hand_start");
  key(Qt::Key_Return);
  picture("condition");
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::SetTool);
  picture("tool");
  key(Qt::Key_Return);
  picture("count");
  key(Qt::Key_Return);
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::WitnessBeforeFinal);
  picture("witness");
  secondPerson("65");
  ASSERT_EQ(run().stage(), Stage::TightenPosition) << said();
  key(Qt::Key_Space);
  picture("position");
  QTest::keyClicks(&run(), QStringLiteral("66"));
  picture("reading");
  key(Qt::Key_Return);
  key(Qt::Key_Space);
  key(Qt::Key_Space);
  ASSERT_EQ(run().stage(), Stage::CheckPass);
  picture("check_pass");
  key(Qt::Key_Space);  // Space stops where something is to be looked at
  ASSERT_EQ(run().stage(), Stage::CheckPass);
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::Hold);
  secondPerson("");
  ASSERT_EQ(run().stage(), Stage::Finish) << said();
  picture("finish");
  key(Qt::Key_Return);
  EXPECT_TRUE(job().finished);
  picture("finished");
}

TEST_P(BenchTest, AHeldKeyCountsOnce) {
  walkToTighten();
  key(Qt::Key_Return);
  key(Qt::Key_Return);
  const int before = job().count();
  for (int i = 0; i < 5; ++i) {
    QKeyEvent held(QEvent::KeyPress, Qt::Key_Return, Qt::NoModifier, QStringLiteral("\r"), true);
    QCoreApplication::sendEvent(&run(), &held);
  }
  EXPECT_EQ(job().count(), before);
}

TEST_P(BenchTest, AWrongPinAndTheSamePersonAreRefusedInASentence) {
  walkToTighten();
  for (int i = 0; i < 5; ++i) key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::WitnessBeforeFinal);
  const int before = job().count();
  type("signField", "otto");
  type("pinField", "9999");
  type("toolField", "T-07");
  type("settingField", "65");
  key(Qt::Key_Return);
  EXPECT_THAT(said(), testing::HasSubstr("PIN"));
  picture("wrong_pin");
  type("signField", "mira");
  type("pinField", "2468");
  key(Qt::Key_Return);
  EXPECT_THAT(said(), testing::HasSubstr("cannot be the second person"));
  EXPECT_EQ(job().count(), before);
  EXPECT_EQ(visible<QLineEdit>("settingField")->text(), QStringLiteral("65"));  // nothing typed is lost
}

TEST_P(BenchTest, AReadingTenTimesOffIsRefused) {
  walkToTighten();
  for (int i = 0; i < 5; ++i) key(Qt::Key_Return);
  secondPerson("65");
  ASSERT_EQ(run().stage(), Stage::TightenPosition) << said();
  QTest::keyClicks(&run(), QStringLiteral("650"));
  key(Qt::Key_Return);
  EXPECT_THAT(said(), testing::HasSubstr("10 times the target"));
  EXPECT_EQ(run().stage(), Stage::TightenPosition);
  picture("reading_refused");
}

TEST_P(BenchTest, PausingAndResumingReturnsToTheExactPosition) {
  walkToTighten();
  for (int i = 0; i < 5; ++i) key(Qt::Key_Return);
  secondPerson("65");
  key(Qt::Key_Space);
  const Next before = next(job());
  const Id id = job().id;
  QTest::mouseClick(visible<QPushButton>("pauseButton"), Qt::LeftButton);
  QTest::mouseClick(visible<QPushButton>("openJobButton"), Qt::LeftButton);
  picture("who");
  QTest::mouseClick(visible<QPushButton>("goOnButton"), Qt::LeftButton);
  ASSERT_EQ(run().stage(), Stage::Resume);
  picture("resume");
  type("pinField", "2468");
  key(Qt::Key_Return);
  EXPECT_EQ(next(job()), before) << said();
  EXPECT_EQ(job().id, id);
}

TEST_P(BenchTest, TroubleIsStatedInPlaceOfTheStep) {
  walkToTighten();
  QTest::mouseClick(visible<QPushButton>("troubleButton"), Qt::LeftButton);
  picture("trouble");
  QComboBox* way = visible<QComboBox>("wayChoice");
  way->setCurrentIndex(way->findData(QStringLiteral("take-apart")));
  QTest::mouseClick(visible<QPushButton>("mainButton"), Qt::LeftButton);
  EXPECT_THAT(said(), testing::HasSubstr("reason"));
  type("reasonField", "gasket pinched");
  QTest::mouseClick(visible<QPushButton>("mainButton"), Qt::LeftButton);
  EXPECT_EQ(run().stage(), Stage::ReadWarnings);
}

TEST_P(BenchTest, AnotherWindowThatWasFirstIsSaid) {
  walkToTighten();
  const Id id = job().id;
  const auto other = m_sample.another();
  ASSERT_TRUE(other->ledger().signIn(id, "mira", test::kPin, m_sample.newId()));
  ASSERT_TRUE(other->ledger().append(id, m_sample.draft("mira", HandStarted{"s5", 4, {}})));
  key(Qt::Key_Return);  // states the hand start that the other window stated before
  EXPECT_EQ(run().stage(), Stage::ConfirmCondition);
}

INSTANTIATE_TEST_SUITE_P(Schemes, BenchTest, testing::Values(Scheme::Light, Scheme::Dark),
                         [](const testing::TestParamInfo<Scheme>& each) {
                           return each.param == Scheme::Light ? "Light" : "Dark";
                         });

}  // namespace
}  // namespace cw

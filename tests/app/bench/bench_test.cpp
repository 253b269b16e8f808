// A whole job at the bench by keyboard, offscreen, with a picture of every stage.
#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

class BenchTest : public AtTheBench {};

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
  secondPerson("65 in-lb");
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

TEST_P(BenchTest, TheKeyboardIsWhereAStepWantsSomething) {
  m_bench->activateWindow();
  const auto holder = [this] { return fromQt(m_bench->focusWidget()->objectName()); };
  start();
  key(Qt::Key_Return);
  EXPECT_EQ(holder(), "renewedCheck");
  QTest::keyClick(m_bench->focusWidget(), Qt::Key_Space);
  key(Qt::Key_Return);
  EXPECT_EQ(run().stage(), Stage::Check);
  EXPECT_EQ(m_bench->focusWidget(), &run()) << "a check wants a word, which the main action says";
  key(Qt::Key_Return);
  EXPECT_EQ(holder(), "readingField");
  QTest::keyClicks(m_bench->focusWidget(), QStringLiteral("0.05"));
  QTest::keyClick(m_bench->focusWidget(), Qt::Key_Return);
  EXPECT_EQ(holder(), "batchField");
  QTest::keyClicks(m_bench->focusWidget(), QStringLiteral("B-77"));
  for (int i = 0; i < 6; ++i) key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::WitnessBeforeFinal);
  EXPECT_EQ(holder(), "toolField") << "no stray Enter changes how the second person looked";
}

TEST_P(BenchTest, APauseSignsNoReasonThatNobodyGave) {
  start();
  QTest::mouseClick(visible<QPushButton>("pauseButton"), Qt::LeftButton);
  const Job& paused =
      *test::need(m_sample->ledger().job(test::need(m_sample->findJobs({})).rows.front().job));
  EXPECT_EQ(std::get<Paused>(paused.last()->body), Paused{});
  QTest::mouseClick(visible<QPushButton>("openJobButton"), Qt::LeftButton);
  QTest::mouseClick(visible<QPushButton>("goOnButton"), Qt::LeftButton);
  EXPECT_THAT(fromQt(visible<QLabel>("pausedText")->text()),
              testing::ContainsRegex("Paused by Mira Sol at [^\n]*[0-9]\\."));
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
  fillSecondPerson("65 in-lb");
  type("pinField", "9999");
  key(Qt::Key_Return);
  EXPECT_THAT(said(), testing::HasSubstr("PIN"));
  picture("wrong_pin");
  type("signField", "mira");
  type("pinField", "2468");
  key(Qt::Key_Return);
  EXPECT_THAT(said(), testing::HasSubstr("cannot be the second person"));
  EXPECT_EQ(job().count(), before);
  EXPECT_EQ(visible<QLineEdit>("settingField")->text(), QStringLiteral("65 in-lb"));  // nothing typed is lost
}

TEST_P(BenchTest, AReadingTenTimesOffIsRefused) {
  walkToTighten();
  for (int i = 0; i < 5; ++i) key(Qt::Key_Return);
  secondPerson("65 in-lb");
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
  secondPerson("65 in-lb");
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

INSTANTIATE_TEST_SUITE_P(Schemes, BenchTest, testing::Values(Scheme::Light, Scheme::Dark), schemeName);

}  // namespace
}  // namespace cw

// What can go wrong between the hand and the disk: said in one sentence on the bench, and nothing is lost.
#include <sqlite3.h>

#include "tests/app/bench/at_the_bench.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/raw_sqlite.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class TroubleAtTheBench : public AtTheBench {
 protected:
  static void SetUpTestSuite() { test::installFaultVfs(test::Unsynced::Kept, 0); }
  void TearDown() override { test::refuseWrites(SQLITE_OK); }

  /// In the final pass, with one position done.
  void walkIntoThePass() {
    walkToTighten();
    for (int i = 0; i < 5; ++i) key(Qt::Key_Return);
    secondPerson("65 in-lb");
    key(Qt::Key_Space);
    ASSERT_EQ(run().stage(), Stage::TightenPosition) << said();
  }
  /// The key is pressed in vain; the sentence is there and all else is as it was.
  void expectRefused(Qt::Key pressed, const std::string& sentence, const char* name) {
    const int count = job().count();
    const Next before = next(job());
    key(pressed);
    EXPECT_THAT(said(), HasSubstr(sentence));
    EXPECT_EQ(job().count(), count);
    EXPECT_EQ(next(job()), before);
    EXPECT_EQ(run().stage(), before.stage);
    picture(name);
  }
  /// The same key works once the trouble is over.
  void expectTaken(Qt::Key pressed) {
    const int count = job().count();
    key(pressed);
    EXPECT_EQ(job().count(), count + 1) << said();
    EXPECT_EQ(said(), "");
  }
};

TEST_P(TroubleAtTheBench, AFullDiskAtASignOff) {
  walkIntoThePass();
  test::refuseWrites(SQLITE_FULL);
  expectRefused(Qt::Key_Space, "no room left on the disk", "disk_full");
  test::refuseWrites(SQLITE_OK);
  expectTaken(Qt::Key_Space);
}

TEST_P(TroubleAtTheBench, AFullDiskKeepsTheReadingThatWasTyped) {
  walkIntoThePass();
  QTest::keyClicks(&run(), QStringLiteral("66"));
  test::refuseWrites(SQLITE_FULL);
  expectRefused(Qt::Key_Return, "no room left on the disk", "disk_full_reading");
  EXPECT_EQ(visible<QLineEdit>("readingField")->text(), QStringLiteral("66"));
  test::refuseWrites(SQLITE_OK);
  expectTaken(Qt::Key_Return);
  EXPECT_EQ(std::get<Tightened>(job().last()->body).reading->digits, "66");
}

TEST_P(TroubleAtTheBench, AShopFileGoneReadOnlyInMidJob) {
  walkIntoThePass();
  test::refuseWrites(SQLITE_READONLY);
  expectRefused(Qt::Key_Space, "cannot be written", "read_only");
  test::refuseWrites(SQLITE_OK);
  expectTaken(Qt::Key_Space);
}

TEST_P(TroubleAtTheBench, AShopFileLockedByAnotherProgram) {
  walkIntoThePass();
  {
    test::RawSqlite other(m_sample.file());
    ASSERT_EQ(other.run("BEGIN IMMEDIATE"), "");
    expectRefused(Qt::Key_Space, "Another program is using the shop file", "locked");
  }
  expectTaken(Qt::Key_Space);
}

TEST_P(TroubleAtTheBench, AnotherWindowThatSignedTheSameFirst) {
  walkIntoThePass();
  const auto other = m_sample.another();
  test::need(other->ledger().signIn(job().id, "lena", test::kPin, m_sample.newId()));
  key(Qt::Key_Space);  // the sign-in alone came in between: the window shows it and asks again
  EXPECT_THAT(said(), AllOf(HasSubstr("Lena was first"), HasSubstr("signed-in")));
  const Next before = next(job());
  Tightened pulled;
  pulled.position = before.position;
  test::need(other->ledger().append(job().id, m_sample.draft("lena", pulled)));
  key(Qt::Key_Space);
  EXPECT_THAT(said(), AllOf(HasSubstr("Lena was first"), HasSubstr("tightened")));
  EXPECT_NE(next(job()), before);
  EXPECT_EQ(visible<QLabel>("positionNumber")->text(), toQt(next(job()).position));  // the new state is shown
  picture("conflict");
  expectTaken(Qt::Key_Space);
}

TEST_P(TroubleAtTheBench, AReadingInNoNumberOrWithAUnitOfItsOwn) {
  walkIntoThePass();
  QTest::keyClicks(&run(), QStringLiteral("6"));
  for (const char* typed : {"65 ft-lb", "sixty", "6,500", "-65"}) {
    auto* field = visible<QLineEdit>("readingField");
    field->selectAll();
    QTest::keyClicks(field, QLatin1String(typed));
    const int count = job().count();
    key(Qt::Key_Return);
    EXPECT_NE(said(), "") << typed;
    EXPECT_EQ(job().count(), count) << typed;
    EXPECT_EQ(visible<QLineEdit>("readingField")->text(), QLatin1String(typed));
  }
  picture("reading_with_unit");
}

TEST_P(TroubleAtTheBench, AnAnswerThatLeavesItsStepOpenIsSaid) {
  start();
  key(Qt::Key_Return);
  QTest::keyClick(visible<QCheckBox>("renewedCheck"), Qt::Key_Space);
  key(Qt::Key_Return);
  QTest::mouseClick(visible<QPushButton>("noButton"), Qt::LeftButton);
  EXPECT_EQ(run().stage(), Stage::Check);
  EXPECT_THAT(said(), HasSubstr("still to be done"));
  key(Qt::Key_Return);
  QTest::keyClicks(&run(), QStringLiteral("0.5"));  // ten times off
  key(Qt::Key_Return);
  EXPECT_EQ(run().stage(), Stage::Measure);
  EXPECT_THAT(said(), AllOf(HasSubstr("0.5 mm"), HasSubstr("0.10"), HasSubstr("still to be done")));
  picture("measured_outside");
}

TEST_P(TroubleAtTheBench, APersonNotHeardOfForAWhileGivesThePinAndGoesOn) {
  start();
  key(Qt::Key_Return);
  QTest::keyClick(visible<QCheckBox>("renewedCheck"), Qt::Key_Space);
  key(Qt::Key_Return);
  type("remarkField", "a scratch by the second stud");
  const Moment now = m_sample.clock().now();
  m_sample.clock().set({now.utc + std::chrono::minutes(20), now.offset});
  key(Qt::Key_Return);
  picture("idle");
  type("pinField", "1111");
  QTest::mouseClick(visible<QPushButton>("goOnButton"), Qt::LeftButton);
  type("pinField", "2468");
  QTest::mouseClick(visible<QPushButton>("goOnButton"), Qt::LeftButton);
  EXPECT_EQ(visible<QLineEdit>("remarkField")->text(), QStringLiteral("a scratch by the second stud"));
  expectTaken(Qt::Key_Return);
}

TEST_P(TroubleAtTheBench, IdlenessNeverLocksInTheMiddleOfAPass) {
  walkIntoThePass();
  const Moment now = m_sample.clock().now();
  m_sample.clock().set({now.utc + std::chrono::minutes(20), now.offset});
  expectTaken(Qt::Key_Space);
}

TEST_P(TroubleAtTheBench, AnApprenticeWorksUnderASupervisor) {
  QTest::mouseClick(visible<QPushButton>("startJobButton"), Qt::LeftButton);
  type("workOrderField", "WO 1");
  visible<QComboBox>("machineChoice")->setCurrentIndex(0);
  QComboBox* person = visible<QComboBox>("personChoice");
  person->setCurrentIndex(person->findData(QStringLiteral("ada")));
  QComboBox* supervisor = visible<QComboBox>("supervisorChoice");
  supervisor->setCurrentIndex(supervisor->findData(QStringLiteral("mira")));
  type("pinField", "2468");
  type("supervisorPinField", "1111");
  enterIn("supervisorPinField");
  EXPECT_THAT(fromQt(visible<QLabel>("saidText")->text()), HasSubstr("not the PIN"));
  type("supervisorPinField", "2468");
  picture("supervised");
  enterIn("supervisorPinField");
  ASSERT_EQ(run().stage(), Stage::ReadWarnings);
  expectTaken(Qt::Key_Return);
  EXPECT_EQ(job().last()->supervisor, "mira");
  EXPECT_EQ(job().last()->voucher("mira")->how, Vouch::Session);
  QTest::mouseClick(visible<QPushButton>("pauseButton"), Qt::LeftButton);
  QTest::mouseClick(visible<QPushButton>("openJobButton"), Qt::LeftButton);
  QTest::mouseClick(visible<QPushButton>("goOnButton"), Qt::LeftButton);
  ASSERT_EQ(run().stage(), Stage::Resume);
  type("pinField", "2468");
  EXPECT_FALSE(visible<QPushButton>("mainButton")->isEnabled()) << "the supervisor gives theirs too";
  type("supervisorPinField", "2468");
  picture("supervised_resume");
  enterIn("supervisorPinField");
  EXPECT_EQ(run().stage(), Stage::Act) << said();
}

INSTANTIATE_TEST_SUITE_P(Schemes, TroubleAtTheBench, testing::Values(Scheme::Light, Scheme::Dark),
                         schemeName);

}  // namespace
}  // namespace cw

// What was entered wrongly, put right in the window: every field of every kind, and what was never done.
#include <set>

#include "app/run/entry_fields.h"
#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

Sheet sheetWithAGap() {
  Sheet sheet = test::sampleSheet();
  sheet.joints.front().passes.gaps = GapReadings{4, {1}, {"0.8", &kMillimetre}};
  return sheet;
}

class CorrectionsAtTheBench : public AtTheBench {
 protected:
  CorrectionsAtTheBench() : AtTheBench(sheetWithAGap()) { m_album = QStringLiteral("bench_correct"); }

  void walkIntoThePass() {
    walkToTighten();
    for (int i = 0; i < 4; ++i) key(Qt::Key_Return);
    ASSERT_EQ(run().stage(), Stage::ReadGaps) << said();
    for (const char* gap : {"1.2", "1.2", "1.2", "1.3"}) {
      QTest::keyClicks(&run(), QLatin1String(gap));
      key(Qt::Key_Return);
    }
    key(Qt::Key_Return);
    key(Qt::Key_Return);
    secondPerson("65 in-lb");
    key(Qt::Key_Space);
    ASSERT_EQ(run().stage(), Stage::TightenPosition) << said();
  }
  /// Chooses the latest entry of that kind.
  void correct(std::string_view kind) {
    chooseWay("correction");
    auto* entries = visible<QComboBox>("entryChoice");
    int latest = 0;
    for (const Kept& kept : job().entries)
      if (kindOf(kept.entry.body) == kind && !kept.overtaken) latest = kept.entry.sequence;
    ASSERT_NE(entries->findData(latest), -1) << kind << " is not offered";
    entries->setCurrentIndex(entries->findData(latest));
    QCoreApplication::processEvents();
  }
  void chooseIn(const char* field, const char* words) {
    auto* choice = visible<QComboBox>(field);
    ASSERT_NE(choice->findText(QLatin1String(words)), -1) << words;
    choice->setCurrentIndex(choice->findText(QLatin1String(words)));
  }
  void state(const char* reason) {
    type("reasonField", reason);
    enterIn("reasonField");
  }
  const Corrected& last() { return std::get<Corrected>(job().last()->body); }
  template <class T>
  T now() {
    return std::get<T>(job().kept(last().of).body());
  }
};

/// Names of the fields that a correction may change.
struct CorrectableKeys {
  std::set<std::string> found;
  template <class T>
  void operator()(std::string_view key, const T&) {
    if (!kStays<T>) found.insert(std::string(key));
  }
};

TEST(FieldsOfAnEntry, HaveWordsForPeopleWhereverACorrectionMayChangeThem) {
  CorrectableKeys keys;
  forEachKind([&]<class T>() {
    if constexpr (T::kCorrection == Correction::Values) {
      const T body;
      T::fields(body, keys);
    }
  });
  EXPECT_FALSE(keys.found.empty());
  for (const std::string& key : keys.found) EXPECT_FALSE(wordsForField(key).isEmpty()) << key;
}

TEST_P(CorrectionsAtTheBench, AnUnchangedFormIsRefusedBesideTheButton) {
  walkIntoThePass();
  const int before = job().count();
  correct("checked");
  state("misread");
  EXPECT_THAT(said(), HasSubstr("othing is changed yet"));
  EXPECT_EQ(job().count(), before);
  EXPECT_TRUE(visible<QComboBox>("answerCorrection")->isVisible()) << "what was filled in stays";
}

TEST_P(CorrectionsAtTheBench, ACheckBecomesANoWithItsRemark) {
  walkIntoThePass();
  correct("checked");
  chooseIn("answerCorrection", "no, it is not");
  type("remarkCorrection", "a radial scratch");
  picture("check");
  state("looked again");
  ASSERT_TRUE(std::holds_alternative<Corrected>(job().last()->body)) << said();
  EXPECT_EQ(now<CheckMade>().answer, Answer::No);
  EXPECT_EQ(now<CheckMade>().remark, "a radial scratch");
  EXPECT_EQ(run().stage(), Stage::Check) << "the step is open again";
}

TEST_P(CorrectionsAtTheBench, AClickBecomesAReadingWithItsUnit) {
  walkIntoThePass();
  correct("tightened");
  type("readingCorrection", "66");
  state("a reading");
  EXPECT_THAT(said(), AllOf(HasSubstr("66"), HasSubstr("unit"))) << "no bare number";
  type("readingCorrection", "66 in-lb");
  state("a reading");
  EXPECT_THAT(said(), HasSubstr("click is no reading"));
  chooseIn("knownCorrection", "read on the wrench");
  picture("click");
  state("a reading");
  ASSERT_TRUE(std::holds_alternative<Corrected>(job().last()->body)) << said();
  EXPECT_EQ(now<Tightened>().reading->digits, "66");
  EXPECT_TRUE(now<Tightened>().within);
  // And as it was again: the reading is taken out.
  correct("tightened");
  chooseIn("knownCorrection", "clicked at the setting");
  type("readingCorrection", "");
  state("it clicked");
  EXPECT_FALSE(now<Tightened>().reading) << said();
}

TEST_P(CorrectionsAtTheBench, AReadingOutsideTheToleranceOpensItsPosition) {
  walkIntoThePass();
  correct("tightened");
  chooseIn("knownCorrection", "read on the wrench");
  type("readingCorrection", "180 in-lb");
  state("looked at the dial");
  ASSERT_TRUE(std::holds_alternative<Corrected>(job().last()->body)) << said();
  EXPECT_FALSE(now<Tightened>().within);
  EXPECT_FALSE(job().steps[4].tightening.tightened.contains("1"));
  EXPECT_EQ(run().stage(), Stage::SetTool);
}

TEST_P(CorrectionsAtTheBench, ABatchAndOnlyTheBatchIsSent) {
  walkIntoThePass();
  correct("applied");
  type("batchCorrection", "B-78");
  state("misread");
  ASSERT_TRUE(std::holds_alternative<Corrected>(job().last()->body)) << said();
  EXPECT_EQ(now<Applied>().batch, "B-78");
  EXPECT_EQ(run().stage(), Stage::TightenPosition);
}

TEST_P(CorrectionsAtTheBench, GapsAreAList) {
  walkIntoThePass();
  correct("gaps-read");
  EXPECT_THAT(fromQt(visible<QLineEdit>("gapsCorrection")->text()), AllOf(HasSubstr("1.2"), HasSubstr("; ")));
  type("gapsCorrection", "1.2 mm; 1.2 mm; 1.2 mm; wide");
  state("misread");
  EXPECT_THAT(said(), HasSubstr("wide"));
  type("gapsCorrection", "1.2 mm; 1.2 mm; 1.2 mm; 0.05 in");
  picture("gaps");
  state("misread");
  ASSERT_TRUE(std::holds_alternative<Corrected>(job().last()->body)) << said();
  EXPECT_EQ(now<GapsRead>().gaps.back(), (StatedLength{"0.05", &kInch}));
}

TEST_P(CorrectionsAtTheBench, ThePrefilledTextIsReadBackAsItStands) {
  walkIntoThePass();
  correct("gaps-read");
  auto* gaps = visible<QLineEdit>("gapsCorrection");
  gaps->setText(gaps->text().replace(QStringLiteral("1.3"), QStringLiteral("1.4")));
  state("misread");
  ASSERT_TRUE(std::holds_alternative<Corrected>(job().last()->body)) << said();
  EXPECT_EQ(now<GapsRead>().gaps.back(), (StatedLength{"1.4", &kMillimetre}));
  EXPECT_EQ(now<GapsRead>().gaps.front(), (StatedLength{"1.2", &kMillimetre}));
}

TEST_P(CorrectionsAtTheBench, AMovedListAndAPackThatWasNotNew) {
  walkIntoThePass();
  for (int i = 0; i < 3; ++i) key(Qt::Key_Space);
  ASSERT_EQ(run().stage(), Stage::CheckPass);
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::Hold);
  correct("check-pass");
  type("movedCorrection", "2, 9");
  state("one did move");
  EXPECT_THAT(said(), HasSubstr("9"));
  type("movedCorrection", "2; 3");
  state("two did move");
  ASSERT_TRUE(std::holds_alternative<Corrected>(job().last()->body)) << said();
  EXPECT_EQ(now<CheckPassMade>().moved, (std::vector<std::string>{"2", "3"}));
  EXPECT_NE(run().stage(), Stage::Hold) << "the check pass is made again";
  correct("done");
  chooseIn("renewedCorrection", "no");
  state("it was the old one");
  EXPECT_THAT(said(), HasSubstr("used once only"));
}

TEST_P(CorrectionsAtTheBench, APositionThatWasNeverPulledIsDoneAgain) {
  walkIntoThePass();
  key(Qt::Key_Space);
  chooseWay("not-tightened");
  auto* pulled = visible<QComboBox>("pulledChoice");
  ASSERT_EQ(pulled->count(), 2);
  pulled->setCurrentIndex(1);
  picture("not_tightened");
  enterIn("reasonField");
  EXPECT_THAT(said(), HasSubstr("reason"));
  state("signed one too many");
  ASSERT_TRUE(std::holds_alternative<Reopened>(job().last()->body)) << said();
  EXPECT_EQ(next(job()).stage, Stage::SetTool);
  EXPECT_FALSE(job().steps[4].tightening.tightened.contains("3"));
  EXPECT_TRUE(job().steps[4].tightening.tightened.contains("1"));
}

TEST_P(CorrectionsAtTheBench, AStepThatWasNeverDoneIsOpenedAgain) {
  walkIntoThePass();
  chooseWay("not-done");
  auto* closed = visible<QComboBox>("closedChoice");
  EXPECT_EQ(closed->findData(QStringLiteral("s5")), -1) << "a joint is reopened position by position";
  closed->setCurrentIndex(closed->findData(QStringLiteral("s2")));
  state("nobody looked");
  EXPECT_EQ(run().stage(), Stage::Check) << said();
}

TEST_P(CorrectionsAtTheBench, EscapeLeavesTheWaysOut) {
  walkToTighten();
  press("troubleButton");
  EXPECT_EQ(visible<QComboBox>("wayChoice")->findData(QStringLiteral("not-tightened")), -1)
      << "nothing is tightened yet";
  EXPECT_EQ(visible<QComboBox>("wayChoice")->findData(QStringLiteral("confirm")), -1);
  m_bench->activateWindow();
  visible<QComboBox>("wayChoice")->setFocus();
  QTest::keyClick(visible<QComboBox>("wayChoice"), Qt::Key_Escape);
  EXPECT_EQ(visible<QPushButton>("mainButton")->text(), QStringLiteral("All 4 at the face by finger"));
}

INSTANTIATE_TEST_SUITE_P(Schemes, CorrectionsAtTheBench, testing::Values(Scheme::Light, Scheme::Dark),
                         schemeName);

}  // namespace
}  // namespace cw

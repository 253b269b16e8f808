// A second person sees for themselves: all that the sheet asks, and nothing that the first entered.
#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

Sheet sheetThatAsksForMore() {
  Sheet sheet = test::sampleSheet();
  for (Step& step : sheet.steps) {
    if (step.kind == StepKind::Tighten) step.notes = {"The boss gives way at 9 N·m."};
    if (step.kind == StepKind::Hold) step.hold->what = {"marks", "count", "as pictured"};
  }
  return sheet;
}

class SecondPerson : public AtTheBench {
 protected:
  SecondPerson() : AtTheBench(sheetThatAsksForMore()) { m_album = QStringLiteral("bench_second"); }

  void walkToTheHold() {
    walkToTighten();
    for (int i = 0; i < 5; ++i) key(Qt::Key_Return);
    ASSERT_EQ(run().stage(), Stage::WitnessBeforeFinal) << said();
  }
  QPushButton* main() { return visible<QPushButton>("mainButton"); }
};

TEST_P(SecondPerson, IsShownNothingOfWhatTheFirstHasSet) {
  walkToTheHold();
  picture("blind");
  for (const QLabel* label : run().findChildren<QLabel*>())
    if (label->isVisible())
      EXPECT_THAT(fromQt(label->text()), AllOf(Not(HasSubstr("lbf")), Not(HasSubstr("T-07"))));
  for (const QLineEdit* field : run().findChildren<QLineEdit*>())
    if (field->isVisible()) EXPECT_TRUE(field->text().isEmpty() && field->placeholderText().isEmpty());
  for (const char* name : {"watchedButton", "independentButton"})
    EXPECT_FALSE(visible<QPushButton>(name)->isChecked()) << name;
}

TEST_P(SecondPerson, TypesTheUnitToo) {
  walkToTheHold();
  EXPECT_FALSE(main()->isEnabled());
  EXPECT_EQ(main()->text(), QStringLiteral("Say how you looked")) << "the button says what is missing";
  fillSecondPerson("65");
  key(Qt::Key_Return);
  EXPECT_THAT(said(), HasSubstr("unit"));
  type("settingField", "65.0 in-lb");
  type("toolField", "t-07");
  key(Qt::Key_Return);
  EXPECT_EQ(run().stage(), Stage::TightenPosition) << said();
}

TEST_P(SecondPerson, WhoDisagreesIsNotToldWhatTheFirstEntered) {
  walkToTheHold();
  secondPerson("56 in-lb");
  EXPECT_EQ(run().stage(), Stage::WitnessBeforeFinal);
  EXPECT_THAT(said(), AllOf(HasSubstr("still to be done"), Not(HasSubstr("65"))));
}

TEST_P(SecondPerson, SaysOfEachThingWhetherItIsSoAndCounts) {
  walkToTheHold();
  secondPerson("65 in-lb");
  for (int i = 0; i < 4; ++i) key(Qt::Key_Space);
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::Hold) << said();
  for (const char* name : {"soButton1", "notSoButton1", "soButton2", "notSoButton2"})
    EXPECT_FALSE(visible<QPushButton>(name)->isChecked()) << name;
  EXPECT_EQ(visible<QPushButton>("soButton1")->size(), visible<QPushButton>("notSoButton1")->size());
  picture("asked");
  press("watchedButton");
  press("soButton1");
  EXPECT_THAT(fromQt(main()->text()), HasSubstr("as pictured"));
  press("notSoButton2");
  type("signField", "otto");
  type("pinField", "2468");
  type("countField", "four");
  key(Qt::Key_Return);
  EXPECT_THAT(said(), HasSubstr("no count"));
  type("countField", "4");
  key(Qt::Key_Return);
  const auto seen = std::get<Witnessed>(job().last()->body);
  EXPECT_EQ(seen.notSo, std::vector<std::string>{"as pictured"});
  EXPECT_EQ(seen.count, 4);
  EXPECT_FALSE(seen.agrees);
  EXPECT_EQ(run().stage(), Stage::Hold) << "it is still to be done";
  press("watchedButton");
  press("soButton1");
  press("soButton2");
  type("signField", "otto");
  type("pinField", "2468");
  type("countField", "3");
  key(Qt::Key_Return);
  EXPECT_EQ(run().stage(), Stage::Hold) << "three of four";
}

INSTANTIATE_TEST_SUITE_P(Schemes, SecondPerson, testing::Values(Scheme::Light, Scheme::Dark), schemeName);

}  // namespace
}  // namespace cw

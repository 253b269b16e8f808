// A joint with several torques, and wrenches that come and go.
#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;

Sheet sheetWithTwoTorques() {
  Sheet sheet = test::sampleSheet();
  Specification other = sheet.specifications.front();
  other.id = "studs";
  other.printed = "80-90 in. lbs.";
  other.low = test::inLbf("80"), other.aim = test::inLbf("85"), other.high = test::inLbf("90");
  other.condition = "oiled";
  sheet.specifications.push_back(other);
  for (const char* label : {"2", "4"}) sheet.joints.front().positions[label].specification = "studs";
  for (Step& step : sheet.steps)
    if (step.kind == StepKind::Tighten) step.hold.reset();
  return sheet;
}

class PartsOfAPass : public AtTheBench {
 protected:
  PartsOfAPass() : AtTheBench(sheetWithTwoTorques()) { m_album = QStringLiteral("bench_parts"); }
  std::string text(const char* name) { return fromQt(visible<QLabel>(name)->text()); }
};

TEST_P(PartsOfAPass, SayWhichPositionsAreMeant) {
  walkToTighten();
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::ConfirmCondition);
  EXPECT_THAT(text("conditionText"), AllOf(HasSubstr("positions 1, 3"), HasSubstr("dry")));
  key(Qt::Key_Return);
  EXPECT_THAT(text("conditionText"), AllOf(HasSubstr("positions 2, 4"), HasSubstr("oiled")));
  picture("condition");
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::SetTool);
  EXPECT_THAT(text("toolText"), HasSubstr("positions 1, 3"));
  picture("tool");
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::CountPass) << said();
  EXPECT_EQ(text("countText"), "2 of 4: positions 1, 3");
  EXPECT_THAT(fromQt(visible<QPushButton>("mainButton")->text()), HasSubstr("These 2 clicked at"));
  picture("count");
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::SetTool);
  key(Qt::Key_Return);
  EXPECT_EQ(text("countText"), "2 of 4: positions 2, 4");
  picture("count_second");
  key(Qt::Key_Return);
  EXPECT_EQ(next(job()).pass, 2);
}

TEST_P(PartsOfAPass, AWrenchThatWasDroppedIsSaidAndAnotherIsAskedFor) {
  walkToTighten();
  for (int i = 0; i < 3; ++i) key(Qt::Key_Return);
  for (int i = 0; i < 4; ++i) key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::SetTool) << said();
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::TightenPosition) << said();
  key(Qt::Key_Space);
  test::need(m_sample->tools().drop("T-07", {"lena", m_sample.clock().now()}));
  key(Qt::Key_Space);
  EXPECT_NE(said(), "");
  ASSERT_EQ(run().stage(), Stage::SetTool) << "what was in hand is not";
  EXPECT_THAT(text("stoppedText"), AllOf(HasSubstr("T-07 was dropped"), HasSubstr("Take another")));
  picture("dropped");
}

TEST_P(PartsOfAPass, AStepClosedOtherwiseSaysSoInTheList) {
  start();
  chooseWay("not-applicable");
  type("reasonField", "no such part here");
  enterIn("reasonField");
  ASSERT_EQ(run().stage(), Stage::Check) << said();
  chooseWay("deviation");
  type("whatField", "looked at under a lamp");
  type("leadField", "lena");
  type("leadPinField", "2468");
  type("reasonField", "dark shed");
  enterIn("reasonField");
  ASSERT_EQ(run().stage(), Stage::Measure) << said();
  press("asideButton");
  type("reasonField", "the gauge is away");
  enterIn("reasonField");
  QString spoken;
  for (const QWidget* part : run().findChildren<QWidget*>())
    if (part->accessibleName().startsWith(QLatin1String("1 "))) spoken = part->accessibleName();
  EXPECT_THAT(fromQt(spoken),
              AllOf(HasSubstr("does not apply"), HasSubstr("done otherwise"), HasSubstr("left for later")));
  picture("closed_otherwise");
}

TEST_P(PartsOfAPass, FinishingShortSaysWhatIsMissingAndAsksALead) {
  start();
  for (const char* reason : {"one", "two", "three", "four", "five"}) {
    chooseWay("not-recorded");
    type("reasonField", reason);
    enterIn("reasonField");
  }
  chooseWay("not-recorded");
  EXPECT_FALSE(visible<QLineEdit>("leadPinField")->text().size())
      << "a hold is left out by a lead who is here";
  for (const auto* box : m_bench->findChildren<QCheckBox*>(QStringLiteral("byPhoneCheck")))
    EXPECT_FALSE(box->isVisible()) << "not by phone";
  type("leadField", "lena");
  type("leadPinField", "2468");
  type("reasonField", "six");
  enterIn("reasonField");
  ASSERT_EQ(run().stage(), Stage::Finish) << said();
  EXPECT_THAT(text("finishText"), AllOf(HasSubstr("0 of 4"), HasSubstr("shop lead")));
  picture("finish_short");
  key(Qt::Key_Return);
  EXPECT_FALSE(job().finished);
  EXPECT_THAT(said(), HasSubstr("shop lead"));
  type("leadField", "lena");
  type("reasonField", "goes back by trailer");
  auto* byPhone = visible<QCheckBox>("byPhoneCheck");
  QTest::keyClick(byPhone, Qt::Key_Space);
  EXPECT_THAT(text("unconfirmedText"), HasSubstr("Until lena confirms it"));
  picture("finish_by_phone");
  key(Qt::Key_Return);
  EXPECT_TRUE(job().finished) << said();
}

INSTANTIATE_TEST_SUITE_P(Schemes, PartsOfAPass, testing::Values(Scheme::Light, Scheme::Dark), schemeName);

}  // namespace
}  // namespace cw

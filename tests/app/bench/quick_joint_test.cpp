// A joint that has no sheet, at the bench: entered, judged, tightened by keyboard, finished.
#include "app/bench/quick_panel.h"
#include "core/store/file_io.h"
#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

class QuickJointAtTheBench : public AtTheBench {
 protected:
  QuickPanel& form() { return *m_bench->quick(); }
  QString verdict() { return visible<QLabel>("verdictText")->text(); }
  void choose(const char* name, const QString& text) {
    auto* choice = visible<QComboBox>(name);
    choice->setCurrentIndex(choice->findText(text));
    ASSERT_EQ(choice->currentText(), text);
  }
  /// Four 1/4-20 screws of SAE 5, dry, as on the sample sheet.
  void fill(const char* printed) {
    QTest::mouseClick(visible<QPushButton>("quickJointButton"), Qt::LeftButton);
    type("workOrderField", "WO 77");
    visible<QComboBox>("machineChoice")->setCurrentIndex(0);
    type("nameField", "Sight glass");
    type("countField", "4");
    type("threadField", "1/4-20 UNC");
    choose("gradeChoice", QStringLiteral("SAE 5"));
    choose("conditionChoice", QStringLiteral("dry"));
    type("printedField", printed);
    type("documentField", "Invented manual");
    type("pageField", "7");
    type("revisionField", "3");
    choose("personChoice", QStringLiteral("Mira Sol"));
    type("pinField", "2468");
  }
  void start() { QTest::keyClick(visible<QLineEdit>("pinField"), Qt::Key_Return); }
  std::string formSaid() { return fromQt(form().findChild<QLabel*>(QStringLiteral("saidText"))->text()); }
};

TEST_P(QuickJointAtTheBench, IsTightenedAndFinishedByKeyboard) {
  fill("60-70 in. lbs.");
  EXPECT_EQ(visible<QLineEdit>("aimField")->text(), QStringLiteral("65 in·lbf"));
  EXPECT_THAT(fromQt(verdict()), testing::HasSubstr("nothing against"));
  EXPECT_EQ(fromQt(visible<QPushButton>("startButton")->text()), "Start: 4 × 1/4-20 UNC at 65\u202fin·lbf");
  picture("quick");
  start();
  ASSERT_EQ(run().stage(), Stage::HandStart) << formSaid();
  picture("quick_run");
  key(Qt::Key_Return);
  key(Qt::Key_Return);
  for (int pass = 0; pass < 2; ++pass) {
    ASSERT_EQ(run().stage(), Stage::SetTool) << said();
    key(Qt::Key_Return);
    ASSERT_EQ(run().stage(), Stage::CountPass);
    key(Qt::Key_Return);
  }
  key(Qt::Key_Return);
  for (int position = 0; position < 4; ++position) {
    ASSERT_EQ(run().stage(), Stage::TightenPosition) << said();
    key(Qt::Key_Space);
  }
  ASSERT_EQ(run().stage(), Stage::CheckPass);
  key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::Finish);
  key(Qt::Key_Return);
  EXPECT_TRUE(job().finished);
  EXPECT_TRUE(job().start.quick);
  picture("quick_finished");
}

TEST_P(QuickJointAtTheBench, ThatTheGuardStopsAsksForALead) {
  fill("60-70 ft-lb");
  EXPECT_THAT(fromQt(verdict()),
              testing::AllOf(testing::HasSubstr("past yield"), testing::HasSubstr("lead")));
  picture("quick_refused");
  start();
  EXPECT_THAT(formSaid(), testing::HasSubstr("past-yield"));
  EXPECT_EQ(visible<QLineEdit>("printedField")->text(), QStringLiteral("60-70 ft-lb"));  // nothing is lost
  choose("leadChoice", QStringLiteral("Lena Fjord"));
  start();
  EXPECT_THAT(formSaid(), testing::HasSubstr("he PIN of Lena Fjord is missing"));
  type("leadPinField", "2468");
  start();
  EXPECT_THAT(formSaid(), testing::HasSubstr("reason"));
  type("reasonField", "a test piece to be broken");
  start();
  ASSERT_EQ(run().stage(), Stage::HandStart) << formSaid();
  EXPECT_EQ(job().start.guardAllowedBy, "lena");
}

TEST_P(QuickJointAtTheBench, SaysWhatIsMissingWhileItIsTyped) {
  fill("35 lbs");
  EXPECT_THAT(fromQt(verdict()), testing::HasSubstr("no torque to aim at"));
  type("aimField", "35");
  EXPECT_THAT(fromQt(verdict()), testing::HasSubstr("35"));
  start();
  EXPECT_THAT(formSaid(), testing::HasSubstr("aim"));
  picture("quick_bare_number");
  type("countField", "0");
  EXPECT_THAT(fromQt(verdict()), testing::HasSubstr("whole number"));
  type("countField", "4");
  type("aimField", "35 in-lb");
  type("leastField", "30 in-lb");
  type("mostField", "40 in-lb");
  type("threadField", "M77");
  EXPECT_THAT(fromQt(verdict()), testing::HasSubstr("M77"));
}

TEST_P(QuickJointAtTheBench, CarriesThePhotographOfItsSource) {
  fill("60-70 in. lbs.");
  const QString path = toQt((m_sample.folder() / "line.png").string());
  EXPECT_TRUE(m_bench->grab().save(path));
  test::need(form().attach(path));
  picture("quick_photograph");
  start();
  ASSERT_EQ(run().stage(), Stage::HandStart) << formSaid();
  const auto& kept = job().sheet.sources.front().photograph;
  ASSERT_TRUE(kept);
  EXPECT_EQ(kept->name, "line.png");
  EXPECT_EQ(kept->bytes, test::need(readFile(fromQt(path))));
}

TEST_P(QuickJointAtTheBench, RefusesAFileThatIsNoPicture) {
  fill("60-70 in. lbs.");
  const std::string path = (m_sample.folder() / "notes.txt").string();
  test::need(writeFile(path, "60 in-lb"));
  EXPECT_FALSE(form().attach(toQt(path)));
  EXPECT_FALSE(form().attach(toQt(path + ".missing")));
}

INSTANTIATE_TEST_SUITE_P(Schemes, QuickJointAtTheBench, testing::Values(Scheme::Light, Scheme::Dark),
                         schemeName);

}  // namespace
}  // namespace cw

// What does not go as the sheet says, by keyboard.
#include <QListWidget>

#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

using testing::HasSubstr;

class WaysOutOfTheBench : public AtTheBench {
 protected:
  void walkToTheFinalSetting() {
    walkToTighten();
    for (int i = 0; i < 4; ++i) key(Qt::Key_Return);
    ASSERT_EQ(run().stage(), Stage::SetTool);
  }
};

TEST_P(WaysOutOfTheBench, ASecondPersonWhoSeesOtherwiseSendsTheWrenchBack) {
  walkToTheFinalSetting();
  key(Qt::Key_Return);
  secondPerson("56 in-lb");
  EXPECT_EQ(run().stage(), Stage::WitnessBeforeFinal);
  EXPECT_THAT(said(), HasSubstr("still to be done"));
  picture("witness_disagrees");
  press("wrenchButton");
  EXPECT_TRUE(visible<QListWidget>("toolList")->isVisible());
  picture("wrench_anew");
  key(Qt::Key_Return);
  secondPerson("65 in-lb");
  EXPECT_EQ(run().stage(), Stage::TightenPosition) << said();
}

TEST_P(WaysOutOfTheBench, TheWrenchMayBeLeftAsItIs) {
  walkToTheFinalSetting();
  key(Qt::Key_Return);
  const int count = job().count();
  press("wrenchButton");
  press("wrenchButton");
  EXPECT_TRUE(visible<QLineEdit>("settingField")->isVisible());
  EXPECT_EQ(job().count(), count);
}

TEST_P(WaysOutOfTheBench, ARefusedWrenchNeedsALeadsWord) {
  walkToTheFinalSetting();
  auto* tools = visible<QListWidget>("toolList");
  QTest::keyClick(tools, Qt::Key_Down);
  EXPECT_THAT(fromQt(tools->currentItem()->text()), HasSubstr("T-08"));
  const int before = job().count();
  key(Qt::Key_Return);
  EXPECT_THAT(said(), HasSubstr("calibration ran out")) << "why it is refused";
  EXPECT_EQ(job().count(), before);
  picture("wrench_refused");
  for (const char* name : {"leadField", "leadPinField", "reasonField"}) {
    const auto* field = visible<QLineEdit>(name);
    EXPECT_EQ(field->visibleRegion().boundingRect(), field->rect()) << name;
  }
  type("leadField", "mira");
  type("leadPinField", "2468");
  type("reasonField", "the other one is broken");
  enterIn("reasonField");
  EXPECT_THAT(said(), HasSubstr("no shop lead"));
  type("leadField", "lena");
  type("leadPinField", "0000");
  enterIn("leadPinField");
  EXPECT_THAT(said(), HasSubstr("not the PIN"));
  EXPECT_EQ(run().stage(), Stage::SetTool);
  type("leadPinField", "2468");
  enterIn("leadPinField");
  ASSERT_EQ(run().stage(), Stage::WitnessBeforeFinal) << said();
  const auto& set = std::get<ToolSet>(job().last()->body);
  EXPECT_EQ(set.tool, "T-08");
  EXPECT_EQ(set.allowedBy, "lena");
}

TEST_P(WaysOutOfTheBench, ADeviationNeedsTheLeadsPin) {
  start();
  chooseWay("deviation");
  type("whatField", "the old gasket stays");
  type("reasonField", "no new one to be had");
  type("leadField", "lena");
  type("leadPinField", "1111");
  enterIn("leadPinField");
  EXPECT_THAT(said(), HasSubstr("not the PIN"));
  type("leadPinField", "2468");
  enterIn("leadPinField");
  EXPECT_EQ(std::get<Deviated>(job().last()->body).allowedBy, "lena") << said();
}

TEST_P(WaysOutOfTheBench, AParkedJobStartsItsJointAgain) {
  walkToTheFinalSetting();
  chooseWay("park");
  type("waitsForField", "a new gasket");
  type("machineStateField", "cover loose, drained");
  type("reasonField", "gasket torn");
  picture("park");
  enterIn("reasonField");
  ASSERT_EQ(run().stage(), Stage::Resume) << said();
  EXPECT_TRUE(job().parked);
  EXPECT_TRUE(visible<QPushButton>("tagButton")->isEnabled());
  picture("parked");
  type("pinField", "2468");
  key(Qt::Key_Return);
  EXPECT_EQ(run().stage(), Stage::HandStart) << said();
}

TEST_P(WaysOutOfTheBench, TakingApartAndCorrecting) {
  walkToTighten();
  chooseWay("correction");
  visible<QComboBox>("entryChoice")->setCurrentIndex(1);  // the measurement; the latest is the compound
  type("valueCorrection", "0.06");
  type("reasonField", "misread");
  picture("correct");
  enterIn("reasonField");
  EXPECT_EQ(run().stage(), Stage::HandStart) << said();
  EXPECT_EQ(std::get<Corrected>(job().last()->body).now.find("value")->string()->data(), std::string("0.06"));
  chooseWay("take-apart");
  type("reasonField", "gasket pinched");
  enterIn("reasonField");
  EXPECT_EQ(run().stage(), Stage::ReadWarnings) << said();
}

TEST_P(WaysOutOfTheBench, ARetorqueFollowsARecordChosenFromAList) {
  const Id before = m_sample.startJob();
  for (const auto& [sign, body] : test::sampleScript()) test::need(m_sample.say(before, sign, body));
  test::need(m_sample->records().seal(before, {"mira", std::string(test::kPin)}, m_sample.key(), "test"));
  press("startJobButton");
  auto* reason = visible<QComboBox>("reasonChoice");
  reason->setCurrentIndex(reason->findText(QStringLiteral("retorque due from a record")));
  auto* parent = visible<QComboBox>("parentChoice");
  ASSERT_EQ(parent->count(), 1);
  picture("retorque");
  type("workOrderField", "WO 2");
  QComboBox* person = visible<QComboBox>("personChoice");
  person->setCurrentIndex(person->findData(QStringLiteral("mira")));
  type("pinField", "2468");
  enterIn("pinField");
  ASSERT_EQ(run().stage(), Stage::ReadWarnings);
  EXPECT_EQ(job().start.parent, before.text());
}

INSTANTIATE_TEST_SUITE_P(Schemes, WaysOutOfTheBench, testing::Values(Scheme::Light, Scheme::Dark),
                         schemeName);

}  // namespace
}  // namespace cw

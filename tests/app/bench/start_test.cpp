// A job is started: which sheet is offered for which machine.
#include "core/report/exceptions.h"
#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

Sheet sheetForAnotherPump() {
  Sheet sheet = test::sampleSheet();
  sheet.model = "Other pump";
  return sheet;
}

class SheetForAnotherMachine : public AtTheBench {
 protected:
  SheetForAnotherMachine() : AtTheBench(sheetForAnotherPump()) { m_album = QStringLiteral("bench_other"); }
  void fillStart() {
    type("workOrderField", "WO 1");
    QComboBox* person = visible<QComboBox>("personChoice");
    person->setCurrentIndex(person->findData(QStringLiteral("mira")));
    type("pinField", "2468");
  }
  bool isVisible(const char* name) {
    const auto all = m_bench->findChildren<QWidget*>(QLatin1String(name));
    return std::any_of(all.begin(), all.end(), [](const QWidget* widget) { return widget->isVisible(); });
  }
  /// Do the record's exceptions hold one of that kind, with these words?
  bool has(ExceptionKind kind, const char* words) {
    for (const ExceptionGroup& group : exceptionsOf(job(), run().course()->floor().people, plain))
      if (group.kind == kind)
        for (const ExceptionLine& line : group.lines)
          if (line.text.find(words) != std::string::npos) return true;
    return false;
  }
  std::string formSaid() { return fromQt(visible<QLabel>("saidText")->text()); }
};

TEST_P(SheetForAnotherMachine, IsSaidBeforeTheJobStartsAndOnItsRecord) {
  QTest::mouseClick(visible<QPushButton>("startJobButton"), Qt::LeftButton);
  EXPECT_THAT(formSaid(), HasSubstr("This sheet is for Other pump; the machine is Test pump."));
  EXPECT_THAT(formSaid(), HasSubstr("Only a shop lead can allow it"));
  fillStart();
  picture("machine");
  enterIn("pinField");
  EXPECT_THAT(formSaid(), HasSubstr("have a lead allow it"));
  auto* lead = visible<QComboBox>("leadChoice");
  lead->setCurrentIndex(lead->findData(QStringLiteral("lena")));
  type("reasonField", "the cover is the same part");
  type("leadPinField", "1111");
  enterIn("leadPinField");
  EXPECT_THAT(formSaid(), HasSubstr("not the PIN"));
  type("leadPinField", "2468");
  type("pinField", "2468");
  enterIn("leadPinField");
  ASSERT_EQ(run().stage(), Stage::ReadWarnings) << formSaid();
  EXPECT_EQ(job().start.fitAllowedBy, "lena");
  EXPECT_EQ(job().last()->voucher("lena")->how, Vouch::Pin);
  EXPECT_TRUE(has(ExceptionKind::OtherModel, "the machine is Test pump"));
  EXPECT_FALSE(has(ExceptionKind::NotConfirmed, ""));
}

TEST_P(SheetForAnotherMachine, IsAllowedByPhoneAndPrintsSoUntilTheLeadConfirmsIt) {
  QTest::mouseClick(visible<QPushButton>("startJobButton"), Qt::LeftButton);
  fillStart();
  auto* lead = visible<QComboBox>("leadChoice");
  lead->setCurrentIndex(lead->findData(QStringLiteral("lena")));
  type("reasonField", "the cover is the same part");
  QTest::keyClick(visible<QCheckBox>("byPhoneCheck"), Qt::Key_Space);
  EXPECT_FALSE(isVisible("leadPinField"));
  picture("by_phone");
  enterIn("pinField");
  ASSERT_EQ(run().stage(), Stage::ReadWarnings) << formSaid();
  EXPECT_EQ(job().last()->voucher("lena")->how, Vouch::Phone);
  EXPECT_TRUE(has(ExceptionKind::NotConfirmed, "Lena"));
  chooseWay("confirm");
  EXPECT_THAT(fromQt(visible<QLabel>("wordsGivenText")->text()), HasSubstr("1  "));
  picture("confirm");
  QTest::mouseClick(visible<QPushButton>("mainButton"), Qt::LeftButton);
  EXPECT_THAT(said(), HasSubstr("PIN")) << "nobody confirms in another's name";
  type("confirmPinField", "2468");
  enterIn("confirmPinField");
  EXPECT_EQ(std::get<Confirmed>(job().last()->body).of, std::vector<int>{1}) << said();
  EXPECT_FALSE(has(ExceptionKind::NotConfirmed, ""));
}

TEST_P(SheetForAnotherMachine, IsNotJudgedForAMachineThatTheShopDoesNotList) {
  QTest::mouseClick(visible<QPushButton>("startJobButton"), Qt::LeftButton);
  visible<QComboBox>("machineChoice")->setEditText(QStringLiteral("X-99"));
  EXPECT_EQ(formSaid(), "This sheet is for Other pump; the machine's model is not known.");
  visible<QComboBox>("machineChoice")->setEditText(QString());
  for (const auto* said : m_bench->findChildren<QLabel*>(QStringLiteral("saidText")))
    EXPECT_THAT(fromQt(said->text()), IsEmpty());
}

Sheet sheetForOtherSerials() {
  Sheet sheet = test::sampleSheet();
  sheet.serials = "90000 to 90001";
  return sheet;
}

class SheetForOtherSerials : public AtTheBench {
 protected:
  SheetForOtherSerials() : AtTheBench(sheetForOtherSerials()) { m_album = QStringLiteral("bench_serials"); }
};

TEST_P(SheetForOtherSerials, IsSaidBeforeTheJobStarts) {
  QTest::mouseClick(visible<QPushButton>("startJobButton"), Qt::LeftButton);
  EXPECT_THAT(fromQt(visible<QLabel>("saidText")->text()),
              HasSubstr("This sheet is for serial numbers 90000 to 90001; "));
}

INSTANTIATE_TEST_SUITE_P(Schemes, SheetForOtherSerials, testing::Values(Scheme::Light, Scheme::Dark),
                         schemeName);

INSTANTIATE_TEST_SUITE_P(Schemes, SheetForAnotherMachine, testing::Values(Scheme::Light, Scheme::Dark),
                         schemeName);

}  // namespace
}  // namespace cw

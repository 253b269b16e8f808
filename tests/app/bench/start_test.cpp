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
  std::string formSaid() { return fromQt(visible<QLabel>("saidText")->text()); }
};

TEST_P(SheetForAnotherMachine, IsSaidBeforeTheJobStartsAndOnItsRecord) {
  QTest::mouseClick(visible<QPushButton>("startJobButton"), Qt::LeftButton);
  EXPECT_EQ(formSaid(), "This sheet is for Other pump; the machine is Test pump.");
  picture("machine");
  QTest::mouseClick(visible<QPushButton>("backButton"), Qt::LeftButton);
  start();
  const auto found = exceptionsOf(job(), {}, plain);
  ASSERT_FALSE(found.empty());
  EXPECT_EQ(found.front().kind, ExceptionKind::OtherModel);
  EXPECT_THAT(found.front().lines.front().text, HasSubstr("the machine is Test pump"));
}

TEST_P(SheetForAnotherMachine, IsNotKnownOfAMachineThatTheShopDoesNotList) {
  QTest::mouseClick(visible<QPushButton>("startJobButton"), Qt::LeftButton);
  visible<QComboBox>("machineChoice")->setEditText(QStringLiteral("X-99"));
  for (const auto* said : m_bench->findChildren<QLabel*>(QStringLiteral("saidText")))
    EXPECT_THAT(fromQt(said->text()), IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(Schemes, SheetForAnotherMachine, testing::Values(Scheme::Light, Scheme::Dark),
                         schemeName);

}  // namespace
}  // namespace cw

// A sheet that speaks in another unit than the wrench.
#include "tests/app/bench/at_the_bench.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::Not;

Sheet sheetInNewtonMetres() {
  Sheet sheet = test::sampleSheet();
  for (Step& step : sheet.steps)
    if (step.kind == StepKind::Tighten) step.notes = {"The boss gives way at 9 N·m."};
  return sheet;
}

class UnitInHand : public AtTheBench {
 protected:
  UnitInHand() : AtTheBench(sheetInNewtonMetres()) { m_album = QStringLiteral("bench_unit_in_hand"); }
  std::string note() {
    QCoreApplication::processEvents();  // what a layout is given shows with the next events
    return fromQt(visible<QLabel>("noteNotice")->text());
  }
};

TEST_P(UnitInHand, IsSpokenByNotesOnceAWrenchIsSet) {
  walkToTighten();
  EXPECT_THAT(note(), Not(HasSubstr("lbf")));
  for (int i = 0; i < 3; ++i) key(Qt::Key_Return);
  ASSERT_EQ(run().stage(), Stage::CountPass) << said();
  EXPECT_THAT(note(), HasSubstr("(9\u202fN·m is 79.66\u202fin·lbf)"));
  picture("count");
}

INSTANTIATE_TEST_SUITE_P(Schemes, UnitInHand, testing::Values(Scheme::Light, Scheme::Dark), schemeName);

}  // namespace
}  // namespace cw

#include "core/procedure/bench_limits.h"

#include "core/procedure/quick_joint.h"
#include "tests/core/procedure/sheets.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

std::string byAngle() {
  return replaced(
      smallSheetText(), R"("reading": "range",)",
      R"("reading": "range", "method": "torque-and-angle", "angle": {"value": "90", "unit": "deg"},)");
}

TEST(BenchLimits, AreKeptByEveryShippedSheet) {
  for (const auto path : shippedSheets())
    EXPECT_THAT(beyondTheBench(sheetFrom(resource(path))), IsEmpty()) << path;
}

TEST(BenchLimits, ExcludeATurnByAnAngle) {
  const Sheet sheet = sheetFrom(byAngle());
  const Findings findings = beyondTheBench(sheet);
  ASSERT_THAT(findings, SizeIs(1));
  EXPECT_TRUE(hasBlocking(findings));
  EXPECT_EQ(findings[0].place, "specifications[0].method");
  EXPECT_THAT(sentence(findings[0]), HasSubstr("the bench does not do “torque-and-angle”"));
  EXPECT_THAT(checkBenchCan(sheet), FailsWith(ErrorCode::NotPermitted, HasSubstr("torque-and-angle")));
}

TEST(BenchLimits, ExcludeAnAngleThatNoMethodNames) {
  Sheet sheet = sheetFrom(byAngle());
  sheet.specifications[0].method = Method::TorqueOnly;
  const Findings findings = beyondTheBench(sheet);
  ASSERT_THAT(findings, SizeIs(1));
  EXPECT_EQ(findings[0].place, "specifications[0].angle");
}

TEST(BenchLimits, HoldForQuickJointsToo) {
  Sheet sheet = sheetFrom(byAngle());
  sheet.steps = {sheet.steps[1]};
  EXPECT_THAT(judgeQuickSheet(sheet, shippedCatalogue()),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("torque-and-angle")));
}

}  // namespace
}  // namespace cw

#include "core/procedure/sheet_file.h"

#include <gmock/gmock.h>

#include "core/base/resource.h"

namespace cw {
namespace {

using testing::ElementsAre;

std::vector<std::string_view> shippedSheets() {
  auto out = resourcesBelow("demo/sheets/");
  for (const auto path : resourcesBelow("examples/")) out.push_back(path);
  return out;
}

class ShippedSheet : public testing::TestWithParam<std::string_view> {};
INSTANTIATE_TEST_SUITE_P(, ShippedSheet, testing::ValuesIn(shippedSheets()));

TEST_P(ShippedSheet, IsReadAndWrittenWithoutLoss) {
  const auto sheet = readSheet(resource(GetParam()));
  ASSERT_TRUE(sheet.has_value()) << sentence(sheet.error());
  const auto again = readSheet(writeSheet(*sheet));
  ASSERT_TRUE(again.has_value()) << sentence(again.error());
  EXPECT_EQ(*again, *sheet);
}

TEST(SheetFile, HoldsWhatTheFlangeExampleSays) {
  const auto sheet = readSheet(resource("examples/flange_nps4_class150.json"));
  ASSERT_TRUE(sheet.has_value()) << sentence(sheet.error());
  const Joint& flange = *sheet->joint("flange");
  EXPECT_THAT(flange.order, ElementsAre("1", "5", "3", "7", "2", "6", "4", "8"));
  EXPECT_EQ(std::get<Circle>(flange.layout.shape).diameter, inches(7.5));
  EXPECT_TRUE(flange.passes.check.has_value());
  EXPECT_EQ(sheet->specification(flange.specificationAt("8"))->aim->digits, "120");
}

}  // namespace
}  // namespace cw

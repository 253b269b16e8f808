#include "core/procedure/sheet_file.h"

#include <gmock/gmock.h>

#include "core/base/json.h"
#include "core/procedure/words.h"
#include "tests/core/procedure/sheets.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

class ShippedSheet : public testing::TestWithParam<std::string_view> {};
INSTANTIATE_TEST_SUITE_P(, ShippedSheet, testing::ValuesIn(shippedSheets()));

TEST_P(ShippedSheet, IsReadAndWrittenWithoutLoss) {
  const auto sheet = readSheet(resource(GetParam()));
  ASSERT_THAT(sheet, IsOk());
  const auto again = readSheet(writeSheet(*sheet));
  ASSERT_THAT(again, IsOk());
  EXPECT_EQ(*again, *sheet);
  EXPECT_EQ(writeSheet(*again), writeSheet(*sheet));
}

TEST(SheetFile, HoldsWhatTheFlangeExampleSays) {
  const Sheet sheet = flangeExample();
  const Joint& flange = *sheet.joint("flange");
  EXPECT_THAT(flange.order, ElementsAre("1", "5", "3", "7", "2", "6", "4", "8"));
  EXPECT_EQ(std::get<Circle>(flange.layout.shape).diameter, inches(7.5));
  EXPECT_TRUE(flange.passes.check.has_value());
  EXPECT_EQ(sheet.specification(flange.specificationAt("8"))->aim->digits, "120");
}

TEST(SheetFile, KeepsDigitsAsStated) {
  const std::string text = replaced(smallSheetText(), R"({"value": "9")", R"({"value": "9.00")");
  EXPECT_EQ(sheetFrom(writeSheet(sheetFrom(text))).specifications[0].aim->digits, "9.00");
}

TEST(SheetFile, ComputesTheOrderThatItsRuleGives) {
  const Sheet sheet =
      sheetFrom(replaced(smallSheetText(), R"("order": ["1", "3", "2", "4"])", R"("rule": "star")"));
  EXPECT_THAT(sheet.joints[0].order, ElementsAre("1", "3", "2", "4"));
}

TEST(SheetFile, SaysWhatFollowsIfAJointLetsGo) {
  EXPECT_EQ(smallSheet().joints[0].ifItLetsGo, IfItLetsGo::Leak);
  for (const char* word : {"nuisance", "leak", "damage", "injury"}) {
    const Sheet sheet = sheetFrom(replaced(smallSheetText(), R"("passes")",
                                           R"("if_it_lets_go": ")" + std::string(word) + R"(", "passes")"));
    EXPECT_EQ(sheet.joints[0].ifItLetsGo, *fromWord<IfItLetsGo>(word));
    EXPECT_EQ(sheetFrom(writeSheet(sheet)), sheet);
  }
}

TEST(SheetFile, KeepsLayoutsInTheirOwnUnit) {
  const Sheet sheet = flangeExample();
  EXPECT_EQ(sheet.joints[0].layout.unit, &kInch);
  EXPECT_THAT(writeSheet(sheet), HasSubstr(R"("diameter": "7.5")"));
}

/// Adds a member that no program knows to every object that may have one.
void sprinkle(Json& value, int& count) {
  if (auto* items = value.array())
    for (Json& item : *items) sprinkle(item, count);
  auto* members = value.object();
  if (members == nullptr) return;
  for (auto& [key, member] : *members) {
    const bool closed =
        key == "circle" || key == "low" || key == "aim" || key == "high" || key == "positions";
    if (!closed) sprinkle(member, count);
    if (key == "positions")
      for (auto& [label, detail] : *member.object()) sprinkle(detail, count);
  }
  value.set("later", Json::Object{{"n", ++count}});
}

TEST(SheetFile, KeepsUnknownFieldsOnEveryLevel) {
  Json json = *parseJson(smallSheetText());
  int sprinkled = 0;
  sprinkle(json, sprinkled);
  EXPECT_EQ(sprinkled, 12);
  const Sheet sheet = sheetFrom(canonical(json));
  const std::string written = canonical(*parseJson(writeSheet(sheet)));
  for (int n = 1; n <= sprinkled; ++n)
    EXPECT_THAT(written, HasSubstr(R"("later":{"n":)" + std::to_string(n) + "}"));
  EXPECT_EQ(sheetFrom(written), sheet);
}

}  // namespace
}  // namespace cw

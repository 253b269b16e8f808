#include "core/procedure/sheet_texts.h"

#include "core/procedure/review.h"
#include "tests/core/procedure/sheets.h"
#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

TEST(SheetTexts, OfAGoodSheetAreGood) {
  for (const auto path : shippedSheets())
    EXPECT_THAT(textFindings(sheetFrom(resource(path))), IsEmpty()) << path;
}

/// Puts `spoil` into every string of a sheet, one at a time.
template <class Each>
void forEachString(Json& value, Each each) {
  if (value.string() != nullptr) each(value);
  if (auto* items = value.array())
    for (Json& item : *items) forEachString(item, each);
  if (auto* members = value.object())
    for (auto& [key, member] : *members) forEachString(member, each);
}

/// Whatever text the reader takes with such a character in it, the review finds it: none is forgotten.
TEST(SheetTexts, AreFoundWhereverTheyStand) {
  for (const std::string& unseen : std::vector<std::string>{"\x1b[2J", "\n", "\u202e", "\u2066", "\u200f",
                                                            std::string("\0", 1), "\x7f"}) {
    Json json = *parseJson(smallSheetText());
    int taken = 0;
    forEachString(json, [&](Json& text) {
      const Json before = text;
      text = Json(*before.string() + unseen);
      if (const auto sheet = readSheet(canonical(json))) {
        ++taken;
        EXPECT_THAT(textFindings(*sheet), SizeIs(1)) << *before.string();
        EXPECT_FALSE(checkTexts(*sheet));
      }
      text = before;
    });
    EXPECT_GE(taken, 15);
  }
}

TEST(SheetTexts, BlockIssueWithTheirPlace) {
  Sheet sheet = smallSheet();
  sheet.steps[1].cautions = {"Seals dry out.", std::string("Hot\0oil.", 8)};
  const Findings findings = review(sheet, {shippedCatalogue(), std::nullopt, "jon", false});
  ASSERT_THAT(findings, SizeIs(1));
  EXPECT_EQ(findings[0].severity, Severity::Blocking);
  EXPECT_EQ(findings[0].code, "text-unprintable");
  EXPECT_EQ(findings[0].place, "steps[1].cautions[1]");
  EXPECT_THAT(sentence(findings[0]), HasSubstr("\\x00"));
}

TEST(SheetTexts, AreBounded) {
  const auto longest = [](std::size_t count, std::string Sheet::*field) {
    Sheet sheet = smallSheet();
    sheet.*field = std::string();
    for (std::size_t i = 0; i < count; ++i) sheet.*field += "ü";
    return textFindings(sheet);
  };
  EXPECT_THAT(longest(kLongestTitle, &Sheet::title), IsEmpty());
  EXPECT_THAT(longest(kLongestTitle + 1, &Sheet::title), SizeIs(1));
  EXPECT_THAT(longest(kLongestName, &Sheet::model), IsEmpty());
  EXPECT_THAT(longest(kLongestName + 1, &Sheet::model), SizeIs(1));
  Sheet sheet = smallSheet();
  sheet.steps[0].text = std::string(kLongestText + 1, 'a');
  const auto refused = checkTexts(sheet);
  EXPECT_THAT(refused,
              FailsWith(ErrorCode::InvalidInput, HasSubstr("steps[0].text: this text has 2001 characters")));
}

TEST(SheetTexts, LeaveAloneWhatOnlyTravelsAlong) {
  Sheet sheet = smallSheet();
  sheet.rest.emplace("shelf", "B\n7");
  EXPECT_THAT(textFindings(sheet), IsEmpty());
}

}  // namespace
}  // namespace cw

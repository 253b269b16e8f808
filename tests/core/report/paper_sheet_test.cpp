#include "core/report/paper_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/report_job.h"

namespace cw {
namespace {

using namespace test;
using testing::Contains;
using testing::HasSubstr;

TEST(BackupSheet, HasRoomForEveryStepAndPosition) {
  const Sheet sheet = sampleSheet();
  const Document document = backupSheet(sheet, std::string(64, 'd'), plain);
  ASSERT_EQ(document.sections.size(), sheet.steps.size() + 1);
  const std::vector<std::string> all = lines(document);
  for (const Step& step : sheet.steps) EXPECT_THAT(all, Contains(step.text));
  for (const auto& label : sheet.joints[0].order)
    EXPECT_THAT(all, Contains(testing::ContainsRegex(" " + label + " .*65")));
  EXPECT_THAT(all, Contains(HasSubstr("Run to the face by finger")));
  EXPECT_THAT(all, Contains(HasSubstr("Pass at 50")));
  EXPECT_THAT(all, Contains(HasSubstr("Second person (setting)")));
}

TEST(BackupSheet, SaysWarningsBeforeTheStepTheyGuard) {
  const std::vector<std::string> all = lines(backupSheet(sampleSheet(), "", plain));
  const auto at = [&](const std::string& words) {
    return std::find_if(all.begin(), all.end(),
                        [&](const auto& line) { return line.find(words) != line.npos; });
  };
  ASSERT_NE(at("WARNING: Parts move"), all.end());
  EXPECT_LT(at("WARNING: Parts move"), at("Fit the new gasket."));
}

TEST(BackupSheet, CarriesNoticeAndIdentityOnEveryPage) {
  const Document document = backupSheet(sampleSheet(), "d1", plain);
  EXPECT_EQ(document.notice, "Invented data, not for use.");
  EXPECT_THAT(document.footer, testing::ElementsAre(HasSubstr(sampleSheet().id.text()), HasSubstr("d1")));
}

TEST(DoNotRunTag, SaysWhatAParkedJobWaitsFor) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s2"), "");
  ASSERT_TRUE(bench.say(Paused{"gasket torn", true, "a new gasket", "cover open, drained"}));
  const auto tag = doNotRunTag(bench.job(), bench.people(), plain);
  ASSERT_TRUE(tag.has_value());
  const std::vector<std::string> all = lines(*tag);
  for (const char* words : {"DO NOT RUN", "P-1", "WO 1", "a new gasket", "cover open, drained", "Mira Sol"})
    EXPECT_THAT(all, Contains(HasSubstr(words)));
}

TEST(DoNotRunTag, IsNotForAJobThatIsMerelyPaused) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s2"), "");
  ASSERT_TRUE(bench.say(Paused{"telephone", false, "", ""}));
  EXPECT_EQ(doNotRunTag(bench.job(), bench.people(), plain).error().code, ErrorCode::OutOfTurn);
}

}  // namespace
}  // namespace cw

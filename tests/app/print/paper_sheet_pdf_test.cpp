#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>

#include "app/print/document_pdf.h"
#include "core/report/paper_sheet.h"
#include "tests/app/print/read_pdf.h"
#include "tests/support/matchers.h"
#include "tests/support/report_job.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;

QByteArray pdfOf(const Document& document) {
  return documentPdf([&](const Paper&) { return document; }, PageSize::Letter);
}

TEST(BackupSheetPdf, CarriesNoticeAndDigestOnEveryPage) {
  const ReadPdf pdf(pdfOf(backupSheet(sampleSheet(), std::string(64, 'd'), plain)));
  ASSERT_FALSE(pdf.pages().empty());
  for (const std::string& page : pdf.pages()) {
    EXPECT_THAT(page, HasSubstr("Invented data, not for use."));
    EXPECT_THAT(page, HasSubstr(std::string(64, 'd')));
  }
}

TEST(DoNotRunTagPdf, IsOnePage) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s2"), "");
  ASSERT_TRUE(bench.say(Paused{"gasket torn", true, "a new gasket", "cover open, drained"}));
  const ReadPdf pdf(pdfOf(*doNotRunTag(bench.job(), bench.people(), plain)));
  ASSERT_EQ(pdf.pages().size(), 1u);
  EXPECT_THAT(pdf.pages()[0], HasSubstr("DO NOT RUN"));
}

TEST(PaperSize, IsLetterOrA4) {
  EXPECT_THAT(pageSizeFrom("letter"), IsOkAnd(PageSize::Letter));
  EXPECT_THAT(pageSizeFrom("a4"), IsOkAnd(PageSize::A4));
  EXPECT_THAT(pageSizeFrom("a5"), FailsWith(ErrorCode::InvalidInput, HasSubstr("letter or a4")));
}

}  // namespace
}  // namespace cw

#include "app/print/record_pdf.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QFile>
#include <QFontMetricsF>
#include <QPdfWriter>

#include "core/record/pdf_seal.h"
#include "core/report/record_document.h"
#include "tests/app/print/read_pdf.h"
#include "tests/support/matchers.h"
#include "tests/support/report_job.h"

namespace cw {
namespace {

using namespace test;
using testing::AllOf;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;

/// A sealed job, its content and its pages.
struct Printed {
  std::string record;
  RecordContent content;
  QByteArray pdf;
};

Printed printed(Script job, PageSize size = PageSize::A4) {
  EXPECT_EQ(job.refusal(), "");
  Printed out;
  out.record = sealedBytes(job);
  out.content = contentOf(*readRecord(out.record), {}, plain);
  out.pdf = recordPdf(out.content, {out.record, {}}, size);
  return out;
}

Script eventful() {
  EventfulEntries entries;
  return eventfulJob(entries);
}

TEST(RecordPdf, CarriesHeadHashCountNoticeAndNumberOnEveryPage) {
  const Printed job = printed(eventful());
  const ReadPdf pdf(job.pdf);
  ASSERT_GT(pdf.pages().size(), 3u);
  int number = 0;
  for (const std::string& page : pdf.pages()) {
    EXPECT_THAT(page, HasSubstr(job.content.head));
    EXPECT_THAT(page, HasSubstr(std::to_string(job.content.entries.size()) + " entries"));
    EXPECT_THAT(page,
                HasSubstr("Page " + std::to_string(++number) + " of " + std::to_string(pdf.pages().size())));
    EXPECT_THAT(page, HasSubstr("Invented data, not for use."));
  }
}

TEST(RecordPdf, FirstPageIsTheSummaryWithExceptionsBeforeAnythingElse) {
  const ReadPdf pdf(printed(eventful()).pdf);
  const std::string& first = pdf.pages().front();
  const std::size_t outcome = first.find("Not complete:"), exceptions = first.find("Exceptions"),
                    joints = first.find("Joints"), people = first.find("People");
  ASSERT_NE(people, std::string::npos);
  EXPECT_LT(outcome, exceptions);
  EXPECT_LT(exceptions, joints);
  EXPECT_LT(joints, people);
  EXPECT_THAT(first, HasSubstr("it does not certify the machine"));
  EXPECT_THAT(pdf.pages()[1], HasSubstr("Parts and consumables"));
}

TEST(RecordPdf, NamesEveryEntryAndBothValuesOfACorrection) {
  const Printed job = printed(eventful());
  const std::string all = ReadPdf(job.pdf).all();
  const std::size_t section = all.find("All entries");
  ASSERT_NE(section, std::string::npos);
  const std::string entries = all.substr(section);
  for (const EntryLine& line : job.content.entries)
    EXPECT_THAT(entries, testing::ContainsRegex("\n +" + std::to_string(line.sequence) + "  "))
        << line.sequence;
  EXPECT_THAT(entries, AllOf(HasSubstr("64"), HasSubstr("67"), HasSubstr("Corrects entry")));
}

TEST(RecordPdf, SummaryOfFortyBoltsWithAllTheirTroubleFitsOnePage) {
  Script job = ringJob(40);
  RecordContent content = contentOf(*readRecord(sealedBytes(job)), {}, plain);
  ExceptionGroup many{ExceptionKind::OutOfTolerance, "Outside the tolerance or limits", {}};
  for (const TighteningLine& line : content.joints[0].lines)
    many.lines.push_back(
        {line.entry, "Step 5: Position " + line.position +
                         " tightened, 75 in·lbf read. "
                         "Outside the tolerance: to be done again, with a long remark beside it."});
  for (const ExceptionKind kind :
       {ExceptionKind::OutOfTolerance, ExceptionKind::Deviation, ExceptionKind::LateEntry})
    content.exceptions.push_back({kind, many.heading, many.lines});
  for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
    const ReadPdf pdf(recordPdf(content, {}, size));
    EXPECT_THAT(pdf.pages()[0], HasSubstr("it does not certify the machine"));
    EXPECT_THAT(pdf.pages()[1], HasSubstr("Parts and consumables"));
    for (const ExceptionLine& line : many.lines)
      EXPECT_THAT(pdf.pages()[0], HasSubstr(std::to_string(line.entry)));
  }
}

TEST(RecordPdf, AttachesTheSealedBytes) {
  Script job = ringJob(4);
  const std::string record = sealedBytes(job);
  const Id id = job.bench().job().id;
  const Addendum addendum{1, "wim", "Wim Post", job.bench().clock().now(), "The serial is 4711."};
  const std::string sealed = sealAddendum(addendum, record, record, id, steadyKey());
  const RecordContent content = contentOf(*readRecord(record), std::vector{addendum}, plain);
  const auto files = attachmentsIn(recordPdf(content, {record, {sealed}}, PageSize::A4));
  EXPECT_THAT(files, testing::UnorderedElementsAre(testing::Pair("torque-record.json", record),
                                                   testing::Pair("addendum-1.json", sealed)));
  EXPECT_TRUE(verifyRecord(files.back().second, publicOf(steadyKey())).good() ||
              verifyRecord(files.front().second, publicOf(steadyKey())).good());
}

TEST(RecordPdf, PrintsAnAddendumOnItsFirstPage) {
  Script job = ringJob(4);
  const Addendum addendum{1, "wim", "Wim Post", job.bench().clock().now(), "The serial is 4711."};
  const RecordContent content = contentOf(*readRecord(sealedBytes(job)), std::vector{addendum}, plain);
  EXPECT_THAT(ReadPdf(recordPdf(content, {}, PageSize::A4)).pages()[0], HasSubstr("The serial is 4711."));
}

TEST(RecordPdf, EmbedsEveryFont) {
  const PdfFonts fonts = fontsIn(printed(ringJob(4)).pdf);
  EXPECT_THAT(fonts.embedded, Not(IsEmpty()));
  EXPECT_THAT(fonts.named, IsEmpty());
}

TEST(RecordPdf, RunningTextIsProportional) {
  QByteArray unused;
  QPdfWriter writer(QStringLiteral("/dev/null"));
  const Paper paper(writer);
  const QFontMetricsF metrics(paper.text(20));
  EXPECT_GT(metrics.horizontalAdvance(QLatin1Char('m')), 1.5 * metrics.horizontalAdvance(QLatin1Char('i')));
}

TEST(RecordPdf, OfARunningJobSaysSoOnEveryPageAndAttachesNothing) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  const QByteArray bytes =
      recordPdf(contentOf(bench.job(), bench.floor(), "Test shop", plain), {}, PageSize::A4);
  EXPECT_THAT(ReadPdf(bytes).pages(), Each(HasSubstr("Not sealed")));
  EXPECT_THAT(attachmentsIn(bytes), IsEmpty());
}

TEST(RecordPdf, ARemarkLongerThanAPageGoesOnOverleaf) {
  Script job = ringJob(4);
  RecordContent content = contentOf(*readRecord(sealedBytes(job)), {}, plain);
  std::string remark;
  for (int word = 0; word < 4000; ++word) remark += "word" + std::to_string(word) + " ";
  content.entries[3].what = remark;
  const std::string all = ReadPdf(recordPdf(content, {}, PageSize::Letter)).all();
  for (const int word : {0, 1234, 2345, 3999}) EXPECT_THAT(all, HasSubstr("word" + std::to_string(word)));
  EXPECT_THAT(all, HasSubstr(content.entries.back().what));
}

TEST(RecordPdf, ThatIsUnsoundSaysSoAcrossEveryPageAndLosesNoneOfItsText) {
  const Printed job = printed(eventful());
  std::string altered = job.record;
  altered.replace(altered.find("telephone"), 9, "telegraph");
  const Verification found = verifyRecord(altered, publicOf(steadyKey()));
  ASSERT_TRUE(found.firstBadEntry.has_value());
  for (const PageSize size : {PageSize::A4, PageSize::Letter}) {
    const QByteArray bytes = recordPdf(contentOf(*readRecord(altered), {}, plain), {altered, {}}, size,
                                       unsoundStamp(found, plain));
    const ReadPdf pdf(bytes);
    ASSERT_GT(pdf.pages().size(), 3u);
    for (const std::string& page : pdf.pages())
      EXPECT_THAT(page,
                  HasSubstr("THIS RECORD DOES NOT VERIFY: entry " + std::to_string(*found.firstBadEntry) +
                            ": its hash does not follow from the entry before it"));
    EXPECT_EQ(pdf.pages().size(),
              ReadPdf(recordPdf(contentOf(*readRecord(altered), {}, plain), {}, size)).pages().size());
  }
  EXPECT_THAT(ReadPdf(job.pdf).all(), Not(HasSubstr("DOES NOT VERIFY")));
}

TEST(RecordPdf, ThatIsSignedReadsAsBefore) {
  const Printed job = printed(eventful());
  const std::string sealed = sealPdf(job.pdf.toStdString(), steadyKey());
  EXPECT_EQ(readPdfSeal(sealed, publicOf(steadyKey())).state, PdfState::AsGivenOut);
  const QByteArray bytes = QByteArray::fromStdString(sealed);
  EXPECT_EQ(ReadPdf(bytes).all(), ReadPdf(job.pdf).all());
  EXPECT_EQ(attachmentsIn(bytes), attachmentsIn(job.pdf));
}

}  // namespace
}  // namespace cw

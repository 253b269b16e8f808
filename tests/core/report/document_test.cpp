#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/report/record_document.h"
#include "tests/support/report_job.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;

const Section* sectionCalled(const Document& document, const std::string& heading) {
  for (const Section& section : document.sections)
    if (section.heading == heading) return &section;
  return nullptr;
}

const Table* tableIn(const Section& section) {
  for (const Block& block : section.blocks)
    if (const auto* table = std::get_if<Table>(&block)) return table;
  return nullptr;
}

TEST(RecordDocument, ListsEveryEntryInOrderWithWhatWasCorrectedStruck) {
  const RecordContent content = eventfulContent();
  const Document document = recordDocument(content, plain);
  const Table* table = tableIn(*sectionCalled(document, "All entries"));
  ASSERT_NE(table, nullptr);
  ASSERT_EQ(table->rows.size(), content.entries.size());
  for (std::size_t i = 0; i < table->rows.size(); ++i) {
    EXPECT_EQ(table->rows[i].front().text, std::to_string(i + 1));
    EXPECT_EQ(table->rows[i].back().ink == Ink::Struck, content.entries[i].correctedBy.has_value()) << i + 1;
  }
}

TEST(RecordDocument, PutsExceptionsBeforeJointsAndPeople) {
  const Document document = recordDocument(eventfulContent(), plain);
  ASSERT_GT(document.sections.size(), kSummarySections);
  EXPECT_EQ(document.sections[1].heading, "Exceptions");
  EXPECT_EQ(document.sections[2].heading, "Joints");
  EXPECT_EQ(document.sections[3].heading, "People");
  EXPECT_TRUE(document.sections[kSummarySections].newPage);
}

TEST(RecordDocument, AShortenedSummaryStillNamesEveryException) {
  const RecordContent content = eventfulContent();
  for (const std::size_t most : {0u, 1u, 2u}) {
    const Document document = recordDocument(content, plain, most);
    const Table* table = tableIn(document.sections[1]);
    ASSERT_NE(table, nullptr);
    std::string all;
    for (const auto& row : table->rows)
      for (const Cell& cell : row) all += cell.text + " | ";
    for (const ExceptionGroup& group : content.exceptions) {
      EXPECT_THAT(all, HasSubstr(group.heading));
      for (const ExceptionLine& line : group.lines) EXPECT_THAT(all, HasSubstr(std::to_string(line.entry)));
    }
  }
}

TEST(RecordDocument, EveryRowHasACellForEachColumn) {
  for (const Section& section : recordDocument(eventfulContent(), plain).sections) {
    const Table* table = tableIn(section);
    if (table == nullptr) continue;
    for (const auto& row : table->rows) EXPECT_EQ(row.size(), table->columns.size()) << section.heading;
  }
}

TEST(RecordDocument, SaysWhatItIsNot) {
  const std::vector<std::string> all = lines(recordDocument(eventfulContent(), plain));
  EXPECT_THAT(all, testing::Contains(HasSubstr("it does not certify the machine")));
  EXPECT_THAT(all, testing::Contains(HasSubstr("It does not prove who typed a PIN")));
  EXPECT_THAT(all, testing::Contains("Invented data, not for use."));
}

TEST(RecordDocument, OfARunningJobSaysThatItIsNotSealed) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  const Document document = recordDocument(contentOf(bench.job(), bench.floor(), "Test shop", plain), plain);
  EXPECT_THAT(document.footer, testing::Each(HasSubstr("Not sealed")));
  EXPECT_NE(sectionCalled(document, "Not sealed"), nullptr);
}

TEST(Lines, ColumnsLineUpAndNothingIsCut) {
  Table table{{{"A", 1, true}, {"Long heading", 1}},
              {{{"7"}, {"ä"}}, {{"1234"}, {"b", Ink::Struck, "[see 2]"}}}};
  Document document{"T", "S", "", {"F"}, {{"H", {table}, false}}};
  EXPECT_THAT(lines(document), testing::ElementsAre("T", "S", "", "H", "     A  Long heading", "     7  ä",
                                                    "  1234  ~~b~~ [see 2]", "", "F"));
}

}  // namespace
}  // namespace cw

#include "core/base/csv.h"

#include <gmock/gmock.h>

#include "tests/support/matchers.h"

namespace cw {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

TEST(Csv, ReadsWhatRfc4180Allows) {
  const auto table = parseCsv("a,b\r\n1,\"x, \"\"y\"\"\nz\"\r\n,\n");
  ASSERT_THAT(table, IsOk());
  EXPECT_THAT(table->header, ElementsAre("a", "b"));
  EXPECT_THAT(table->rows.at(0).cells, ElementsAre("1", "x, \"y\"\nz"));
  EXPECT_THAT(table->rows.at(1).cells, ElementsAre("", ""));
  EXPECT_EQ(table->rows.at(1).line, 4u);
}

TEST(Csv, TakesCommentsOnlyAboveTheHeader) {
  const auto table = parseCsv("# source: x\n\n# more\nname,n\n#10-32,1\n");
  ASSERT_THAT(table, IsOk());
  EXPECT_EQ(table->rows.at(0).cells.at(0), "#10-32");
  EXPECT_EQ(table->rows.at(0).line, 5u);
}

TEST(Csv, TakesTheByteOrderMarkThatSpreadsheetsWrite) {
  EXPECT_THAT(parseCsv("\xEF\xBB\xBF"
                       "a\n1\n")
                  ->header,
              ElementsAre("a"));
}

TEST(Csv, TakesALastLineWithoutAnEnd) {
  EXPECT_THAT(parseCsv("a,b\n1,2")->rows.at(0).cells, ElementsAre("1", "2"));
}

TEST(Csv, RefusesEachBrokenTableInOneSentence) {
  using namespace std::string_literals;
  for (const auto& [text, words] : std::vector<std::pair<std::string, std::string>>{
           {"", "the table is empty; start with a line of column names."},
           {"# only a comment\n", "the table is empty"},
           {"a,b\n1,\"2\n3\n", "line 2: a quote is opened and never closed"},
           {"a,b\n1,2\"3\n", "line 2: a quote stands inside an unquoted cell"},
           {"a,b\n1,\"2\"3\n", "line 2: text follows a closed quote"},
           {"a,b\n1,2\n1\n", "line 3: the row has 1 cells; write 2, as in the header."},
           {"a,b\n1,2,3\n", "line 2: the row has 3 cells"},
           {"a,b\n\n1,2\n", "line 2: the row has 1 cells"},
           {"a,b\n1,2\r3,4\n", "line 2: a carriage return stands alone"},
           {"a,b\n1,\xff\n", "line 2: the text is not UTF-8"},
           {"a,b\n1,\xc0\xaf\n", "line 2: the text is not UTF-8"},
           {"a,b\n1,\0\n"s, "line 2: the text holds a NUL byte"},
           {"a,a\n", "column “a” is there twice"},
           {"a,\n", "line 1: a column has no name"},
           {"a;b\n1;2\n", "the columns are separated by semicolons"}})
    EXPECT_THAT(parseCsv(text), FailsWith(ErrorCode::InvalidInput, HasSubstr(words)));
}

TEST(Csv, ReadsBackWhatItWrites) {
  const std::vector<std::string> cells = {"plain", "", "a,b", "say \"so\"", "two\nlines", "cr\rlf\r\n", "#x"};
  std::string header;
  for (std::size_t i = 0; i < cells.size(); ++i) header += (i == 0 ? "c" : ",c") + std::to_string(i);
  const auto table = parseCsv(header + "\n" + csvLine(cells));
  ASSERT_THAT(table, IsOk());
  EXPECT_EQ(table->rows.at(0).cells, cells);
}

TEST(CsvReading, ListsEveryBrokenRowAndKeepsTheOthers) {
  const auto reading = readCsv("a,b\n1,2\n3\n4,5\"6\n7,8\n9,\xff\n\"x\ny\",0\n1,\"open\n2,3\n");
  ASSERT_THAT(reading, IsOk());
  std::vector<std::size_t> lines;
  for (const CsvRow& row : reading->table.rows) lines.push_back(row.line);
  EXPECT_THAT(lines, ElementsAre(2u, 5u, 7u));
  std::vector<std::string> places;
  for (const Error& error : reading->refused) places.push_back(error.place);
  EXPECT_THAT(places, ElementsAre("line 3", "line 4", "line 6", "line 9"));
}

TEST(CsvReading, NeedsAHeader) {
  EXPECT_THAT(readCsv("a,\xff\n1,2\n"),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("line 1: the text is not")));
}

}  // namespace
}  // namespace cw

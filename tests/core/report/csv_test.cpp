#include "core/report/csv.h"

#include <gtest/gtest.h>

#include "core/base/csv.h"
#include "tests/support/report_job.h"

namespace cw {
namespace {

using namespace test;

/// Cells of a row by their column's name.
std::map<std::string, std::string> named(const Csv& table, const CsvRow& row) {
  std::map<std::string, std::string> out;
  for (std::size_t i = 0; i < row.cells.size(); ++i) out[table.header[i]] = row.cells[i];
  return out;
}

TEST(CsvOfTightenings, SaysTheSameAsTheContent) {
  const RecordContent content = eventfulContent();
  const auto table = parseCsv(csvOfTightenings(content));
  ASSERT_TRUE(table.has_value());
  const auto& lines = content.joints.at(0).lines;
  ASSERT_EQ(table->rows.size(), lines.size());
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const auto row = named(*table, table->rows[i]);
    EXPECT_EQ(row.at("position"), lines[i].position);
    EXPECT_EQ(row.at("target") + " " + row.at("unit"), "65 lbf.in");
    EXPECT_EQ(row.at("low"), "60");
    EXPECT_EQ(row.at("high"), "70");
    EXPECT_EQ(row.at("reading"), lines[i].reading ? lines[i].reading->digits : "");
    EXPECT_EQ(row.at("within"), lines[i].within ? "yes" : "no");
    EXPECT_EQ(row.at("entry"), std::to_string(lines[i].entry));
    EXPECT_EQ(row.at("corrected_by"), lines[i].correctedBy ? std::to_string(*lines[i].correctedBy) : "");
    EXPECT_EQ(row.at("hash"), lines[i].hash);
    EXPECT_EQ(*parseRfc3339(row.at("time")), lines[i].time);
  }
}

TEST(CsvOfTightenings, EndsEveryLineAsRfc4180Says) {
  const std::string text = csvOfTightenings(eventfulContent());
  ASSERT_TRUE(text.ends_with("\r\n"));
  for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 1))
    EXPECT_EQ(text[at - 1], '\r');
}

TEST(CsvOfTightenings, IsNoFormulaInASpreadsheet) {
  for (const char* nasty : {"=1+1", "+1", "-1", "@sum", "\tx"}) {
    RecordContent content = eventfulContent();
    content.workOrder = nasty;
    const auto table = parseCsv(csvOfTightenings(content));
    ASSERT_TRUE(table.has_value());
    EXPECT_EQ(named(*table, table->rows[0]).at("work_order"), std::string("'") + nasty);
  }
}

TEST(CsvOfTightenings, OfAJobWithoutTighteningIsItsHeader) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s2"), "");
  const auto table = parseCsv(csvOfTightenings(contentOf(bench.job(), bench.floor(), "", plain)));
  ASSERT_TRUE(table.has_value());
  EXPECT_EQ(table->rows.size(), 0u);
  EXPECT_EQ(table->header.size(), 27u);
}

}  // namespace
}  // namespace cw

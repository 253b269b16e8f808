// The library on the command line: found, taken in, written out, and used by name with --shop.
#include <gmock/gmock.h>

#include <fstream>

#include "core/base/csv.h"
#include "core/fastener/tables.h"
#include "tests/app/command_line/call.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

using testing::HasSubstr;

class LibraryCommands : public testing::Test {
 protected:
  void SetUp() override {
    write("pin", "4680\n");
    const Call init = call({"--shop", file("shop"), "shop", "init", "--name", "Test shop", "--register",
                            std::string(CW_RESOURCES) + "/demo/register.json"});
    ASSERT_EQ(init.exit, 0) << init.err;
  }
  std::string file(const std::string& name) const { return m_folder.file(name); }
  std::string write(const std::string& name, const std::string& text) const {
    std::ofstream(file(name), std::ios::binary) << text;
    return file(name);
  }
  Call shop(std::vector<std::string> words) const {
    words.insert(words.begin(), {"--shop", file("shop"), "--json"});
    return call(std::move(words));
  }
  Call take(const std::string& csv) const {
    return shop({"library", "import", write("table.csv", csv), "--by", "bea", "--pin-file", file("pin")});
  }

  const std::string m_threads = csvLine(columnsOf(RowKind::Thread));
  const std::string m_row = "M12x0.75,12,0.75,,,mm,seen,drawing 7,Bea,own\n";
  TemporaryFolder m_folder;
};

TEST_F(LibraryCommands, FindsShippedRowsWithoutAShop) {
  EXPECT_THAT(call({"library", "find", "3/8-16"}).out, HasSubstr("3/8-16 UNC  (threads)"));
  EXPECT_THAT(call({"--json", "library", "find", "moly"}).out, HasSubstr("\"nut_factor_typical\":\"0.13\""));
  EXPECT_EQ(call({"library", "find", "\"NEAR("}).exit, 1);
  EXPECT_THAT(call({"library", "list", "--kind", "tool_classes"}).out, HasSubstr("type II class A"));
  EXPECT_THAT(call({"library", "list", "--kind", "screws"}).err, HasSubstr("write threads, grades"));
}

TEST_F(LibraryCommands, TakesATableInAndKnowsItsNames) {
  EXPECT_EQ(shop({"thread", "M12x0.75"}).exit, 2);
  const Call taken = take(m_threads + m_row);
  ASSERT_EQ(taken.exit, 0) << taken.err << taken.out;
  EXPECT_EQ(taken.number("imported"), 1);
  EXPECT_EQ(shop({"thread", "M12x0.75"}).number("pitch_mm"), 0.75);
  EXPECT_THAT(
      shop({"clamp", "--thread", "M12x0.75", "--grade", "8.8", "--torque", "60 N.m", "--condition", "dry"})
          .out,
      HasSubstr("clamp_load_N"));
  EXPECT_EQ(call({"thread", "M12x0.75"}).exit, 2) << "without --shop it is not known";
  EXPECT_THAT(shop({"library", "find", "drawing", "M12"}).exit, 2) << "words are one argument";
  EXPECT_THAT(shop({"library", "find", "M12x0.75"}).out, HasSubstr("\"origin\":\"shop\""));
  EXPECT_THAT(shop({"library", "list", "--own"}).out, HasSubstr("drawing 7"));
}

TEST_F(LibraryCommands, SaysWhatAnImportWouldDoAndDoesNothing) {
  const std::string good = write("good.csv", m_threads + m_row);
  const Call rehearsed = shop({"library", "import", good, "--dry-run"});
  EXPECT_EQ(rehearsed.exit, 0);
  EXPECT_EQ(rehearsed.number("good"), 1);
  EXPECT_EQ(rehearsed.number("imported"), 0);
  EXPECT_EQ(shop({"thread", "M12x0.75"}).exit, 2);
  EXPECT_EQ(call({"library", "import", good, "--dry-run"}).exit, 0) << "against the shipped library alone";
}

TEST_F(LibraryCommands, ListsEveryBadRowWithLineColumnValueAndCure) {
  const Call refused = take(m_threads + m_row + "M13,13,-1.5,,,mm,seen,drawing,Bea,\n" +
                            "M14x1.5,14,1.5,20,,mm,seen,drawing,Bea,\n" + "M15,15\n" + m_row +
                            "M16,16,2,,,mm,seen,=A1,Bea,\n");
  EXPECT_EQ(refused.exit, 1);
  EXPECT_THAT(
      refused.out,
      HasSubstr("{\"column\":\"pitch\",\"expected\":\"write a value above zero\",\"line\":3,\"place\":"
                "\"line 3, pitch\",\"problem\":\"“-1.5” is not above zero\",\"value\":\"-1.5\"}"));
  for (const char* line : {"\"line\":4", "\"line\":5", "\"line\":6", "\"line\":7"})
    EXPECT_THAT(refused.out, HasSubstr(line));
  EXPECT_EQ(refused.number("imported"), 0);
  EXPECT_EQ(shop({"thread", "M12x0.75"}).exit, 2) << "no row of a table with a bad one is taken in";
}

TEST_F(LibraryCommands, RefusesFilesThatAreNoTable) {
  EXPECT_EQ(take("").exit, 1);
  EXPECT_THAT(take("designation,pitch\nM9,1\n").out, HasSubstr("the columns are those of no table"));
  EXPECT_THAT(take("\xff\xfe").out, HasSubstr("not UTF-8"));
  EXPECT_EQ(shop({"library", "import", file("nowhere.csv")}).exit, 2);
  EXPECT_THAT(shop({"library", "import", write("t.csv", m_threads + m_row)}).err, HasSubstr("add --by"));
  EXPECT_EQ(call({"library", "import", file("t.csv")}).exit, 2) << "needs a shop";
}

TEST_F(LibraryCommands, WritesWhatAnotherShopTakesIn) {
  ASSERT_EQ(take(m_threads + m_row).exit, 0);
  ASSERT_EQ(shop({"library", "export", "--kind", "threads", "--own", "--out", file("own.csv")}).exit, 0);
  std::ifstream in(file("own.csv"));
  EXPECT_EQ(std::string(std::istreambuf_iterator<char>(in), {}), m_threads + m_row);
  const Call all = shop({"library", "export", "--kind", "threads"});
  EXPECT_THAT(all.word("csv"), testing::AllOf(HasSubstr("M8,8,1.25"), HasSubstr(m_row)));
}

// A hundred thousand rows are one transaction like one row.
TEST_F(LibraryCommands, TakesThousandsOfRows) {
  std::string csv = m_threads;
  for (int i = 0; i < 4000; ++i) {
    const std::string diameter = std::to_string(3 + i % 610), pitch = "0." + std::to_string(10001 + i / 610);
    csv += "M" + diameter + "x" + pitch + "," + diameter + "," + pitch + ",,,mm,seen,drawing,Bea,\n";
  }
  EXPECT_EQ(take(csv).number("imported"), 4000);
  EXPECT_EQ(shop({"thread", "M612x0.10001"}).number("diameter_mm"), 612);
  csv += "M3x0.10001,3,0.10001,,,mm,seen,drawing,Bea,\n";
  EXPECT_EQ(shop({"library", "import", write("again.csv", csv), "--dry-run"}).exit, 1);
}

}  // namespace
}  // namespace cw

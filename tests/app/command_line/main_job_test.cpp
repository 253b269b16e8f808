// The main job from the first command to the last, and what each says of bad input.
#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "tests/app/command_line/call.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

std::string textOf(const std::string& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream out;
  out << in.rdbuf();
  return out.str();
}

/// A shop in a folder of its own, driven by commands alone.
class MainJob : public testing::Test {
 protected:
  void SetUp() override {
    write("pin-ines", "1357\n");
    write("pin-bea", "4680\n");
    write("pin-mira", "2468\n");
    const Call init =
        shop({"shop", "init", "--name", "Test shop", "--register", resources("demo/register.json")});
    ASSERT_EQ(init.exit, 0) << init.err;
    ASSERT_EQ(shop({"key", "export", "--out", file("key.json")}).exit, 0);
  }

  std::string file(const std::string& name) const { return m_folder.file(name); }
  static std::string resources(const std::string& name) { return std::string(CW_RESOURCES) + "/" + name; }
  void write(const std::string& name, const std::string& text) const { std::ofstream(file(name)) << text; }
  std::string pinOf(const std::string& sign) const { return file("pin-" + sign); }

  Call shop(std::vector<std::string> words) const {
    words.insert(words.begin(), {"--shop", file("shop.cw"), "--json"});
    return call(std::move(words));
  }
  /// Without --json, as `job enter` prints its receipts.
  Call plainShop(std::vector<std::string> words) const {
    words.insert(words.begin(), {"--shop", file("shop.cw")});
    return call(std::move(words));
  }

  std::string issued(const std::string& sheetFile) const {
    const Call imported =
        shop({"sheet", "import", sheetFile, "--submit", "--by", "ines", "--pin-file", pinOf("ines")});
    EXPECT_EQ(imported.exit, 0) << imported.err;
    const Call issue = shop({"sheet", "issue", imported.word("sheet"), "--revision",
                             imported.word("revision"), "--by", "bea", "--pin-file", pinOf("bea")});
    EXPECT_EQ(issue.exit, 0) << issue.err << issue.out;
    return imported.word("sheet");
  }
  std::string started(const std::string& sheet) const {
    const Call start = shop({"job", "start", "--sheet", sheet, "--work-order", "WO 9", "--machine", "F-7",
                             "--by", "mira", "--pin-file", pinOf("mira")});
    EXPECT_EQ(start.exit, 0) << start.err;
    return start.word("job");
  }
  void walks(const std::string& sheetFile, const std::string& lines) {
    const std::string job = started(issued(sheetFile));
    const Call enter = plainShop({"job", "enter", lines, "--job", job});
    ASSERT_EQ(enter.exit, 0) << enter.err;
    EXPECT_THAT(enter.out, StartsWith("signed 2 "));
    ASSERT_EQ(shop({"job", "seal", "--job", job, "--by", "mira", "--pin-file", pinOf("mira")}).exit, 0);
    ASSERT_EQ(shop({"record", "export", "--job", job, "--out", file("record.json")}).exit, 0);
    ASSERT_EQ(shop({"record", "export", "--job", job, "--format", "pdf", "--out", file("record.pdf")}).exit,
              0);
    EXPECT_THAT(textOf(file("record.pdf")), StartsWith("%PDF-"));
    EXPECT_EQ(shop({"record", "export", "--job", job, "--format", "pdf"}).exit, 2);
    const Call verified =
        call({"--json", "record", "verify", file("record.json"), "--key", file("key.json")});
    EXPECT_EQ(verified.exit, 0) << verified.out;
    EXPECT_GT(verified.number("count"), 20);
  }

 private:
  TemporaryFolder m_folder;
};

TEST_F(MainJob, TheFlangeGoesFromSheetToVerifiedRecord) {
  walks(resources("examples/flange_nps4_class150.json"), resources("examples/flange_nps4_class150.jsonl"));
  std::string record = textOf(file("record.json"));
  record[record.find("\"position\":\"3\"") + 12] = '7';
  write("record.json", record);
  const Call verified = call({"--json", "record", "verify", file("record.json"), "--key", file("key.json")});
  EXPECT_EQ(verified.exit, 1);
  EXPECT_GT(verified.number("first_bad_entry"), 1);
}

TEST_F(MainJob, TheSameLinesTwiceDoubleNothing) {
  const std::string job = started(issued(resources("examples/flange_nps4_class150.json")));
  const std::string lines = resources("examples/flange_nps4_class150.jsonl");
  const Call first = plainShop({"job", "enter", lines, "--job", job});
  const Call again = plainShop({"job", "enter", lines, "--job", job});
  ASSERT_EQ(first.exit, 0) << first.err;
  ASSERT_EQ(again.exit, 0) << again.err;
  std::string expected = first.out;
  for (std::size_t at = 0; (at = expected.find("signed", at)) != std::string::npos;)
    expected.replace(at, 6, "already");
  EXPECT_EQ(again.out, expected);
}

TEST_F(MainJob, ALineOutOfTurnStopsThereAndNothingElseIsLost) {
  const std::string job = started(issued(resources("examples/flange_nps4_class150.json")));
  const auto refused = [&](const std::string& line) {
    write("one.jsonl", "{\"kind\":\"signed-in\",\"by\":\"mira\",\"pin\":\"2468\"}\n" + line + "\n");
    const Call enter = plainShop({"job", "enter", file("one.jsonl"), "--job", job});
    EXPECT_EQ(enter.exit, 2) << line;
    return enter.err;
  };
  EXPECT_THAT(refused(R"({"kind":"done","by":"mira"})"),
              HasSubstr("line 2.step s1: “done” is not what comes next here; read its warnings"));
  EXPECT_THAT(refused(R"({"kind":"tightened","by":"mira","step":"s7","position":"1","known":"clicked"})"),
              HasSubstr("step s7 is not yet its turn"));
  EXPECT_THAT(refused(R"({"kind":"signed-in","by":"tomas","pin":"1111"})"), HasSubstr("line 2"));
  EXPECT_THAT(refused(R"({"kind":"painted","by":"mira"})"), HasSubstr("“painted” is no kind of entry"));
  EXPECT_THAT(refused("not json"), HasSubstr("line 2"));
  EXPECT_THAT(refused(R"({"kind":"done"})"), HasSubstr("nobody signs this line"));
  EXPECT_THAT(refused(R"({"kind":"warnings-read","by":"mira","by":"bea"})"), HasSubstr("stands twice"));
  EXPECT_EQ(shop({"inspect"}).exit, 0);
}

TEST_F(MainJob, SheetsThatAreNoneAreRefusedInASentence) {
  const auto refused = [&](const std::string& text, int exit = 2) {
    write("bad.json", text);
    const Call check = call({"sheet", "check", file("bad.json")});
    EXPECT_EQ(check.exit, exit) << text.substr(0, 60);
    EXPECT_EQ(std::count(check.err.begin(), check.err.end(), '\n'), 1) << check.err;
    return check.err;
  };
  std::string good = textOf(resources("examples/flange_nps4_class150.json"));
  const auto with = [&](const std::string& from, const std::string& to) {
    std::string out = good;
    out.replace(out.find(from), from.size(), to);
    return out;
  };
  EXPECT_THAT(refused("PK\x03\x04"), HasSubstr("not valid JSON"));
  EXPECT_THAT(refused(std::string(100'000, '[')), HasSubstr("deeper"));
  EXPECT_THAT(refused("{\"format\":\"clampwright.sheet\",\"version\":1,\"title\":\"a\",\"title\":\"b\"}"),
              HasSubstr("twice"));
  EXPECT_THAT(refused("\"\xff\""), HasSubstr("UTF-8"));
  EXPECT_THAT(refused(with("lbf.ft", "lbf.yd")), HasSubstr("lbf.yd"));
  EXPECT_THAT(refused(with("\"title\"", "\"titel\"")), HasSubstr("title"));
  EXPECT_THAT(refused(with("\"version\": 1", "\"version\": 9"), 3), HasSubstr("newer"));
}

TEST_F(MainJob, AShopFileThatIsNoneIsRefused) {
  write("text.cw", "this is a letter");
  EXPECT_EQ(call({"--shop", file("text.cw"), "job", "list"}).exit, 3);
  EXPECT_EQ(call({"--shop", file("absent.cw"), "job", "list"}).exit, 3);
  EXPECT_EQ(call({"--shop", file(""), "job", "list"}).exit, 3);
  std::filesystem::resize_file(file("shop.cw"), std::filesystem::file_size(file("shop.cw")) / 2);
  const Call cut = call({"--shop", file("shop.cw"), "job", "list"});
  EXPECT_EQ(cut.exit, 3);
  EXPECT_EQ(std::count(cut.err.begin(), cut.err.end(), '\n'), 1) << cut.err;
}

TEST(Demo, PlaysAndVerifies) {
  const TemporaryFolder folder;
  const Call demo = call({"demo", "--out", folder.file("out")});
  ASSERT_EQ(demo.exit, 0) << demo.err;
  EXPECT_THAT(demo.out, StartsWith("Invented data, not for use."));
  EXPECT_EQ(
      call({"record", "verify", folder.file("out/record.json"), "--key", folder.file("out/key.json")}).exit,
      0);
  EXPECT_THAT(textOf(folder.file("out/joint_cover.png")), StartsWith("\x89PNG"));
  EXPECT_EQ(call({"--shop", folder.file("out/demo.shop"), "backup", folder.file("copy")}).exit, 0);
  EXPECT_EQ(call({"--shop", folder.file("copy"), "inspect"}).exit, 0);
  const Call again = call({"demo", "--out", folder.file("out")});
  EXPECT_NE(again.exit, 0);
}

TEST(CommandLine, SaysOneSentenceForEachSlip) {
  for (const auto& [words, said] : std::vector<std::pair<std::vector<std::string>, std::string>>{
           {{"convert", "60 lb"}, "write 60 in·lbf or 60 ft·lbf"},
           {{"convert", "1,200 in.lbf"}, "1,200"},
           {{"convert", "-5 N.m"}, "zero or more"},
           {{"convert", "NaN"}, "NaN"},
           {{"convert", ""}, "empty"},
           {{"thread", "M8x9"}, "M8x1"},
           {{"thread"}, "required"},
           {{"bogus"}, "bogus"},
           {{"job", "list"}, "--shop"}}) {
    const Call made = call(words);
    EXPECT_EQ(made.exit, 2) << words.back();
    EXPECT_EQ(made.out, "") << words.back();
    EXPECT_THAT(made.err, HasSubstr(said));
    EXPECT_EQ(std::count(made.err.begin(), made.err.end(), '\n'), 1) << made.err;
  }
}

}  // namespace
}  // namespace cw

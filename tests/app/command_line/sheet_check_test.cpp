// What the commands say of sheets: fields that are not read, what the bench does not do, whose machine it is.
#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>
#include <sstream>

#include "core/base/printable.h"
#include "tests/app/command_line/call.h"
#include "tests/core/procedure/sheets.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::Not;

constexpr std::string_view kAngle =
    R"("reading": "range", "method": "torque-and-angle", "angle": {"value": "90", "unit": "deg"},)";

class SheetByCommand : public testing::Test {
 protected:
  void SetUp() override {
    for (const auto& [name, pin] :
         {std::pair{"ines", "1357"}, std::pair{"bea", "4680"}, std::pair{"mira", "2468"}})
      write(name, std::string(pin) + "\n");
    ASSERT_EQ(shop({"shop", "init", "--name", "Test shop", "--register",
                    std::string(CW_RESOURCES) + "/demo/register.json"})
                  .exit,
              0);
  }

  std::string file(const std::string& name) const { return m_folder.file(name); }
  void write(const std::string& name, const std::string& text) const { std::ofstream(file(name)) << text; }
  Call shop(std::vector<std::string> words, bool json = true) const {
    words.insert(words.begin(), {"--shop", file("shop.cw")});
    if (json) words.insert(words.begin(), "--json");
    return call(std::move(words));
  }
  Call check(const std::string& text) const {
    write("sheet.json", text);
    return call({"sheet", "check", file("sheet.json")});
  }
  Call imported(const std::string& text, bool json = true) const {
    write("sheet.json", text);
    return shop(
        {"sheet", "import", file("sheet.json"), "--submit", "--by", "ines", "--pin-file", file("ines")},
        json);
  }
  Call issue(const Call& sheet) const {
    return shop({"sheet", "issue", sheet.word("sheet"), "--revision", sheet.word("revision"), "--by", "bea",
                 "--pin-file", file("bea")});
  }
  Call start(const Call& sheet, const std::string& machine) const {
    return shop({"job", "start", "--sheet", sheet.word("sheet"), "--work-order", "WO 9", "--machine", machine,
                 "--by", "mira", "--pin-file", file("mira")});
  }

  TemporaryFolder m_folder;
};

std::string misspelt() {
  return replaced(smallSheetText(), R"("id": "s3",)", R"("id": "s3", "caution": ["Hot."],)");
}

TEST_F(SheetByCommand, NamesAFieldThatIsNotReadAsPeopleCount) {
  const Call made = check(misspelt());
  EXPECT_EQ(made.exit, 1);
  EXPECT_THAT(made.out,
              HasSubstr("blocking: step 3, caution: “caution” is not known here; did you mean “cautions”?"));
  const Call remark = check(replaced(smallSheetText(), R"("id": "oil",)", R"("id": "oil", "shelf": "B 7",)"));
  EXPECT_EQ(remark.exit, 0) << remark.out;
  EXPECT_THAT(remark.out, HasSubstr("note: part 1, shelf: “shelf” is not known here"));
}

TEST_F(SheetByCommand, TakesSuchADraftButSaysSoAndDoesNotIssueIt) {
  EXPECT_THAT(imported(misspelt(), false).out,
              HasSubstr("blocking: step 3, caution: “caution” is not known here"));
  const Call again = imported(misspelt());
  EXPECT_NE(again.exit, 0) << "submitted already";
  const Call issued = shop({"sheet", "issue", "019ab0c4-5e00-7a10-8f3e-6d2b41c07e99", "--revision", "A",
                            "--by", "bea", "--pin-file", file("bea")});
  EXPECT_EQ(issued.exit, 1);
  EXPECT_THAT(issued.out, HasSubstr("field-misspelt"));
}

TEST_F(SheetByCommand, RefusesTextsThatCannotBePrinted) {
  for (const char* unseen : {"\\u001b[2J", "\\n", "\\u0000", "\u202e", "\u2066"}) {
    const Call made =
        imported(replaced(smallSheetText(), "Small cover", "Small " + std::string(unseen) + "cover"));
    EXPECT_EQ(made.exit, 2) << unseen;
    EXPECT_THAT(made.err, HasSubstr("title: there is a character in it that cannot be seen"));
  }
  const Call caution =
      imported(replaced(smallSheetText(), R"("id": "s3",)", R"("id": "s3", "cautions": ["Hot\u202e."],)"));
  EXPECT_THAT(caution.err, HasSubstr("step 3, caution 1: there is a character"));
  EXPECT_EQ(shop({"sheet", "list"}, false).out, "");
}

TEST_F(SheetByCommand, SteersNoScreen) {
  const Call made =
      check(replaced(smallSheetText(), R"("id": "oil",)", R"("id": "oil", "\u001b[2J\u202e": 1,)"));
  EXPECT_THAT(made.out, Not(HasSubstr("\x1b")));
  EXPECT_THAT(made.out, Not(HasSubstr("\u202e")));
  const Call json = shop({"job", "start", "--sheet", "\u202e\x1b[2J", "--work-order", "W", "--machine",
                          "P-12", "--by", "mira", "--pin-file", file("mira")});
  std::string line = json.err;
  ASSERT_FALSE(line.empty());
  line.pop_back();
  EXPECT_EQ(firstUnprintable(line), "") << json.err;
}

TEST_F(SheetByCommand, RefusesATurnByAnAngleEverywhere) {
  const std::string text = replaced(smallSheetText(), R"("reading": "range",)", kAngle);
  EXPECT_THAT(check(text).out, HasSubstr("blocking: specification 1, method: the bench does not do"));
  const Call draft = imported(text);
  ASSERT_EQ(draft.exit, 0) << draft.err;
  EXPECT_EQ(issue(draft).exit, 1);
  const Call print = call({"sheet", "print", file("sheet.json"), "--out", file("sheet.pdf")});
  EXPECT_EQ(print.exit, 2);
  EXPECT_FALSE(std::filesystem::exists(file("sheet.pdf")));
}

TEST_F(SheetByCommand, SaysWhoseMachineASheetIsFor) {
  const std::string text =
      replaced(replaced(smallSheetText(), R"("serials": "all")", R"("serials": "200 to 480")"), "Test rig",
               "Portable pump set PS-40");
  const Call sheet = imported(text);
  ASSERT_EQ(issue(sheet).exit, 0);
  const Call outside = start(sheet, "P-12");
  EXPECT_EQ(outside.exit, 2);
  EXPECT_THAT(outside.err,
              HasSubstr("This sheet is for serial numbers 200 to 480; the machine's is PS40-0117."));
  EXPECT_THAT(outside.err, HasSubstr("have a lead allow it with a reason"));
  const Call nobody = start(sheet, "X-99");
  EXPECT_THAT(nobody.err, HasSubstr("the machine's model is not known"));
  EXPECT_THAT(nobody.err, HasSubstr("the machine's is not known"));
}

}  // namespace
}  // namespace cw

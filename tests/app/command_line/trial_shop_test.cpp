// A shop file of the trial version, in the hands of today's program.
#include <gmock/gmock.h>

#include <filesystem>
#include <fstream>

#include "tests/app/command_line/call.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

using testing::AllOf;
using testing::HasSubstr;

constexpr const char* kSealed = "01900000-0000-7000-8000-00000000000b";
constexpr const char* kOpen = "01900000-0000-7000-8000-00000000000c";

class TrialShop : public testing::Test {
 protected:
  TrialShop() {
    std::ifstream in(CW_TEST_DATA "/schema/0003_trial.sql");
    test::sqlite(file("shop.cw"), std::string(std::istreambuf_iterator<char>(in), {}));
    write("pin", "2468\n");
  }
  std::string file(const std::string& name) const { return m_folder.file(name); }
  void write(const std::string& name, const std::string& text) const { std::ofstream(file(name)) << text; }
  Call shop(std::vector<std::string> words) const {
    words.insert(words.begin(), {"--shop", file("shop.cw")});
    return call(std::move(words));
  }

  TemporaryFolder m_folder;
};

TEST_F(TrialShop, IsWholeAndListed) {
  const Call inspected = shop({"inspect"});
  EXPECT_EQ(inspected.exit, 0) << inspected.out << inspected.err;
  EXPECT_THAT(inspected.out, HasSubstr("whole"));
  EXPECT_THAT(shop({"job", "list"}).out,
              AllOf(HasSubstr(kSealed), HasSubstr(kOpen), HasSubstr("sealed"), HasSubstr("open")));
  EXPECT_THAT(shop({"record", "list"}).out, HasSubstr(kSealed));
  EXPECT_EQ(shop({"backup", file("copy")}).exit, 0);
}

TEST_F(TrialShop, ItsRecordGoesOutInEveryFormAndSaysWhatItIs) {
  for (const char* format : {"json", "csv", "text", "pdf"}) {
    const Call made = shop({"record", "export", "--job", kSealed, "--format", format, "--out", file(format)});
    EXPECT_EQ(made.exit, 0) << format << made.out << made.err;
    EXPECT_GT(std::filesystem::file_size(file(format)), 100u) << format;
  }
  for (const char* format : {"json", "pdf"}) {
    const Call verified = call({"record", "verify", file(format), "--key", CW_TEST_DATA "/record/key.json"});
    EXPECT_THAT(verified.out + verified.err, HasSubstr("trial version")) << format;
  }
  EXPECT_EQ(call({"record", "verify", file("json"), "--key", CW_TEST_DATA "/record/key.json"}).exit, 0);
  std::ifstream text(file("text"));
  EXPECT_THAT(std::string(std::istreambuf_iterator<char>(text), {}), HasSubstr("trial version"));
}

TEST_F(TrialShop, ItsOpenJobIsCalledOffAndNothingElse) {
  write("more", R"({"kind":"signed-in","by":"mira","pin":"2468"})"
                "\n");
  const Call more = shop({"job", "enter", file("more"), "--job", kOpen});
  EXPECT_EQ(more.exit, 2);
  EXPECT_THAT(more.err, HasSubstr("call it off"));
  write("off", R"({"kind":"called-off","by":"mira","pin":"2468","reason":"begun by the trial version"})"
               "\n");
  const Call off = shop({"job", "enter", file("off"), "--job", kOpen});
  EXPECT_EQ(off.exit, 0) << off.err;
  EXPECT_THAT(shop({"job", "list"}).out, HasSubstr("called-off"));
  EXPECT_EQ(shop({"job", "seal", "--job", kOpen, "--by", "mira", "--pin-file", file("pin")}).exit, 2);
  EXPECT_EQ(shop({"inspect"}).exit, 0);
}

}  // namespace
}  // namespace cw

// A quick joint from the command line.
#include <gmock/gmock.h>

#include <fstream>

#include "core/procedure/sheet_file.h"
#include "tests/app/command_line/call.h"
#include "tests/support/quick_joint.h"
#include "tests/support/temporary_folder.h"

namespace cw {
namespace {

using testing::HasSubstr;

class QuickJointByCommand : public testing::Test {
 protected:
  void SetUp() override {
    write("pin-mira", "2468\n");
    write("pin-bea", "4680\n");
    write("quick.json", writeSheet(test::quickSheetOf()));
    write("swapped.json", writeSheet(test::quickSheetOf(test::swappedCover())));
    const Call init = shop({"shop", "init", "--name", "Test shop", "--register",
                            std::string(CW_RESOURCES) + "/demo/register.json"});
    ASSERT_EQ(init.exit, 0) << init.err;
  }

  std::string file(const std::string& name) const { return m_folder.file(name); }
  void write(const std::string& name, const std::string& text) const { std::ofstream(file(name)) << text; }
  Call shop(std::vector<std::string> words) const {
    words.insert(words.begin(), {"--shop", file("shop.cw"), "--json"});
    return call(std::move(words));
  }
  Call start(const std::string& quick, std::vector<std::string> more = {}) const {
    std::vector<std::string> words{"job",          "start", "--quick",    file(quick),
                                   "--work-order", "WO 5",  "--machine",  "P-12",
                                   "--by",         "mira",  "--pin-file", file("pin-mira")};
    words.insert(words.end(), more.begin(), more.end());
    return shop(words);
  }

  TemporaryFolder m_folder;
};

TEST_F(QuickJointByCommand, IsStartedAndMarkedInTheList) {
  const Call started = start("quick.json");
  ASSERT_EQ(started.exit, 0) << started.err;
  EXPECT_THAT(shop({"job", "list"}).out, HasSubstr("\"quick\":true"));
  const Call promoted =
      shop({"sheet", "promote", started.word("job"), "--by", "bea", "--pin-file", file("pin-bea")});
  EXPECT_NE(promoted.exit, 0);  // not sealed yet
  EXPECT_NE(promoted.err, "");
}

TEST_F(QuickJointByCommand, ThatTheGuardStopsNeedsALead) {
  const Call refused = start("swapped.json");
  EXPECT_NE(refused.exit, 0);
  EXPECT_THAT(refused.err, HasSubstr("below-band"));
  EXPECT_EQ(start("swapped.json", {"--allowed-by", "bea", "--allowed-why", "a plastic housing"}).exit, 0);
}

TEST_F(QuickJointByCommand, IsEitherASheetOrAFile) {
  EXPECT_EQ(start("quick.json", {"--sheet", "019ab0c4-5e00-7a10-8f3e-6d2b41c07e01"}).exit, 2);
  EXPECT_EQ(start("missing.json").exit, 2);
}

}  // namespace
}  // namespace cw

// A job with an entry that nobody could have made: every command says where, and none of them dies of it.
#include <gmock/gmock.h>

#include <QCoreApplication>
#include <fstream>

#include "tests/app/command_line/call.h"
#include "tests/support/forged_entry.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using testing::HasSubstr;

class ForgedJob : public testing::Test {
 protected:
  Call shop(std::vector<std::string> words) const {
    words.insert(words.begin(), {"--shop", (m_shop.folder() / "forged").string()});
    return call(std::move(words));
  }

  int m_none = 0;
  QCoreApplication m_application{m_none, nullptr};
  test::SampleShop m_shop;
};

TEST_F(ForgedJob, IsNamedWithTheEntryByEveryCommand) {
  const Id id = m_shop.startJob();
  ASSERT_EQ(m_shop.work(id, "s2"), "");
  const Job job = **m_shop->ledger().job(id);
  m_shop.close();
  const std::string place = "entry " + std::to_string(job.count() + 1);
  const std::string lines = (m_shop.folder() / "lines").string();
  std::ofstream(lines) << R"({"kind":"signed-in","by":"mira","pin":"2468"})"
                       << "\n";
  for (const auto& [kind, body] : test::impossibleBodies()) {
    SCOPED_TRACE(kind + " " + body);
    std::filesystem::copy_file(m_shop.file(), m_shop.folder() / "forged",
                               std::filesystem::copy_options::overwrite_existing);
    test::insertForged(m_shop.folder() / "forged", job, test::forgedAfter(job, kind, body));
    const Call inspected = shop({"inspect"});
    EXPECT_EQ(inspected.exit, 1) << inspected.err;
    EXPECT_THAT(inspected.out, HasSubstr(place));
    const Call entered = shop({"job", "enter", lines, "--job", id.text()});
    EXPECT_EQ(entered.exit, 3) << entered.out;
    EXPECT_THAT(entered.err, HasSubstr(place));
    EXPECT_EQ(std::count(entered.err.begin(), entered.err.end(), '\n'), 1);
    EXPECT_NE(shop({"record", "export", "--job", id.text()}).exit, 0);
    EXPECT_NE(shop({"backup", (m_shop.folder() / "copy").string()}).exit, 0);
    EXPECT_EQ(shop({"job", "list"}).exit, 0);
  }
}

}  // namespace
}  // namespace cw

// Lists that end before their last row say so.
#include <gmock/gmock.h>

#include <QCoreApplication>

#include "tests/app/command_line/call.h"
#include "tests/support/many_jobs.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using testing::HasSubstr;
using testing::Not;

class Lists : public testing::Test {
 protected:
  Lists() {
    m_sealed = m_shop.startJob();
    EXPECT_EQ(m_shop.work(m_sealed), "");
    test::need(m_shop->records().seal(m_sealed, {"mira", std::string(test::kPin)}, m_shop.key(), "test"));
    m_shop.close();
    test::addJobs(m_shop.file(), 1004);
  }
  Call shop(std::vector<std::string> words) const {
    words.insert(words.begin(), {"--shop", m_shop.file().string()});
    return call(std::move(words));
  }

  int m_none = 0;
  QCoreApplication m_application{m_none, nullptr};
  test::SampleShop m_shop;
  Id m_sealed;
};

TEST_F(Lists, OfJobsSaysOfHowManyItIsTheFirst) {
  EXPECT_THAT(shop({"job", "list"}).out, HasSubstr("\nfirst 1000 of 1005 jobs"));
  EXPECT_EQ(shop({"job", "list", "--json"}).number("total"), 1005);
  EXPECT_THAT(shop({"job", "list", "--limit", "2000"}).out, Not(HasSubstr("first ")));
  const Call two = shop({"job", "list", "--limit", "2", "--json"});
  EXPECT_EQ(two.number("total"), 1005);
  EXPECT_EQ(two.json().find("jobs")->array()->size(), 2u);
  EXPECT_EQ(shop({"job", "list", "--limit", "0"}).exit, 2);
}

TEST_F(Lists, OfRecordsLooksBehindEveryJobInProgress) {
  const Call all = shop({"record", "list", "--json"});
  EXPECT_EQ(all.number("total"), 1);
  EXPECT_THAT(all.out, HasSubstr(m_sealed.text()));
}

TEST_F(Lists, OfLibraryRowsSaysOfHowManyItIsTheFirst) {
  const Call few = shop({"library", "find", "M", "--limit", "3"});
  EXPECT_THAT(few.out, HasSubstr("\nfirst 3 of "));
  const Call json = shop({"library", "find", "M", "--limit", "3", "--json"});
  const auto total = static_cast<int>(json.number("total"));
  EXPECT_GT(total, 3);
  const Call all = shop({"library", "find", "M", "--limit", std::to_string(total), "--json"});
  EXPECT_EQ(all.json().find("rows")->array()->size(), static_cast<std::size_t>(total));
  EXPECT_THAT(shop({"library", "find", "M", "--limit", std::to_string(total)}).out, Not(HasSubstr("first ")));
}

}  // namespace
}  // namespace cw

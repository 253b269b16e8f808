#include "core/store/inspect.h"

#include <fstream>

#include "tests/support/matchers.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

namespace fs = std::filesystem;
using test::need;
using test::SampleShop;
using testing::AllOf;
using testing::Contains;
using testing::Field;
using testing::HasSubstr;
using testing::IsEmpty;

/// A closed shop file with one sealed record with an addendum, and one open job.
class InspectTest : public testing::Test {
 protected:
  InspectTest() {
    m_sealed = m_shop.startJob();
    if (const std::string refusal = m_shop.work(m_sealed); !refusal.empty())
      throw std::runtime_error(refusal);
    need(m_shop->records().seal(m_sealed, {"mira", std::string(test::kPin)}, m_shop.key(), "1.0"));
    need(m_shop->records().addAddendum(m_sealed, "wim", test::kPin, "The serial is S-101.", m_shop.key()));
    m_open = m_shop.startJob();
    m_shop.close();
  }

  Findings after(const std::string& statements) {
    test::sqlite(m_shop.file(), statements);
    return need(inspectFile(m_shop.file()));
  }
  static auto finding(const std::string& code, const std::string& place) {
    return AllOf(Field(&Finding::code, code), Field(&Finding::place, HasSubstr(place)));
  }

  SampleShop m_shop;
  Id m_sealed, m_open;
};

TEST_F(InspectTest, HasNothingAgainstASoundFile) {
  EXPECT_THAT(need(inspectFile(m_shop.file())), IsEmpty());
}

TEST_F(InspectTest, FindsAGuardThatWasRemovedOrAltered) {
  EXPECT_THAT(after("DROP TRIGGER entry_no_update"), Contains(finding("schema", "entry_no_update")));
  EXPECT_THAT(after("CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry BEGIN SELECT 1; END"),
              Contains(finding("schema", "entry_no_update")));
  EXPECT_THAT(after("CREATE TABLE mine(a)"), Contains(finding("schema", "mine")));
}

TEST_F(InspectTest, NamesTheEntryWhereAChainBreaks) {
  EXPECT_THAT(after("DROP TRIGGER entry_no_update;"
                    "UPDATE entry SET text = replace(text, 'B-77', 'B-78') WHERE kind = 'applied'"),
              AllOf(Contains(finding("chain", "entry 6")), Contains(finding("schema", "entry_no_update"))));
}

TEST_F(InspectTest, NamesAnEntryThatIsMissing) {
  EXPECT_THAT(after("DROP TRIGGER entry_no_delete; DELETE FROM entry WHERE sequence = 5"),
              Contains(finding("chain", "entry 5")));
}

TEST_F(InspectTest, NoticesThatTheLastEntriesWereCut) {
  EXPECT_THAT(after("DROP TRIGGER entry_no_delete; DELETE FROM entry WHERE kind = 'finished'"),
              Contains(finding("record", m_sealed.text())));
  EXPECT_THAT(after("DELETE FROM entry WHERE job = '" + m_open.text() + "'"),
              Contains(finding("chain", m_open.text())));
}

TEST_F(InspectTest, NoticesAnAlteredRecordOrAddendum) {
  EXPECT_THAT(after("DROP TRIGGER record_no_update;"
                    "UPDATE record SET bytes = CAST(replace(CAST(bytes AS TEXT), 'WO 1', 'WO 2') AS BLOB)"),
              Contains(finding("record", m_sealed.text())));
  EXPECT_THAT(after("DROP TRIGGER addendum_no_update; UPDATE addendum SET bytes = x'7b7d'"),
              Contains(finding("record", m_sealed.text())));
}

TEST_F(InspectTest, NoticesAlteredSheetBytes) {
  EXPECT_THAT(after("DROP TRIGGER sheet_text_no_update; UPDATE sheet_text SET bytes = CAST(bytes || ' ' AS BLOB)"),
              Contains(Field(&Finding::code, "sheet")));
}

TEST_F(InspectTest, FindsFlippedBitsOrRefuses) {
  std::string whole;
  {
    std::ifstream in(m_shop.file(), std::ios::binary);
    whole.assign(std::istreambuf_iterator<char>(in), {});
  }
  // The text of an entry lies on its page as it is; a flipped bit there leaves the pages sound.
  const std::size_t at = whole.find("\"batch\":\"B-77\"");
  ASSERT_NE(at, std::string::npos);
  whole[at + 11] ^= 1;
  std::ofstream(m_shop.file(), std::ios::binary) << whole;
  EXPECT_THAT(need(inspectFile(m_shop.file())), Contains(Field(&Finding::code, "chain")));
}

TEST_F(InspectTest, RefusesWhatIsNoShopFile) {
  EXPECT_THAT(inspectFile(m_shop.folder() / "missing"), FailsWith(ErrorCode::Storage));
  EXPECT_THAT(inspectFile(m_shop.folder().path()), FailsWith(ErrorCode::Storage));
  std::ofstream(m_shop.folder() / "text") << std::string(4096, 'x');
  EXPECT_THAT(inspectFile(m_shop.folder() / "text"), FailsWith(ErrorCode::Corrupt));
}

TEST_F(InspectTest, ABackupIsAWholeShop) {
  m_shop.reopen();
  const fs::path copy = m_shop.folder() / "copy.clampwright";
  need(m_shop->backUpTo(copy));
  EXPECT_THAT(need(inspectFile(copy)), IsEmpty());
  const auto shop = need(Shop::open(copy, m_shop.clock()));
  EXPECT_EQ(need(shop->records().bytes(m_sealed)), need(m_shop->records().bytes(m_sealed)));
  EXPECT_EQ((*shop->ledger().job(m_open))->head, (*m_shop->ledger().job(m_open))->head);
}

TEST_F(InspectTest, ABackupNeverReplacesAFile) {
  m_shop.reopen();
  std::ofstream(m_shop.folder() / "precious") << "x";
  EXPECT_THAT(m_shop->backUpTo(m_shop.folder() / "precious"), FailsWith(ErrorCode::AlreadyDone));
  EXPECT_THAT(m_shop->backUpTo(m_shop.folder() / "no/such/folder"), testing::Not(IsOk()));
  EXPECT_EQ(fs::file_size(m_shop.folder() / "precious"), 1u);
}

TEST_F(InspectTest, ABackupOfADamagedFileIsRefusedAndLeavesNothing) {
  test::sqlite(m_shop.file(),
               "DROP TRIGGER entry_no_update; UPDATE entry SET text = '{}' WHERE sequence = 3");
  m_shop.reopen();
  EXPECT_THAT(m_shop->backUpTo(m_shop.folder() / "copy"), FailsWith(ErrorCode::Corrupt));
  for (const auto& file : fs::directory_iterator(m_shop.folder().path()))
    EXPECT_TRUE(file.path().filename().string().starts_with("shop.clampwright")) << file.path();
}

TEST_F(InspectTest, ABackupCanBeMadeWhileOthersWrite) {
  m_shop.reopen();
  const auto other = m_shop.another();
  need(other->ledger().signIn(m_open, "mira", test::kPin, m_shop.newId()));
  need(m_shop->backUpTo(m_shop.folder() / "copy"));
  EXPECT_THAT(need(inspectFile(m_shop.folder() / "copy")), IsEmpty());
}

}  // namespace
}  // namespace cw

#include "core/store/register_file.h"
#include "tests/support/matchers.h"
#include "tests/support/quick_job.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::need;
using test::SampleShop;

/// A table that cannot be read says nothing of what is in it: whoever looks there hears of the trouble, and
/// nothing is done as if it were empty.
class StorageTrouble : public testing::Test {
 protected:
  void hide(const std::string& table) {
    test::sqlite(m_shop.file(), "PRAGMA legacy_alter_table = 1; ALTER TABLE " + table + " RENAME TO hidden");
    m_hidden = table;
  }
  void bringBack() {
    test::sqlite(m_shop.file(), "PRAGMA legacy_alter_table = 1; ALTER TABLE hidden RENAME TO " + m_hidden);
  }
  Deed lead() { return {"lena", m_shop.clock().now(), "tried"}; }

  SampleShop m_shop;
  std::string m_hidden;
};

TEST_F(StorageTrouble, AJobDoesNotStartWithoutWhatTheShopKnowsOfItsMachine) {
  const Beginning beginning = m_shop.beginning();
  hide("machine");
  EXPECT_THAT(m_shop->ledger().start(beginning), FailsWith(ErrorCode::Storage));
  bringBack();
  need(m_shop->ledger().start(beginning));
  EXPECT_EQ((*m_shop->ledger().job(beginning.job))->start.serial, "S-100");
}

TEST_F(StorageTrouble, AQuickJointIsNotTakenForASheetThatTheShopHasNot) {
  Beginning beginning = test::quickBeginning(m_shop);
  hide("sheet_revision");
  EXPECT_THAT(m_shop->ledger().start(beginning), FailsWith(ErrorCode::Storage));
}

TEST_F(StorageTrouble, ARecordIsNotTakenForUnsealed) {
  const Id job = m_shop.startJob();
  ASSERT_EQ(m_shop.work(job), "");
  hide("record");
  EXPECT_THAT(m_shop->records().seal(job, {"mira", std::string(test::kPin)}, m_shop.key(), "test"), FailsWith(ErrorCode::Storage));
  EXPECT_THAT(m_shop->records().files(job), FailsWith(ErrorCode::Storage));
}

TEST_F(StorageTrouble, ADraftIsNotTakenForNew) {
  hide("sheet_revision");
  EXPECT_THAT(m_shop->sheets().saveDraft(writeSheet(test::sampleSheet()), lead()),
              FailsWith(ErrorCode::Storage));
}

TEST_F(StorageTrouble, ARegisterOfWhichAPartCannotBeComparedIsNotTakenInByHalf) {
  const std::size_t before = need(m_shop->people().all()).size();
  hide("machine");
  EXPECT_THAT(addRegister(*m_shop,
                          R"({"format":"clampwright.register","version":1,
                              "people":[{"sign":"nina","name":"Nina","roles":["technician"],"pin":"1357"}],
                              "machines":[{"id":"P-9"}]})",
                          lead(), PinStrength::Quick),
              FailsWith(ErrorCode::Storage));
  EXPECT_EQ(need(m_shop->people().all()).size(), before);
}

TEST_F(StorageTrouble, NamesAreNotTakenForFree) {
  hide("machine");
  EXPECT_THAT(m_shop->machines().add({"P-2", "", "", ""}), FailsWith(ErrorCode::Storage));
  bringBack();
  hide("tool");
  EXPECT_THAT(m_shop->tools().add(test::sampleTools().front(), lead()), FailsWith(ErrorCode::Storage));
}

}  // namespace
}  // namespace cw

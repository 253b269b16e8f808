// A quick joint from its start to the draft it becomes, in a real shop file.
#include "core/base/csv.h"
#include "core/record/verify.h"
#include "core/store/inspect.h"
#include "core/store/promote.h"
#include "tests/support/matchers.h"
#include "tests/support/quick_job.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::need;
using test::quickSheetOf;
using testing::HasSubstr;

class QuickJointInAShop : public testing::Test {
 protected:
  void SetUp() override { test::addQuickWrench(shop); }
  Beginning beginning(const std::string& sign = "mira", const QuickJoint& joint = test::quickCover()) {
    return test::quickBeginning(shop, sign, joint);
  }
  Id sealed() { return test::sealedQuickJoint(shop); }

  test::SampleShop shop;
};

TEST_F(QuickJointInAShop, IsTightenedSealedAndVerified) {
  const Id job = sealed();
  const std::string bytes = need(shop->records().bytes(job));
  EXPECT_TRUE(verifyRecord(bytes, publicOf(shop.key())).good());
  const SealedRecord record = need(readRecord(bytes));
  EXPECT_TRUE(record.job.start.quick);
  EXPECT_EQ(record.job.start.guard.value, "in-band");
  EXPECT_THAT(need(inspectFile(shop.file())), testing::IsEmpty());
}

TEST_F(QuickJointInAShop, IsMarkedInTheListAndAnIssuedOneIsNot) {
  const Id quick = sealed(), issued = shop.startJob();
  const auto listed = need(shop->findJobs({}));
  for (const JobRow& row : listed.rows) EXPECT_EQ(row.quick, row.job == quick) << row.title;
  EXPECT_NE(quick, issued);
}

TEST_F(QuickJointInAShop, KnowsTheShopsOwnRows) {
  QuickJoint joint = test::quickCover();
  joint.fastener.grade = "pump stud";
  EXPECT_THAT(shop->ledger().start(beginning("mira", joint)), FailsWith(ErrorCode::NotPermitted));
  need(shop->library().import(csvLine(columnsOf(RowKind::Grade)) +
                                  "pump stud,,both,5,20,mm,,640,800,MPa,seen,pump drawing 12,Lena,own heat\n",
                              {"lena", shop.clock().now(), ""}));
  EXPECT_THAT(shop->ledger().start(beginning("mira", joint)), IsOk());
}

TEST_F(QuickJointInAShop, IsNotStartedByAnApprenticeOrAServiceWriter) {
  Beginning byApprentice = beginning("ada");
  byApprentice.supervisor = "mira";
  EXPECT_THAT(shop->ledger().start(byApprentice), FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(shop->ledger().start(beginning("wim")), FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(shop->ledger().start(beginning("otto")), FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(shop->ledger().start(beginning("lena")), IsOk());
}

TEST_F(QuickJointInAShop, ThatTheGuardStopsNeedsALeadsWord) {
  Beginning swapped = beginning("mira", test::swappedCover());
  const auto refused = shop->ledger().start(swapped);
  ASSERT_THAT(refused, FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(sentence(refused.error()), HasSubstr("below-band"));
  swapped.start.guardAllowedBy = "mira";
  swapped.start.guardReason = "it says so";
  EXPECT_THAT(shop->ledger().start(swapped), FailsWith(ErrorCode::NotPermitted));
  swapped.start.guardAllowedBy = "lena";
  swapped.start.guardReason = " ";
  EXPECT_THAT(shop->ledger().start(swapped), FailsWith(ErrorCode::InvalidInput));
  swapped.start.guardReason = "plastic housing, the maker confirmed it by telephone";
  ASSERT_THAT(shop->ledger().start(swapped), IsOk());
  EXPECT_EQ(need(shop->ledger().job(swapped.job))->start.guard.value, "below-band");
}

TEST_F(QuickJointInAShop, CannotPassOffAVerdictOfItsOwn) {
  Beginning swapped = beginning("mira", test::swappedCover());
  swapped.start.guard.value = "in-band";
  EXPECT_THAT(shop->ledger().start(swapped), FailsWith(ErrorCode::NotPermitted));
  Beginning plain = shop.beginning();
  plain.start.quick = true;  // no sheet of its own: then it is no quick joint
  need(shop->ledger().start(plain));
  EXPECT_FALSE(need(shop->ledger().job(plain.job))->start.quick);
}

TEST_F(QuickJointInAShop, IsNoWayRoundTheReviewOfAWholeSheet) {
  Beginning whole = shop.beginning();
  Sheet sheet = test::sampleSheet();
  sheet.revision = "B";
  whole.quickSheet = writeSheet(sheet);
  EXPECT_THAT(shop->ledger().start(whole), FailsWith(ErrorCode::InvalidInput));
  Beginning garbage = shop.beginning();
  garbage.quickSheet = "60 in-lb";
  EXPECT_THAT(shop->ledger().start(garbage), FailsWith(ErrorCode::InvalidInput));
  EXPECT_EQ(need(shop->findJobs({})).total, 0u);
}

TEST_F(QuickJointInAShop, IsDoneTwiceByTheSameBytes) {
  need(shop->ledger().start(beginning()));
  EXPECT_THAT(shop->ledger().start(beginning()), IsOk());
}

TEST_F(QuickJointInAShop, BecomesADraftOnceSealed) {
  const Beginning open = beginning();
  need(shop->ledger().start(open));
  const Deed deed{"tilda", shop.clock().now()};
  EXPECT_THAT(promoteQuickJoint(*shop, open.job, deed), FailsWith(ErrorCode::NotFound));
  const Id job = sealed();
  EXPECT_THAT(promoteQuickJoint(*shop, job, {"mira", shop.clock().now()}),
              FailsWith(ErrorCode::NotPermitted));
  const SheetRow row = need(promoteQuickJoint(*shop, job, deed));
  EXPECT_EQ(row.status, SheetStatus::Draft);
  EXPECT_EQ(row.author, "tilda");
  EXPECT_THAT(promoteQuickJoint(*shop, job, deed), IsOkAnd(testing::Field(&SheetRow::digest, row.digest)));
  EXPECT_THAT(need(inspectFile(shop.file())), testing::IsEmpty());
}

TEST_F(QuickJointInAShop, OutlivesADraftOfTheSameBytes) {
  const Id job = sealed();
  const Deed deed{"tilda", shop.clock().now()};
  const SheetRow row = need(shop->sheets().saveDraft(writeSheet(quickSheetOf()), deed));
  need(shop->sheets().deleteDraft(row.sheet, row.revision));
  EXPECT_THAT(shop->ledger().refresh(job), IsOk());
  EXPECT_THAT(need(inspectFile(shop.file())), testing::IsEmpty());
}

}  // namespace
}  // namespace cw

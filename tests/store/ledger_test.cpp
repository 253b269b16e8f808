#include "core/store/ledger.h"
#include "core/record/next.h"
#include "tests/support/matchers.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::kPin;
using test::need;
using test::SampleShop;
using testing::HasSubstr;

TEST(Ledger, TakesAJobFromStartToFinish) {
  SampleShop shop;
  const Id job = shop.startJob();
  ASSERT_EQ(shop.work(job), "");
  EXPECT_TRUE((*shop->ledger().job(job))->finished);
}

TEST(Ledger, FoldsTheSameJobAfterARestart) {
  SampleShop shop;
  const Id job = shop.startJob();
  ASSERT_EQ(shop.work(job, "s4"), "");
  const Job before = **shop->ledger().job(job);
  shop.reopen();
  const Job& after = **shop->ledger().job(job);
  EXPECT_EQ(after.head, before.head);
  EXPECT_EQ(next(after), next(before));
}

TEST(Ledger, CompletesTheStartFromTheRegisters) {
  SampleShop shop;
  const JobStarted start = (*shop->ledger().job(shop.startJob()))->start;
  EXPECT_EQ(start.model, "Test pump");
  EXPECT_EQ(start.serial, "S-100");
  EXPECT_EQ(start.hours, "") << "the register's are of another day";
  EXPECT_FALSE(start.alone);
}

TEST(Ledger, StartsFromTheIssuedRevisionOnly) {
  SampleShop shop;
  Sheet sheet = test::sampleSheet();
  need(shop->sheets().withdraw(sheet.id, "A", {"lena", shop.clock().now()}));
  EXPECT_THAT(shop->ledger().start(shop.beginning()),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("withdrawn")));
  sheet.revision = "B";
  const SheetRow draft = need(shop->sheets().saveDraft(writeSheet(sheet), {"tilda", shop.clock().now()}));
  Beginning begin = shop.beginning();
  begin.sheetDigest = draft.digest;
  EXPECT_THAT(shop->ledger().start(begin), FailsWith(ErrorCode::NotPermitted, HasSubstr("draft")));
  EXPECT_THAT(shop->ledger().job(begin.job), FailsWith(ErrorCode::NotFound));
}

TEST(Ledger, StartsNoJobThatTheBenchCannotDo) {
  Sheet sheet = test::sampleSheet();
  sheet.specifications[0].method = Method::TorqueAndAngle;
  sheet.specifications[0].angle = StatedAngle{"90", &kDegree};
  SampleShop shop(sheet);  // issued past the review, as by an earlier program
  Beginning begin = shop.beginning();
  begin.sheetDigest = hex(sha256(writeSheet(sheet)));
  EXPECT_THAT(shop->ledger().start(begin), FailsWith(ErrorCode::NotPermitted, HasSubstr("torque-and-angle")));
  EXPECT_THAT(shop->ledger().job(begin.job), FailsWith(ErrorCode::NotFound));
}

TEST(Ledger, StartsFromAnIssuedSheetWhateverItsUnknownFieldsAreCalled) {
  Sheet sheet = test::sampleSheet();
  sheet.steps[0].rest.emplace("warning", "Hot.");
  SampleShop shop(sheet);
  Beginning begin = shop.beginning();
  begin.sheetDigest = hex(sha256(writeSheet(sheet)));
  EXPECT_THAT(shop->ledger().start(begin), IsOk());
}

TEST(Ledger, StartsAJobOnce) {
  SampleShop shop;
  Beginning begin = shop.beginning();
  const Receipt first = need(shop->ledger().start(begin));
  const Receipt again = need(shop->ledger().start(begin));
  EXPECT_FALSE(first.already);
  EXPECT_TRUE(again.already);
  EXPECT_EQ(again.hash, first.hash);
  begin.entry = shop.newId();
  EXPECT_THAT(shop->ledger().start(begin), FailsWith(ErrorCode::AlreadyDone));
}

TEST(Ledger, TakesAReplayOnce) {
  SampleShop shop;
  const Id job = shop.startJob();
  const Draft read = shop.draft("mira", WarningsRead{"s1"});
  const Receipt first = need(shop->ledger().append(job, read));
  EXPECT_FALSE(first.already);
  for (int restart = 0; restart < 2; ++restart) {
    const Receipt again = need(shop->ledger().append(job, read));
    EXPECT_TRUE(again.already);
    EXPECT_EQ(again.sequence, first.sequence);
    EXPECT_EQ(again.hash, first.hash);
    shop.reopen();
  }
  EXPECT_EQ((*shop->ledger().job(job))->count(), 2);
}

TEST(Ledger, RefusesAnIdThatMeansSomethingElse) {
  SampleShop shop;
  const Id job = shop.startJob(), other = shop.startJob();
  Draft draft = shop.draft("mira", WarningsRead{"s1"});
  need(shop->ledger().append(job, draft));
  EXPECT_THAT(shop->ledger().append(other, draft), FailsWith(ErrorCode::InvalidInput, HasSubstr("entry 2")));
  draft.body = ActDone{"s1", true, "", ""};
  EXPECT_THAT(shop->ledger().append(job, draft),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("warnings-read")));
}

TEST(Ledger, TellsWhoWasFirst) {
  SampleShop shop;
  const Id job = shop.startJob();
  const auto other = shop.another();
  ASSERT_THAT(other->ledger().signIn(job, "otto", kPin, shop.newId()), IsOk());
  const auto late = shop.say(job, "mira", WarningsRead{"s1"});
  EXPECT_THAT(late, FailsWith(ErrorCode::Conflict, HasSubstr("otto was first, with “signed-in” (entry 2)")));
  EXPECT_EQ((*shop->ledger().job(job))->count(), 2) << "the view is fresh after a conflict";
  EXPECT_THAT(shop.say(job, "mira", WarningsRead{"s1"}), IsOk());
}

TEST(Ledger, SeesOthersWhenAsked) {
  SampleShop shop;
  const Id job = shop.startJob();
  const auto other = shop.another();
  ASSERT_THAT(other->ledger().signIn(job, "otto", kPin, shop.newId()), IsOk());
  EXPECT_EQ((*shop->ledger().job(job))->count(), 1);
  EXPECT_EQ((*shop->ledger().refresh(job))->count(), 2);
}

TEST(Ledger, EntersAClockThatRanBackFirst) {
  SampleShop shop;
  const Id job = shop.startJob();
  shop.clock().set(*parseRfc3339("2026-03-04T07:55:00.000+01:00"));
  const Receipt receipt = need(shop.say(job, "mira", WarningsRead{"s1"}));
  EXPECT_EQ(receipt.sequence, 3);
  const Job& now = **shop->ledger().job(job);
  const auto* back = std::get_if<ClockWentBack>(&now.entries[1].entry.body);
  ASSERT_NE(back, nullptr);
  EXPECT_EQ(back->before.value, rfc3339(now.entries[0].entry.time));
  EXPECT_TRUE(std::holds_alternative<WarningsRead>(now.entries[2].entry.body));
}

TEST(Ledger, EntersAClockThatRanBackBeforeASignIn) {
  SampleShop shop;
  const Id job = shop.startJob();
  ASSERT_THAT(shop.say(job, "mira", Paused{"counter bell", false, "", ""}), IsOk());
  shop.clock().set(*parseRfc3339("2026-03-04T07:00:00.000+01:00"));
  EXPECT_THAT(shop.say(job, "mira", SignedIn{}), IsOk());
  EXPECT_THAT(shop.say(job, "mira", Resumed{}), IsOk());
}

TEST(Ledger, RefusesAnEntryOutOfTurnWithoutTrace) {
  SampleShop shop;
  const Id job = shop.startJob();
  EXPECT_THAT(shop.say(job, "mira", CheckMade{"s2", Answer::Yes, ""}), FailsWith(ErrorCode::OutOfTurn));
  EXPECT_EQ((*shop->ledger().refresh(job))->count(), 1);
}

TEST(Ledger, AsksForThePinAgainAfterARestart) {
  SampleShop shop;
  const Id job = shop.startJob();
  shop.reopen();
  EXPECT_THAT(shop->ledger().isSignedIn(job, "mira"), IsOkAnd(false));
  EXPECT_THAT(shop.say(job, "mira", WarningsRead{"s1"}),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("sign in")));
  ASSERT_THAT(shop.say(job, "mira", SignedIn{}), IsOk());
  EXPECT_THAT(shop->ledger().isSignedIn(job, "mira"), IsOkAnd(true));
  EXPECT_THAT(shop.say(job, "mira", WarningsRead{"s1"}), IsOk());
}

TEST(Ledger, TakesNoSignInWithoutAPin) {
  SampleShop shop;
  const Id job = shop.startJob();
  EXPECT_THAT(shop->ledger().append(job, shop.draft("otto", SignedIn{})), FailsWith(ErrorCode::WrongPin));
}

TEST(Ledger, AsksForThePinAgainAfterIdling) {
  SampleShop shop;
  const Id job = shop.startJob();
  shop.clock().set(*parseRfc3339("2026-03-04T09:00:00.000+01:00"));
  EXPECT_THAT(shop->ledger().isSignedIn(job, "mira"), IsOkAnd(false));
  EXPECT_THAT(shop.say(job, "mira", WarningsRead{"s1"}), FailsWith(ErrorCode::NotPermitted));
}

TEST(Ledger, NeverLocksInTheMiddleOfAPass) {
  SampleShop shop;
  const Id job = shop.startJob();
  auto script = test::sampleScript("s5");
  const auto firstPull = std::find_if(script.begin(), script.end(), [](const auto& said) {
    return std::holds_alternative<Tightened>(said.second);
  });
  for (auto said = script.begin(); said != firstPull; ++said)
    ASSERT_THAT(shop.say(job, said->first, said->second), IsOk());
  shop.clock().set(*parseRfc3339("2026-03-04T18:00:00.000+01:00"));
  for (auto said = firstPull; said != script.end(); ++said)
    EXPECT_THAT(shop.say(job, said->first, said->second), IsOk());
  shop.clock().set(*parseRfc3339("2026-03-04T21:00:00.000+01:00"));
  EXPECT_THAT(shop->ledger().isSignedIn(job, "mira"), IsOkAnd(false));
}

TEST(Ledger, ChangesInTheRegistersHoldAtOnce) {
  SampleShop shop;
  const Id job = shop.startJob();
  ASSERT_EQ(shop.work(job, "s4"), "");
  ASSERT_THAT(shop.say(job, "mira", HandStarted{"s5", 4, {}}), IsOk());
  const auto other = shop.another();
  need(other->people().change({"mira", "Mira Sol", {Role::Technician}, false, false, ""}));
  EXPECT_THAT(shop.say(job, "mira", ConditionConfirmed{"s5", "dry"}),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("no longer works here")));
}

TEST(Ledger, NamesTheFirstBadEntry) {
  SampleShop shop;
  const Id job = shop.startJob();
  ASSERT_EQ(shop.work(job, "s3"), "");
  shop.close();
  test::sqlite(shop.file(),
               "DROP TRIGGER entry_no_update;"
               "UPDATE entry SET text = replace(text, '\"yes\"', '\"no\"') WHERE sequence = 4;");
  const auto again = shop.another();
  EXPECT_THAT(again->ledger().job(job), FailsWith(ErrorCode::Corrupt, HasSubstr("entry 4")));
}

}  // namespace
}  // namespace cw

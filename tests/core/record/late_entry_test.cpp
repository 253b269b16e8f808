#include <gmock/gmock.h>

#include "tests/support/matchers.h"
#include "tests/support/sample_job.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;

/// What was done earlier than it is entered is judged by the day on which it was done.
class LateEntry : public testing::Test {
 protected:
  void SetUp() override { ASSERT_THAT(bench.start(), IsOk()); }
  Result<void> sayDone(const char* when, Body body) {
    Draft draft = bench.draftOf("mira", std::move(body));
    draft.done = *parseRfc3339(when);
    return bench.say(draft);
  }
  void workTo(const char* when) {
    for (const Body& body : std::vector<Body>{
             WarningsRead{"s1"}, ActDone{"s1", true, "", ""}, CheckMade{"s2", Answer::Yes, ""},
             Measured{"s3", "0.05", "mm", ""}, Applied{"s4", "B-77", ""}, HandStarted{"s5", 4, {}},
             ConditionConfirmed{"s5", "dry"}, toolSet("s5", "T-07", inLbf("33")), counted("s5", 4)})
      ASSERT_THAT(sayDone(when, body), IsOk());
  }
  Bench bench;
};

TEST_F(LateEntry, IsJudgedByTheCalibrationOfItsDay) {
  workTo("2025-12-01T10:00:00+01:00");
  EXPECT_THAT(sayDone("2025-12-01T11:00:00+01:00", toolSet("s5", "T-07", inLbf("65"))),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("T-07")))
      << "first calibrated on 2026-01-10";
  EXPECT_THAT(sayDone("2026-01-10T11:00:00+01:00", toolSet("s5", "T-07", inLbf("65"))), IsOk());
}

TEST_F(LateEntry, TakesAWrenchThatWasInDateOnItsDay) {
  workTo("2026-01-20T10:00:00+01:00");
  EXPECT_THAT(bench.say(toolSet("s5", "T-08", inLbf("65"))), FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(sayDone("2026-01-20T11:00:00+01:00", toolSet("s5", "T-08", inLbf("65"))), IsOk());
}

TEST_F(LateEntry, IsJudgedByTheExpiryOnItsDay) {
  ASSERT_THAT(bench.say(WarningsRead{"s1"}), IsOk());
  EXPECT_THAT(bench.say(ActDone{"s1", true, "G-1", "2026-03-03"}),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("expired on 2026-03-03")));
  EXPECT_THAT(bench.say(ActDone{"s1", true, "G-1", "tomorrow"}), FailsWith(ErrorCode::InvalidInput));
  EXPECT_THAT(bench.say(ActDone{"s1", true, "G-1", "2026-03-04"}), IsOk()) << "good on its last day";
  ASSERT_THAT(bench.say(CheckMade{"s2", Answer::Yes, ""}), IsOk());
  ASSERT_THAT(bench.say(Measured{"s3", "0.05", "mm", ""}), IsOk());
  EXPECT_THAT(bench.say(Applied{"s4", "B-77", "2026-03-03"}), FailsWith(ErrorCode::OutOfRange));
  EXPECT_THAT(bench.say(Applied{"s4", "B-77", "2026-03-04"}), IsOk());
}

TEST_F(LateEntry, TakesABatchThatWasGoodOnItsDay) {
  ASSERT_THAT(sayDone("2026-02-20T10:00:00+01:00", WarningsRead{"s1"}), IsOk());
  EXPECT_THAT(sayDone("2026-02-20T10:00:00+01:00", ActDone{"s1", true, "G-1", "2026-02-19"}),
              FailsWith(ErrorCode::OutOfRange));
  EXPECT_THAT(sayDone("2026-02-20T10:00:00+01:00", ActDone{"s1", true, "G-1", "2026-02-20"}), IsOk());
}

TEST_F(LateEntry, ComesInTheOrderInWhichTheWorkWasDone) {
  EXPECT_THAT(sayDone("2026-03-05T10:00:00+01:00", WarningsRead{"s1"}),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("has not come yet")));
  ASSERT_THAT(sayDone("2026-03-03T10:00:00+01:00", WarningsRead{"s1"}), IsOk());
  EXPECT_THAT(sayDone("2026-03-03T09:59:59+01:00", ActDone{"s1", true, "", ""}),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("in the order in which it was done")));
  ASSERT_THAT(sayDone("2026-03-03T10:00:00+01:00", ActDone{"s1", true, "", ""}), IsOk())
      << "at the same moment";
  ASSERT_THAT(bench.say(CheckMade{"s2", Answer::Yes, ""}), IsOk());
  EXPECT_THAT(sayDone("2026-03-03T12:00:00+01:00", Measured{"s3", "0.05", "mm", ""}),
              FailsWith(ErrorCode::OutOfRange))
      << "before what was entered on time";
}

}  // namespace
}  // namespace cw

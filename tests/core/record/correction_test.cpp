#include <gmock/gmock.h>

#include "core/units/stated_json.h"
#include "tests/support/matchers.h"
#include "tests/support/sample_job.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;

constexpr std::size_t kCover = 4;

/// The cover is tightened and its check pass has settled.
class CorrectionOf : public testing::Test {
 protected:
  void SetUp() override {
    ASSERT_EQ(bench.workThrough("s5"), "");
    pulled = entryOfKind(bench.job(), "tightened", "position", "3");
  }
  const StepProgress& cover() { return bench.job().steps[kCover]; }
  Corrected reading(int of, const char* digits) {
    Json now;
    now.set("known", "read").set("reading", toJson(inLbf(digits)));
    return {of, now, "the pointer was read later"};
  }

  Bench bench;
  int pulled = 0;
};

TEST_F(CorrectionOf, ATighteningIsJudgedLikeTheFirstEntry) {
  ASSERT_EQ(cover().state, StepState::Done);
  ASSERT_THAT(bench.say(reading(pulled, "180")), IsOk());
  EXPECT_FALSE(std::get<Tightened>(bench.job().kept(pulled).body()).within);
  EXPECT_EQ(cover().state, StepState::Open);
  EXPECT_FALSE(cover().tightening.tightened.contains("3"));
  EXPECT_EQ(cover().tightening.tightened.size(), 3u);
  for (const Kept& kept : bench.job().entries)
    if (std::holds_alternative<CheckPassMade>(kept.entry.body)) {
      EXPECT_TRUE(kept.overtaken);
    }
  EXPECT_THAT(bench.say(Finished{}), FailsWith(ErrorCode::OutOfTurn));
}

TEST_F(CorrectionOf, ATighteningToOutsideIsMadeGoodByPullingThatPositionAlone) {
  ASSERT_THAT(bench.say(reading(pulled, "180")), IsOk());
  EXPECT_EQ(next(bench.job()), (Next{Stage::SetTool, kCover, 2, "3"}));
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("65"))), IsOk());
  ASSERT_THAT(bench.say("otto", settingSeen("T-07", inLbf("65"))), IsOk());
  EXPECT_THAT(bench.say(clicked("s5", "2")), FailsWith(ErrorCode::AlreadyDone));
  ASSERT_THAT(bench.say(clicked("s5", "3")), IsOk());
  ASSERT_THAT(bench.say(checkPass("s5", {})), IsOk());
  EXPECT_EQ(cover().state, StepState::Done);
}

TEST_F(CorrectionOf, ATighteningWithinTheToleranceDisturbsNothing) {
  ASSERT_THAT(bench.say(reading(pulled, "67")), IsOk());
  EXPECT_EQ(cover().state, StepState::Done);
  EXPECT_EQ(std::get<Tightened>(bench.job().kept(pulled).body()).reading->digits, "67");
  EXPECT_EQ(std::get<Tightened>(bench.job().kept(pulled).entry.body).reading, std::nullopt);
}

TEST_F(CorrectionOf, AReadingIsRefusedAsAFirstOneWouldBe) {
  EXPECT_THAT(bench.say(reading(pulled, "650")),
              FailsWith(ErrorCode::OutOfRange, HasSubstr("10 times the target")));
  EXPECT_THAT(bench.say(correction(pulled, "known", "read")),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("the reading is missing")));
  EXPECT_THAT(bench.say(correction(pulled, "reading", toJson(inLbf("66")))),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("a click is no reading")));
  EXPECT_THAT(bench.say(correction(pulled, "within", true)),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("within")));
  EXPECT_THAT(bench.say(correction(pulled, "position", "2")),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("position")));
}

TEST_F(CorrectionOf, AMeasurementMustBeANumber) {
  const int measured = entryOfKind(bench.job(), "measured");
  for (const char* value : {"abc", "", "0,05 mm", "1e999", "0x10", " 0.05"})
    EXPECT_THAT(bench.say(correction(measured, "value", value)), FailsWith(ErrorCode::InvalidInput)) << value;
  EXPECT_EQ(bench.job().steps[2].state, StepState::Done);
  EXPECT_THAT(bench.say(correction(measured, "unit", "in")),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("in")));
}

TEST_F(CorrectionOf, ACheckToNoReopensItsStep) {
  ASSERT_THAT(bench.say(correction(entryOfKind(bench.job(), "checked"), "answer", "no")), IsOk());
  EXPECT_EQ(bench.job().steps[1].state, StepState::Open);
  EXPECT_EQ(next(bench.job()), (Next{Stage::Check, 1}));
}

TEST_F(CorrectionOf, AnEntryThatSaysSoAlreadyIsRefused) {
  const int measured = entryOfKind(bench.job(), "measured");
  EXPECT_THAT(bench.say(correction(measured, "value", "0.05")),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("says already")));
  EXPECT_THAT(bench.say(Corrected{measured, Json(Json::Object{}), "a slip"}),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("says already")));
  EXPECT_THAT(bench.say(Corrected{measured, {}, "a slip"}),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("what it should have been")));
  ASSERT_THAT(bench.say(correction(measured, "value", "0.06")), IsOk());
  EXPECT_THAT(bench.say(correction(measured, "value", "0.06")),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("says already")));
}

TEST_F(CorrectionOf, ACorrectedEntryGoesOnFromWhatHoldsNow) {
  const int measured = entryOfKind(bench.job(), "measured");
  ASSERT_THAT(bench.say(correction(measured, "gauge", "F-2")), IsOk());
  const int first = bench.job().count();
  ASSERT_THAT(bench.say(correction(measured, "value", "0.06")), IsOk());
  const auto& now = std::get<Measured>(bench.job().kept(measured).body());
  EXPECT_EQ(now.gauge, "F-2");
  EXPECT_EQ(now.value, "0.06");
  EXPECT_EQ(bench.job().kept(measured).correctedBy, first + 1);
  EXPECT_EQ(bench.job().kept(first).correctedBy, first + 1);
  EXPECT_THAT(bench.say(correction(first, "reason", "another")),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("is not corrected")));
}

TEST_F(CorrectionOf, BackAndForthLeavesTheStepAsItSaysLast) {
  const int checked = entryOfKind(bench.job(), "checked");
  ASSERT_THAT(bench.say(correction(checked, "answer", "no")), IsOk());
  ASSERT_THAT(bench.say(correction(checked, "answer", "yes")), IsOk());
  EXPECT_EQ(bench.job().steps[1].state, StepState::Done);
  ASSERT_THAT(bench.say(correction(checked, "answer", "no")), IsOk());
  ASSERT_THAT(bench.say(CheckMade{"s2", Answer::Yes, "looked again"}), IsOk());
  EXPECT_EQ(bench.job().steps[1].state, StepState::Done);
}

TEST_F(CorrectionOf, AnOvertakenEntryIsRefused) {
  ASSERT_THAT(bench.say(TakenApart{"s5", "a drip"}), IsOk());
  EXPECT_THAT(bench.say(reading(pulled, "67")),
              FailsWith(ErrorCode::AlreadyDone, HasSubstr("no longer holds")));
}

TEST_F(CorrectionOf, APositionNeverPulledIsReopenedAlone) {
  ASSERT_THAT(bench.say(Reopened{"s5", "3", "signed and never pulled"}), IsOk());
  EXPECT_TRUE(bench.job().kept(pulled).overtaken);
  EXPECT_EQ(next(bench.job()), (Next{Stage::SetTool, kCover, 2, "3"}));
  EXPECT_EQ(cover().tightening.tightened, (std::set<std::string>{"1", "2", "4"}));
  EXPECT_EQ(bench.job().steps[0].state, StepState::Done) << "its new parts stay fitted";
  EXPECT_THAT(bench.say(Reopened{"s5", "3", "again"}), FailsWith(ErrorCode::OutOfTurn));
  EXPECT_THAT(bench.say(Reopened{"s5", "9", "again"}), FailsWith(ErrorCode::NotFound));
  EXPECT_THAT(bench.say(Reopened{"s5", "1", " "}), FailsWith(ErrorCode::InvalidInput));
}

TEST_F(CorrectionOf, ManyEntriesHasAnEnd) {
  const int measured = entryOfKind(bench.job(), "measured");
  for (int i = 0; i < 500; ++i)
    ASSERT_THAT(bench.say(correction(measured, "gauge", "F-" + std::to_string(i))), IsOk());
  EXPECT_THAT(bench.say(correction(measured, "gauge", "F")), FailsWith(ErrorCode::OutOfRange));
}

}  // namespace
}  // namespace cw

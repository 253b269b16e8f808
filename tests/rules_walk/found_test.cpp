#include <gtest/gtest.h>

#include "core/record/judge.h"
#include "core/record/next.h"
#include "tests/support/matchers.h"
#include "tests/support/sample_job.h"

namespace cw::test {
namespace {

// What the walk at random found, each by itself.

TEST(FoundByTheWalk, ADoerWithoutANameIsRefusedAndNoCrash) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s1"), "");
  const auto line = readDraftLine(
      R"({"kind":"checked","step":"s2","answer":"yes","by":"","entered_by":"mira"})", 1, bench.job().id);
  ASSERT_THAT(line, IsOk());
  EXPECT_THAT(bench.say(line->draft), FailsWith(ErrorCode::InvalidInput));
}

/// Written down, it could not be read again, and the job with it.
TEST(FoundByTheWalk, ANamelessDoerIsRefusedInTheProgramsOwnEntriesToo) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  ASSERT_THAT(bench.say(HandStarted{"s5", 4, {}}), IsOk());
  ASSERT_THAT(bench.say(ConditionConfirmed{"s5", "dry"}), IsOk());
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("33"))), IsOk());
  ToolStopped stopped;
  stopped.tool = "T-07";
  Draft draft = bench.draftOf("mira", stopped);
  draft.by = {{"", ""}, {"mira", ""}};
  EXPECT_THAT(bench.say(draft), FailsWith(ErrorCode::InvalidInput));
}

/// The hold at the end looked at marks; a position is then pulled anew.
TEST(FoundByTheWalk, AHoldLooksAgainAtWhatWasDoneAfterIt) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s6"), "");
  ASSERT_EQ(bench.job().steps[5].state, StepState::Done);
  ASSERT_THAT(bench.say(Reopened{"s5", "3", "never pulled"}), IsOk());
  EXPECT_EQ(bench.job().steps[5].state, StepState::Open);
  EXPECT_FALSE(shortfallsOf(bench.job()).empty());
}

TEST(FoundByTheWalk, AStepSetAsideAndDoneAfterTheHoldIsLookedAt) {
  Sheet sheet = sampleSheet();
  std::erase_if(sheet.steps, [](const Step& step) { return step.kind == StepKind::Tighten; });
  Bench bench(sheet);
  ASSERT_EQ(bench.workThrough("s1"), "");
  ASSERT_THAT(bench.say(SetAside{"s2", "later"}), IsOk());
  ASSERT_THAT(bench.say(Measured{"s3", "0.05", "mm", ""}), IsOk());
  ASSERT_THAT(bench.say(Applied{"s4", "B-77", "2026-12-31"}), IsOk());
  ASSERT_THAT(bench.say("otto", SignedIn{}), IsOk());
  Witnessed marks;
  marks.step = "s6", marks.what = {"marks"};
  ASSERT_THAT(bench.say("otto", marks), IsOk());
  ASSERT_THAT(bench.say(CheckMade{"s2", Answer::Yes, ""}), IsOk());
  const Next now = next(bench.job());
  EXPECT_EQ(now.stage, Stage::Hold);
  EXPECT_THAT(bench.say("otto", marks), IsOk());
  EXPECT_THAT(bench.say(Finished{}), IsOk());
}

/// The wrench was set and looked at twice; the position reopened was pulled before the second time.
TEST(FoundByTheWalk, ReopeningAPositionKeepsTheLookBeforeTheOthers) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  ASSERT_THAT(bench.say(HandStarted{"s5", 4, {}}), IsOk());
  ASSERT_THAT(bench.say(ConditionConfirmed{"s5", "dry"}), IsOk());
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("33"))), IsOk());
  ASSERT_THAT(bench.say(counted("s5", 4)), IsOk());
  ASSERT_THAT(bench.say("otto", SignedIn{}), IsOk());
  Witnessed seen;
  seen.step = "s5", seen.manner = Manner::Independent, seen.what = {"setting"}, seen.tool = "T-07";
  const auto setAndLook = [&](const char* setting) {
    ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf(setting))), IsOk());
    seen.setting = inLbf(setting);
    ASSERT_THAT(bench.say("otto", seen), IsOk());
  };
  setAndLook("65");
  ASSERT_THAT(bench.say(clicked("s5", "1")), IsOk());
  setAndLook("66");
  const int second = bench.job().count();
  for (const char* position : {"3", "2", "4"}) ASSERT_THAT(bench.say(clicked("s5", position)), IsOk());
  ASSERT_THAT(bench.say(Reopened{"s5", "1", "never pulled"}), IsOk());
  EXPECT_FALSE(bench.job().kept(second).overtaken);
  EXPECT_THAT(bench.say(clicked("s5", "1")), FailsWith(ErrorCode::OutOfTurn));
  setAndLook("67");
  EXPECT_THAT(bench.say(clicked("s5", "1")), IsOk());
}

/// Paused between the last pull and the check pass: the look at the wrench was at those pulls and stays.
TEST(FoundByTheWalk, RepeatingInTheCheckPassKeepsTheLookBeforeThePulls) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  ASSERT_THAT(bench.say(HandStarted{"s5", 4, {}}), IsOk());
  ASSERT_THAT(bench.say(ConditionConfirmed{"s5", "dry"}), IsOk());
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("33"))), IsOk());
  ASSERT_THAT(bench.say(counted("s5", 4)), IsOk());
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("65"))), IsOk());
  ASSERT_THAT(bench.say("otto", SignedIn{}), IsOk());
  Witnessed seen;
  seen.step = "s5", seen.manner = Manner::Independent, seen.what = {"setting"};
  seen.tool = "T-07", seen.setting = inLbf("65");
  ASSERT_THAT(bench.say("otto", seen), IsOk());
  const int look = bench.job().count();
  for (const char* position : {"1", "3", "2", "4"}) ASSERT_THAT(bench.say(clicked("s5", position)), IsOk());
  ASSERT_THAT(bench.say(Paused{}), IsOk());
  ASSERT_THAT(bench.say(SignedIn{}), IsOk());
  ASSERT_THAT(bench.say(Resumed{true}), IsOk());
  EXPECT_EQ(next(bench.job()).stage, Stage::CheckPass);
  EXPECT_FALSE(bench.job().kept(look).overtaken);
}

}  // namespace
}  // namespace cw::test

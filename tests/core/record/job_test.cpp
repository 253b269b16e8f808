#include "core/record/job.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "core/record/verify.h"
#include "tests/support/sample_job.h"

namespace cw {
namespace {

using namespace test;

std::string refusal(const Result<void>& said) {
  return said ? "allowed" : sentence(said.error());
}

TEST(Job, RunsFromStartToFinish) {
  Bench bench;
  EXPECT_EQ(bench.workThrough(""), "");
  EXPECT_TRUE(bench.job().finished);
  EXPECT_EQ(next(bench.job()).stage, Stage::Nothing);
}

TEST(Job, IsTheFoldOfItsEntries) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s5"), "");
  Job again = *emptyJob(bench.job().shop, bench.job().id, bench.job().sheetBytes);
  for (const Kept& kept : bench.job().entries) {
    const auto read = entryFromJson(*parseJson(canonical(entryToJson(kept.entry))), "entry");
    ASSERT_TRUE(read.has_value()) << sentence(read.error());
    auto judged = judge(again, *read, From::Chain);
    ASSERT_TRUE(judged.has_value()) << sentence(judged.error());
    apply(again, *std::move(judged));
  }
  EXPECT_EQ(again.head, bench.job().head);
  EXPECT_EQ(next(again), next(bench.job()));
}

TEST(Job, NamesTheExactPositionToGoOnFrom) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  EXPECT_EQ(next(bench.job()).stage, Stage::HandStart);
  ASSERT_TRUE(bench.say(HandStarted{"s5", 3, {"2"}}));
  EXPECT_EQ(next(bench.job()).stage, Stage::HandStart);  // one would not start: clear it first
  ASSERT_TRUE(bench.say(HandStarted{"s5", 4, {}}));
  EXPECT_EQ(next(bench.job()).stage, Stage::ConfirmCondition);
}

TEST(Job, KeepsTheOrderOfPositions) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  ASSERT_TRUE(bench.say(HandStarted{"s5", 4, {}}));
  ASSERT_TRUE(bench.say(ConditionConfirmed{"s5", "dry"}));
  ASSERT_TRUE(bench.say(toolSet("s5", "T-07", inLbf("33"))));
  EXPECT_NE(refusal(bench.say(counted("s5", 3))).find("all 4 are to be done"), std::string::npos);
  ASSERT_TRUE(bench.say(counted("s5", 4)));
  ASSERT_TRUE(bench.say(toolSet("s5", "T-07", inLbf("65"))));
  Tightened pulled;
  pulled.position = "1";
  EXPECT_NE(refusal(bench.say(pulled)).find("have the second person look"), std::string::npos);
  ASSERT_TRUE(bench.say("otto", SignedIn{}));
  ASSERT_TRUE(bench.say("otto", settingSeen("T-07", inLbf("65"))));
  ASSERT_TRUE(bench.say(pulled));
  EXPECT_NE(refusal(bench.say(pulled)).find("tightened already"), std::string::npos);
  pulled.position = "2";
  EXPECT_NE(refusal(bench.say(pulled)).find("position 3 is"), std::string::npos);
  pulled.position = "9";
  EXPECT_NE(refusal(bench.say(pulled)).find("no position “9”"), std::string::npos);
}

TEST(Job, AMismatchedSecondEntryKeepsTheHoldShut) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  for (Body body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                     toolSet("s5", "T-07", inLbf("33")), counted("s5", 4),
                                     toolSet("s5", "T-07", inLbf("65"))})
    ASSERT_TRUE(bench.say(body));
  EXPECT_NE(refusal(bench.say(settingSeen("T-07", inLbf("65")))).find("cannot be the second person"),
            std::string::npos);
  ASSERT_TRUE(bench.say("otto", SignedIn{}));
  ASSERT_TRUE(bench.say("otto", settingSeen("T-07", inLbf("56"))));
  EXPECT_EQ(next(bench.job()).stage, Stage::WitnessBeforeFinal);
}

TEST(Job, PausesAndResumesAtThePosition) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s2"), "");
  const Next before = next(bench.job());
  ASSERT_TRUE(bench.say(Paused{"counter bell", false, "", ""}));
  EXPECT_NE(refusal(bench.say(Measured{"s3", "0.05", "mm", ""})).find("paused"), std::string::npos);
  EXPECT_NE(refusal(bench.say(Resumed{})).find("sign in"), std::string::npos);
  ASSERT_TRUE(bench.say(SignedIn{}));
  ASSERT_TRUE(bench.say(Resumed{}));
  EXPECT_EQ(next(bench.job()), before);
}

TEST(Job, TakingApartAsksForTheSingleUsePartAnew) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s5"), "");
  ASSERT_TRUE(bench.say(TakenApart{"s1", "weeps at position 3"}));
  EXPECT_EQ(next(bench.job()).stage, Stage::ReadWarnings);
  ASSERT_TRUE(bench.say(WarningsRead{"s1"}));
  EXPECT_NE(refusal(bench.say(ActDone{"s1", false, "", ""})).find("used once only"), std::string::npos);
  const auto overtaken = std::count_if(bench.job().entries.begin(), bench.job().entries.end(),
                                       [](const Kept& kept) { return kept.overtaken; });
  EXPECT_GT(overtaken, 10);
}

TEST(Job, ReadingsAreJudgedOnTheScaleInUse) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  for (Body body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                     toolSet("s5", "T-07", inLbf("33")), counted("s5", 4),
                                     toolSet("s5", "T-07", inLbf("65"))})
    ASSERT_TRUE(bench.say(body));
  ASSERT_TRUE(bench.say("otto", SignedIn{}));
  ASSERT_TRUE(bench.say("otto", settingSeen("T-07", inLbf("65"))));
  Tightened pulled;
  pulled.position = "1";
  pulled.known = Known::Read;
  EXPECT_NE(refusal(bench.say(pulled)).find("the reading is missing"), std::string::npos);
  pulled.reading = StatedTorque{"7.3", &kNewtonMetre};
  EXPECT_NE(refusal(bench.say(pulled)).find("not on the scale in use"), std::string::npos);
  pulled.reading = inLbf("650");
  EXPECT_NE(refusal(bench.say(pulled)).find("10 times the target"), std::string::npos);
  pulled.reading = inLbf("74");
  ASSERT_TRUE(bench.say(pulled));  // recorded, but the position stays to be done
  EXPECT_EQ(next(bench.job()).position, "1");
  pulled.reading = inLbf("66");
  ASSERT_TRUE(bench.say(pulled));
  EXPECT_EQ(next(bench.job()).position, "3");
}

/// The second person, then every position of the final pass.
void pullAll(Bench& bench) {
  ASSERT_TRUE(bench.say("otto", SignedIn{}));
  ASSERT_TRUE(bench.say("otto", settingSeen("T-07", inLbf("65"))));
  for (const char* position : {"1", "3", "2", "4"}) {
    Tightened pulled;
    pulled.position = position;
    ASSERT_TRUE(bench.say(pulled));
  }
}

TEST(Job, ACheckPassThatNeverSettlesStops) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  ASSERT_EQ(bench.workThrough("s4") == "", false);  // nothing of it can be said twice
  for (Body body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                     toolSet("s5", "T-07", inLbf("33")), counted("s5", 4),
                                     toolSet("s5", "T-07", inLbf("65"))})
    ASSERT_TRUE(bench.say(body));
  pullAll(bench);
  ASSERT_TRUE(bench.say(checkPass("s5", {"1"})));
  ASSERT_TRUE(bench.say(checkPass("s5", {"1"})));
  EXPECT_NE(refusal(bench.say(checkPass("s5", {}))).find("stop: find the cause"), std::string::npos);
}

Sheet withGaps(std::vector<std::size_t> afterPasses, bool checkPass) {
  Sheet sheet = test::sampleSheet();
  PassPlan& plan = sheet.joints.front().passes;
  plan.gaps = GapReadings{4, std::move(afterPasses), {"0.8", &kMillimetre}};
  if (!checkPass) plan.check.reset();
  return sheet;
}

/// Up to the moment after the first pass.
void countFirstPass(Bench& bench) {
  ASSERT_EQ(bench.workThrough("s4"), "");
  for (Body body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                     toolSet("s5", "T-07", inLbf("33")), counted("s5", 4)})
    ASSERT_TRUE(bench.say(body));
}

TEST(Job, ReadsTheGapsBetweenPassesUntilTheyAreEven) {
  Bench bench(withGaps({1}, true));
  countFirstPass(bench);
  EXPECT_EQ(next(bench.job()), (Next{Stage::ReadGaps, 4, 1, {}, 0}));
  EXPECT_NE(refusal(bench.say(toolSet("s5", "T-07", inLbf("65")))).find("measure the gap"),
            std::string::npos);
  EXPECT_NE(refusal(bench.say(gapsOf({"1", "1.2", "1.1"}))).find("the sheet asks for 4"), std::string::npos);
  EXPECT_NE(refusal(bench.say(gapsOf({"1", "1.2", "1.1", "250"}))).find("is no gap"), std::string::npos);

  ASSERT_TRUE(bench.say(gapsOf({"1", "1.2", "1.85", "1.1"})));
  EXPECT_TRUE(leftOpen(bench.job()));
  EXPECT_EQ(next(bench.job()).stage, Stage::ReadGaps);

  GapsRead mixed = gapsOf({"1", "1.2", "1.1"});
  mixed.gaps.push_back({"0.07", &kInch});  // 1.778 mm, 0.778 mm above the narrowest
  ASSERT_TRUE(bench.say(mixed));
  EXPECT_FALSE(leftOpen(bench.job()));
  EXPECT_EQ(next(bench.job()), (Next{Stage::SetTool, 4, 2, {}, 0}));
}

TEST(Job, GoesOnWithUnevenFacesByALeadsWordOnly) {
  Bench bench(withGaps({1}, true));
  countFirstPass(bench);
  GapsRead uneven = gapsOf({"1", "1", "2", "1"});
  uneven.allowedBy = "otto", uneven.reason = "the flange is bent";
  EXPECT_NE(refusal(bench.say(uneven)).find("no shop lead"), std::string::npos);
  uneven.allowedBy = "lena", uneven.reason = " ";
  EXPECT_NE(refusal(bench.say(uneven)).find("are let be for a reason"), std::string::npos);
  uneven.reason = "the flange is bent";
  ASSERT_TRUE(bench.say(uneven));
  EXPECT_EQ(next(bench.job()).stage, Stage::SetTool);
  EXPECT_EQ(namedIn(*bench.job().last()).people, (std::set<std::string>{"lena", "mira"}));
}

TEST(Job, WithGapsThatALeadLetBeIsSealedAndNamesTheLead) {
  Bench bench(withGaps({1}, true));
  countFirstPass(bench);
  GapsRead uneven = gapsOf({"1", "1", "2", "1"});
  uneven.allowedBy = "lena", uneven.reason = "the flange is bent";
  ASSERT_TRUE(bench.say(uneven));
  ASSERT_TRUE(bench.say(toolSet("s5", "T-07", inLbf("65"))));
  pullAll(bench);
  ASSERT_TRUE(bench.say(checkPass("s5", {})));
  ASSERT_TRUE(bench.say("otto", marksSeen()));
  EXPECT_EQ(refusal(bench.say(Finished{})), "allowed");
  const SecretKey key = makeKey();
  const auto sealed = sealRecord(bench.job(), bench.context(), key);
  ASSERT_TRUE(sealed) << sentence(sealed.error());
  EXPECT_TRUE(verifyRecord(*sealed, publicOf(key)).good());
  const auto record = readRecord(*sealed);
  ASSERT_TRUE(record);
  EXPECT_TRUE(std::any_of(record->people.begin(), record->people.end(),
                          [](const Person& person) { return person.name == "Lena Fjord"; }));
}

TEST(Job, IsNotThroughBeforeTheLastGapsAreRead) {
  Bench bench(withGaps({2}, false));
  countFirstPass(bench);
  ASSERT_TRUE(bench.say(toolSet("s5", "T-07", inLbf("65"))));
  pullAll(bench);
  EXPECT_EQ(next(bench.job()), (Next{Stage::ReadGaps, 4, 2, {}, 0}));
  ASSERT_TRUE(bench.say(gapsOf({"0", "0", "0", "0"})));
  EXPECT_EQ(bench.job().steps[4].state, StepState::Done);
}

TEST(Job, RefusesAToolThatIsUnfitUnlessALeadAllowsIt) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  for (Body body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                     toolSet("s5", "T-08", inLbf("33")), counted("s5", 4)})
    ASSERT_TRUE(bench.say(body));  // an early pass needs range and unit only
  EXPECT_NE(refusal(bench.say(toolSet("s5", "T-99", inLbf("65")))).find("no tool “T-99”"), std::string::npos);
  EXPECT_NE(refusal(bench.say(toolSet("s5", "T-08", inLbf("65")))).find("ran out on 2026-02-01"),
            std::string::npos);
  EXPECT_NE(refusal(bench.say(allowedTool(toolSet("s5", "T-08", inLbf("65")), "otto", "only one")))
                .find("no shop lead"),
            std::string::npos);
  EXPECT_NE(refusal(bench.say(toolSet("s5", "T-07", inLbf("56")))).find("not the specified torque"),
            std::string::npos);
  const ToolSet checked =
      allowedTool(toolSet("s5", "T-08", inLbf("65")), "lena", "checked on the tester today");
  EXPECT_NE(refusal(bench.say(checked)).find("must say so in person"), std::string::npos);
  Draft phoned = bench.draftOf("mira", checked);
  phoned.byPhone = true;
  EXPECT_NE(refusal(bench.say(phoned)).find("must say so in person"), std::string::npos);
  EXPECT_EQ(refusal(bench.say(bench.draftOf("mira", checked), {"lena"})), "allowed");
}

TEST(Job, CorrectionsKeepBothValues) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s3"), "");
  const int of = bench.job().count();
  ASSERT_EQ(refusal(bench.say(correction(of, "value", "0.25", "misread the dial"))), "allowed");
  EXPECT_EQ(bench.job().entries[static_cast<std::size_t>(of - 1)].correctedBy, of + 1);
  EXPECT_EQ(next(bench.job()).stage, Stage::Measure);  // 0.25 is out of limits: the step is open again
  EXPECT_EQ(std::get<Measured>(bench.job().kept(of).entry.body).value, "0.05");
  EXPECT_EQ(std::get<Measured>(bench.job().kept(of).body()).value, "0.25");
}

TEST(Job, AnApprenticeNamesASupervisor) {
  Bench bench;
  ASSERT_TRUE(bench.start());
  EXPECT_NE(refusal(bench.say("ada", SignedIn{})).find("apprentice"), std::string::npos);
  EXPECT_NE(refusal(bench.say("wim", SignedIn{})).find("neither technician"), std::string::npos);
  EXPECT_NE(refusal(bench.say("nobody", SignedIn{})).find("nobody here signs"), std::string::npos);
}

}  // namespace
}  // namespace cw

#include <gmock/gmock.h>

#include "tests/support/matchers.h"
#include "tests/support/sample_job.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;

constexpr std::size_t kCover = 4;

Draft with(Bench& bench, const char* tool, Body body) {
  Draft out = bench.draftOf("mira", std::move(body));
  out.by = {{"mira", tool}};
  return out;
}

TEST(Wrench, OfAPullIsOneThatIsSetForThePass) {
  Bench bench;
  ASSERT_EQ(untilThePulls(bench), "");
  for (const char* other : {"T-08", "T-99", "t-07"})
    EXPECT_THAT(bench.say(with(bench, other, clicked("s5", "1"))),
                FailsWith(ErrorCode::OutOfTurn, HasSubstr(other)))
        << other;
  Draft two = bench.draftOf("mira", clicked("s5", "1"));
  two.by = {{"mira", "T-07"}, {"lena", "T-08"}};
  EXPECT_THAT(bench.say(two), FailsWith(ErrorCode::OutOfTurn, HasSubstr("T-08")));
  EXPECT_THAT(bench.say(with(bench, "T-07", clicked("s5", "1"))), IsOk());
  EXPECT_EQ(bench.job().last()->by.front().tool, "T-07");
  for (const char* position : {"3", "2", "4"}) ASSERT_THAT(bench.say(clicked("s5", position)), IsOk());
  EXPECT_THAT(bench.say(with(bench, "T-08", checkPass("s5", {}))), FailsWith(ErrorCode::OutOfTurn));
}

TEST(Wrench, OfAnEarlyPassIsOneThatIsSetForIt) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  for (const Body& body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                            toolSet("s5", "T-07", inLbf("33"))})
    ASSERT_THAT(bench.say(body), IsOk());
  EXPECT_THAT(bench.say(with(bench, "T-08", counted("s5", 4))), FailsWith(ErrorCode::OutOfTurn));
  EXPECT_THAT(bench.say(with(bench, "T-07", CheckMade{"s2", Answer::Yes, ""})),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("no torque tool")));
}

TEST(Wrench, ThatIsDroppedInMidPassIsNotUsedOn) {
  Bench bench;
  ASSERT_EQ(untilThePulls(bench), "");
  ASSERT_THAT(bench.say(clicked("s5", "1")), IsOk());
  ASSERT_THAT(bench.say(clicked("s5", "3")), IsOk());
  EXPECT_FALSE(stoppedTool(bench.job(), bench.floor()));
  bench.tools()[0].dueNow = *parseDate("2026-03-04");
  const auto stopped = stoppedTool(bench.job(), bench.floor());
  ASSERT_TRUE(stopped);
  ASSERT_THAT(bench.say(*stopped), IsOk());
  const auto& said = std::get<ToolStopped>(bench.job().last()->body);
  EXPECT_EQ(said.tool, "T-07");
  EXPECT_EQ(said.why, Stop::Dropped);
  EXPECT_EQ(said.since.value, "2026-03-04");
  EXPECT_EQ(said.positions.value, (std::vector<std::string>{"1", "3"}));
  EXPECT_THAT(bench.say(clicked("s5", "2")), FailsWith(ErrorCode::OutOfTurn, HasSubstr("set the wrench")));
  EXPECT_THAT(bench.say(toolSet("s5", "T-07", inLbf("65"))), FailsWith(ErrorCode::NotPermitted));
  EXPECT_FALSE(stoppedTool(bench.job(), bench.floor())) << "said once";
}

TEST(Wrench, ThatIsDoubtedSetsNoPassAtAll) {
  for (const auto doubt : {+[](TorqueTool& tool) { tool.dueNow = *parseDate("2026-03-01"); },
                           +[](TorqueTool& tool) { tool.status = ToolStatus::Quarantined; },
                           +[](TorqueTool& tool) { tool.status = ToolStatus::Retired; }}) {
    Bench bench;
    doubt(bench.tools()[0]);
    ASSERT_EQ(bench.workThrough("s4"), "");
    ASSERT_THAT(bench.say(HandStarted{"s5", 4, {}}), IsOk());
    ASSERT_THAT(bench.say(ConditionConfirmed{"s5", "dry"}), IsOk());
    const ToolSet set = toolSet("s5", "T-07", inLbf("33"));
    EXPECT_THAT(bench.say(set), FailsWith(ErrorCode::NotPermitted));
    EXPECT_THAT(bench.say(allowedTool(set, "otto", "there is no other")), FailsWith(ErrorCode::NotPermitted));
    ASSERT_THAT(bench.say(allowedTool(set, "lena", "there is no other")), IsOk());
    EXPECT_TRUE(namedIn(*bench.job().last()).people.contains("lena"));
    EXPECT_FALSE(stoppedTool(bench.job(), bench.floor())) << "a lead knew of it";
  }
}

TEST(Wrench, WhoAllowedARefusedOneIsNamedByItsEntry) {
  Bench bench;
  ASSERT_EQ(untilThePulls(bench), "");
  ASSERT_THAT(
      bench.say(bench.draftOf("mira", allowedTool(toolSet("s5", "T-08", inLbf("65")), "lena", "no other")),
                {"lena"}),
      IsOk());
  EXPECT_EQ(namedIn(*bench.job().last()).people, (std::set<std::string>{"lena", "mira"}));
  EXPECT_EQ(namedIn(*bench.job().last()).tools, (std::set<std::string>{"T-08"}));
}

/// Position 4 is smaller and takes 50 to 56 in·lbf on oiled threads; the others take 60 to 70 on dry ones.
Sheet twoTorques() {
  Sheet sheet = sampleSheet();
  Specification light = sheet.specifications.front();
  light.id = "light", light.printed = "50-56 in. lbs.", light.condition = "oiled";
  light.low = inLbf("50"), light.aim = inLbf("53"), light.high = inLbf("56");
  sheet.specifications.push_back(light);
  sheet.joints.front().positions["4"].specification = "light";
  sheet.steps[kCover].hold.reset();
  return sheet;
}

class TwoTorques : public testing::Test {
 protected:
  void SetUp() override {
    ASSERT_EQ(bench.workThrough("s4"), "");
    ASSERT_THAT(bench.say(HandStarted{"s5", 4, {}}), IsOk());
  }
  void confirmBoth() {
    ASSERT_THAT(bench.say(ConditionConfirmed{"s5", "dry"}), IsOk());
    ASSERT_THAT(bench.say(ConditionConfirmed{"s5", "oiled"}), IsOk());
  }
  void countBoth() {
    ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("33"))), IsOk());
    ASSERT_THAT(bench.say(counted("s5", 3)), IsOk());
    ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("27"))), IsOk());
    ASSERT_THAT(bench.say(counted("s5", 1)), IsOk());
  }
  Bench bench{twoTorques()};
};

TEST_F(TwoTorques, AskForEachConditionAndNameItsPositions) {
  EXPECT_EQ(next(bench.job()).condition, "dry");
  EXPECT_EQ(next(bench.job()).positions, (std::vector<std::string>{"1", "3", "2"}));
  EXPECT_THAT(bench.say(ConditionConfirmed{"s5", "oiled"}), FailsWith(ErrorCode::OutOfRange));
  ASSERT_THAT(bench.say(ConditionConfirmed{"s5", "dry"}), IsOk());
  EXPECT_EQ(next(bench.job()).condition, "oiled");
  EXPECT_EQ(next(bench.job()).positions, (std::vector<std::string>{"4"}));
  ASSERT_THAT(bench.say(ConditionConfirmed{"s5", "oiled"}), IsOk());
  EXPECT_EQ(next(bench.job()).stage, Stage::SetTool);
}

TEST_F(TwoTorques, SplitAnEarlyPass) {
  confirmBoth();
  EXPECT_EQ(next(bench.job()).positions, (std::vector<std::string>{"1", "3", "2"}));
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("33"))), IsOk());
  EXPECT_THAT(bench.say(counted("s5", 4)), FailsWith(ErrorCode::OutOfRange, HasSubstr("all 3")));
  ASSERT_THAT(bench.say(counted("s5", 3)), IsOk());
  EXPECT_EQ(next(bench.job()), (Next{Stage::SetTool, kCover, 1, {}, 0, {"4"}}));
  EXPECT_THAT(bench.say(toolSet("s5", "T-07", inLbf("65"))), FailsWith(ErrorCode::OutOfRange))
      << "more than position 4 ever takes";
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("27"))), IsOk());
  ASSERT_THAT(bench.say(counted("s5", 1)), IsOk());
  EXPECT_EQ(std::get<PassCounted>(bench.job().last()->body).positions.value, (std::vector<std::string>{"4"}));
  EXPECT_EQ(bench.job().steps[kCover].tightening.pass, 2);
}

TEST_F(TwoTorques, AskForEachSettingOnTheFinalPass) {
  confirmBoth();
  countBoth();
  EXPECT_THAT(bench.say(toolSet("s5", "T-07", inLbf("53"))), FailsWith(ErrorCode::OutOfRange));
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("65"))), IsOk());
  for (const char* position : {"1", "3", "2"}) ASSERT_THAT(bench.say(clicked("s5", position)), IsOk());
  EXPECT_EQ(next(bench.job()), (Next{Stage::SetTool, kCover, 2, "4"}));
  EXPECT_THAT(bench.say(clicked("s5", "4")), FailsWith(ErrorCode::OutOfTurn));
  EXPECT_THAT(bench.say(toolSet("s5", "T-07", inLbf("65"))), FailsWith(ErrorCode::OutOfRange));
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("53"))), IsOk());
  ASSERT_THAT(bench.say(clicked("s5", "4")), IsOk());
  const auto& last = std::get<Tightened>(bench.job().last()->body);
  EXPECT_EQ(last.target, inLbf("53"));
  EXPECT_EQ(last.setting, inLbf("53"));
  EXPECT_TRUE(last.within);
}

}  // namespace
}  // namespace cw

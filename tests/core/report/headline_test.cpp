#include "core/report/headline.h"

#include <gmock/gmock.h>

#include "core/report/csv.h"
#include "core/report/record_document.h"
#include "tests/support/matchers.h"
#include "tests/support/report_job.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;
using testing::Not;
using testing::StartsWith;

/// Three of the cover's four positions are tightened.
class Headlines : public testing::Test {
 protected:
  void SetUp() override {
    ASSERT_EQ(untilThePulls(bench), "");
    for (const char* position : {"1", "3", "2"}) ASSERT_THAT(bench.say(clicked("s5", position)), IsOk());
    ASSERT_THAT(bench.say("lena", SignedIn{}), IsOk());
  }
  std::string finishedAs(const std::vector<Body>& bodies) {
    Bench copy = bench;
    for (const Body& body : bodies)
      if (const auto said = copy.say("lena", body); !said) return sentence(said.error());
    if (next(copy.job()).stage == Stage::Hold)
      if (const auto seen = copy.say("otto", marksSeen()); !seen) return sentence(seen.error());
    EXPECT_THAT(copy.say("mira", Finished{}), FailsWith(ErrorCode::NotPermitted, HasSubstr("lead")));
    if (const auto end = copy.say("lena", Finished{"", "", "the pump is scrap"}); !end)
      return sentence(end.error());
    const std::string bytes = need(sealRecord(copy.job(), copy.context(), steadyKey()));
    EXPECT_TRUE(verifyRecord(bytes, publicOf(steadyKey())).good());
    const RecordContent content = contentOf(need(readRecord(bytes)), {}, plain);
    EXPECT_EQ(content.exceptions.front().kind, ExceptionKind::NotDone);
    return content.outcome;
  }
  Bench bench;
};

TEST_F(Headlines, CountThePositionsHoweverAJointIsClosedEarly) {
  const auto short3of4 = StartsWith("Not complete: 3 of 4 positions of “Test cover”");
  EXPECT_THAT(finishedAs({LeftBlank{"s5", Absence::NotApplicable, "stripped", ""}}), short3of4);
  EXPECT_THAT(finishedAs({LeftBlank{"s5", Absence::NotRecorded, "stripped", ""}}), short3of4);
  EXPECT_THAT(finishedAs({otherwise("s5", "")}), short3of4);
  EXPECT_THAT(finishedAs({otherwise("s5", "lena")}), short3of4);
  EXPECT_THAT(finishedAs({SetAside{"s5", "later"}, LeftBlank{"s5", Absence::NotRecorded, "stripped", ""}}),
              Not(StartsWith("Complete")));
}

TEST_F(Headlines, CountThePositionsThatACorrectionTookBack) {
  ASSERT_THAT(bench.say(clicked("s5", "4")), IsOk());
  ASSERT_THAT(bench.say(checkPass("s5", {})), IsOk());
  Json now;
  now.set("known", "read").set("reading", toJson(inLbf("180")));
  EXPECT_THAT(finishedAs({Corrected{entryOfKind(bench.job(), "tightened", "position", "2"), now, "read anew"},
                          otherwise("s5", "lena")}),
              StartsWith("Not complete: 3 of 4 positions of “Test cover”"));
  EXPECT_THAT(
      finishedAs({Reopened{"s5", "2", "never pulled"}, LeftBlank{"s5", Absence::NotRecorded, "x", ""}}),
      StartsWith("Not complete: 3 of 4 positions of “Test cover”"));
}

TEST(Headline, NamesACheckThatWasNotAnsweredYes) {
  for (const Body& closing : {Body(LeftBlank{"s2", Absence::NotApplicable, "x", ""}),
                              Body(LeftBlank{"s2", Absence::NotRecorded, "x", ""})}) {
    Bench bench;
    ASSERT_EQ(bench.workThrough("s1"), "");
    ASSERT_THAT(bench.say(CheckMade{"s2", Answer::No, "scratched"}), IsOk());
    ASSERT_THAT(bench.say(closing), IsOk());
    for (const Shortfall& each : shortfallsOf(bench.job()))
      if (each.step == 1) {
        EXPECT_EQ(each.kind, Shortfall::Kind::Check);
        EXPECT_EQ(plain(shortfallText(bench.job(), each)), "the check of step 2 was not answered yes");
      }
    EXPECT_EQ(shortfallsOf(bench.job()).front().step, 1u);
  }
}

TEST(Headline, IsCompleteOnlyWithNothingLeftUndone) {
  Script job = ringJob(4);
  ASSERT_EQ(job.refusal(), "");
  EXPECT_TRUE(shortfallsOf(job.bench().job()).empty());
  Bench withoutWord;
  ASSERT_EQ(withoutWord.workThrough("s6"), "");
  EXPECT_THAT(withoutWord.say("mira", Finished{"", "lena", "x"}), FailsWith(ErrorCode::InvalidInput));
  EXPECT_THAT(withoutWord.say("mira", Finished{}), IsOk());
}

TEST(Exceptions, NameALookThatWasLessThanAsked) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s4"), "");
  for (const Body& body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                            toolSet("s5", "T-07", inLbf("33")), counted("s5", 4),
                                            toolSet("s5", "T-07", inLbf("65"))})
    ASSERT_THAT(bench.say(body), IsOk());
  ASSERT_THAT(bench.say("otto", SignedIn{}), IsOk());
  Witnessed watched = settingSeen("T-07", inLbf("65"));
  watched.manner = Manner::Watched;
  ASSERT_THAT(bench.say("otto", watched), IsOk());
  const auto groups = exceptionsOf(bench.job(), bench.people(), plain);
  EXPECT_THAT(groups, testing::Contains(testing::Field(&ExceptionGroup::kind, ExceptionKind::LessThanAsked)));
}

TEST(Exceptions, NameWhoEnteredAndWhoDidIt) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s1"), "");
  Draft draft = bench.draftOf("mira", CheckMade{"s2", Answer::Yes, ""});
  draft.by = {{"lena", ""}};
  ASSERT_THAT(bench.say(draft), IsOk());
  const RecordContent content = contentOf(bench.job(), bench.floor(), "Test shop", plain);
  EXPECT_THAT(content.entries.back().who, HasSubstr("entered by Mira Sol"));
}

/// A source that states a highest torque only: every place gives the same band.
TEST(NotOver, IsOneBandInHeadingRowsGaugeAndTable) {
  Sheet sheet = sampleSheet();
  Specification& most = sheet.specifications.front();
  most.printed = "not over 70 in. lbs.", most.reading = Reading::Maximum;
  most.low.reset(), most.aim = inLbf("65"), most.high = inLbf("70");
  Bench bench(sheet);
  ASSERT_EQ(untilThePulls(bench), "");
  ASSERT_THAT(bench.say(test::read("s5", "1", inLbf("40"))), IsOk());
  ASSERT_TRUE(std::get<Tightened>(bench.job().last()->body).within);
  ASSERT_THAT(bench.say(clicked("s5", "3")), IsOk());
  const RecordContent content = contentOf(bench.job(), bench.floor(), "Test shop", plain);
  const JointContent& joint = content.joints.front();
  EXPECT_EQ(joint.torque.low.value(), Torque{});
  EXPECT_EQ(joint.torque.high, inLbf("70"));
  for (const TighteningLine& line : joint.lines) {
    EXPECT_EQ(line.low, joint.torque.low);
    EXPECT_EQ(line.high, joint.torque.high);
    EXPECT_EQ(line.within, within(line.reading ? *line.reading : line.setting, joint.torque));
  }
  EXPECT_THAT(csvOfTightenings(content), HasSubstr(",0,65,70,lbf.in,"));
  std::size_t gauges = 0;
  for (const Section& section : recordDocument(content, plain).sections)
    for (const Block& block : section.blocks)
      if (const auto* table = std::get_if<Table>(&block))
        for (const auto& row : table->rows)
          for (const Cell& cell : row)
            if (cell.gauge) {
              EXPECT_GE(cell.gauge->value, 0.0);
              EXPECT_LE(cell.gauge->value, 1.0);
              ++gauges;
            }
  EXPECT_EQ(gauges, 2u);
}

}  // namespace
}  // namespace cw

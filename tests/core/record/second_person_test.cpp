#include <gmock/gmock.h>

#include "tests/support/matchers.h"
#include "tests/support/sample_job.h"

namespace cw {
namespace {

using namespace test;
using testing::HasSubstr;

/// The wrench is set for the final pass, and the second person is to look at setting and count.
class SecondPerson : public testing::Test {
 protected:
  static Sheet sheet() {
    Sheet out = sampleSheet();
    out.steps[4].hold = HoldDemand{Witness::Independent, {"setting", "count"}, {}};
    return out;
  }
  void SetUp() override {
    ASSERT_EQ(bench.workThrough("s4"), "");
    for (const Body& body : std::vector<Body>{HandStarted{"s5", 4, {}}, ConditionConfirmed{"s5", "dry"},
                                              toolSet("s5", "T-07", inLbf("33")), counted("s5", 4),
                                              toolSet("s5", "T-07", inLbf("66"))})
      ASSERT_THAT(bench.say(body), IsOk());
    ASSERT_THAT(bench.say("otto", SignedIn{}), IsOk());
  }
  static Witnessed saw(std::string tool, StatedTorque setting, int count) {
    Witnessed out = settingSeen(std::move(tool), std::move(setting));
    out.what.push_back("count"), out.count = count;
    return out;
  }
  bool agrees(const Witnessed& body) {
    Bench copy = bench;
    EXPECT_THAT(copy.say("otto", body), IsOk());
    const bool same = std::get<Witnessed>(copy.job().last()->body).agrees;
    EXPECT_EQ(next(copy.job()).stage, same ? Stage::TightenPosition : Stage::WitnessBeforeFinal);
    return same;
  }

  Bench bench{sheet()};
};

TEST_F(SecondPerson, IsComparedByQuantityAndMark) {
  EXPECT_TRUE(agrees(saw("T-07", inLbf("66"), 4)));
  EXPECT_TRUE(agrees(saw("T-07", inLbf("66.0"), 4)));
  EXPECT_TRUE(agrees(saw("t-07", inLbf("66"), 4)));
  EXPECT_TRUE(agrees(saw(" T-07 ", {"5.5", &kPoundFoot}, 4)));
  EXPECT_FALSE(agrees(saw("T-07", inLbf("67"), 4)));
  EXPECT_FALSE(agrees(saw("T-08", inLbf("66"), 4)));
  EXPECT_FALSE(agrees(saw("T-07", {"66", &kNewtonMetre}, 4)));
}

TEST_F(SecondPerson, CountsThemAll) {
  EXPECT_FALSE(agrees(saw("T-07", inLbf("66"), 3)));
  EXPECT_FALSE(agrees(saw("T-07", inLbf("66"), 5)));
  EXPECT_FALSE(agrees(saw("T-07", inLbf("66"), 0)));
  Witnessed uncounted = saw("T-07", inLbf("66"), 4);
  uncounted.count.reset();
  EXPECT_THAT(bench.say("otto", uncounted), FailsWith(ErrorCode::InvalidInput, HasSubstr("count")));
}

TEST_F(SecondPerson, MaySayThatAThingIsNotSo) {
  Witnessed body = saw("T-07", inLbf("66"), 4);
  body.what = {"setting"}, body.notSo = {"count"};
  EXPECT_FALSE(agrees(body));
  body.what = {"setting", "count"};
  EXPECT_THAT(bench.say("otto", body), FailsWith(ErrorCode::InvalidInput, HasSubstr("so or not so")));
  body.what = {"setting"}, body.notSo = {};
  EXPECT_THAT(bench.say("otto", body),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("how “count” was found")));
}

TEST_F(SecondPerson, CountsAtAHoldOfItsOwnToo) {
  Sheet ofCount = sheet();
  ofCount.steps[5].hold->what = {"count"};
  Bench other(ofCount);
  other.workThrough("s4");
  ASSERT_THAT(other.say("lena", SignedIn{}), IsOk());
  Witnessed body;
  body.step = "s6", body.what = {"count"}, body.count = 3;
  ASSERT_THAT(other.say("lena", otherwise("s5", "lena")), IsOk());
  ASSERT_THAT(other.say("otto", SignedIn{}), IsOk());
  ASSERT_THAT(other.say("otto", body), IsOk());
  EXPECT_EQ(next(other.job()), (Next{Stage::Hold, 5}));
  body.count = 4;
  ASSERT_THAT(other.say("otto", body), IsOk());
  EXPECT_EQ(other.job().steps[5].state, StepState::Done);
}

TEST_F(SecondPerson, HasNoHandInTheWork) {
  const auto refusedAfter = [&](const Draft& draft, const std::set<std::string>& withPin = {}) {
    Bench copy = bench;
    const auto said = copy.say(draft, withPin);
    EXPECT_THAT(said, IsOk());
    return copy.say("otto", saw("T-07", inLbf("66"), 4));
  };
  const auto mayNot = FailsWith(ErrorCode::NotPermitted, HasSubstr("cannot be the second person"));
  Draft did = bench.draftOf("mira", toolSet("s5", "T-07", inLbf("66")));
  did.by = {{"otto", "T-07"}};
  EXPECT_THAT(refusedAfter(did), mayNot);
  Draft both = bench.draftOf("mira", toolSet("s5", "T-07", inLbf("66")));
  both.by = {{"mira", "T-07"}, {"otto", "T-07"}};
  EXPECT_THAT(refusedAfter(both), mayNot);
  Draft entered = bench.draftOf("otto", toolSet("s5", "T-07", inLbf("66")));
  entered.by = {{"mira", "T-07"}};
  EXPECT_THAT(refusedAfter(entered), mayNot);
  Draft supervised = bench.draftOf("mira", toolSet("s5", "T-07", inLbf("66")));
  supervised.by = {{"ada", "T-07"}}, supervised.supervisor = "otto";
  EXPECT_THAT(refusedAfter(supervised), mayNot);
  Draft corrected = bench.draftOf("otto", correction(entryOfKind(bench.job(), "hand-started"), "count", 3));
  Json now;
  now.set("count", 3).set("stuck", Json::Array{Json("4")});
  corrected.body = Corrected{entryOfKind(bench.job(), "hand-started"), now, "one would not run"};
  Bench copy = bench;
  ASSERT_THAT(copy.say(corrected), IsOk());
  EXPECT_TRUE(copy.job().steps[4].hands.contains("otto"));
}

TEST_F(SecondPerson, WhoCorrectsAValueHasAHandInIt) {
  ASSERT_THAT(bench.say("otto", saw("T-07", inLbf("66"), 4)), IsOk());
  ASSERT_THAT(bench.say(clicked("s5", "1")), IsOk());
  Json now;
  now.set("known", "read").set("reading", Json(Json::Object{{"value", "67"}, {"unit", "lbf.in"}}));
  ASSERT_THAT(bench.say("otto", Corrected{bench.job().count(), now, "it was read"}), IsOk());
  ASSERT_THAT(bench.say(toolSet("s5", "T-07", inLbf("67"))), IsOk());
  EXPECT_THAT(bench.say("otto", saw("T-07", inLbf("67"), 4)),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("cannot be the second person")));
  ASSERT_THAT(bench.say("lena", SignedIn{}), IsOk());
  EXPECT_THAT(bench.say("lena", saw("T-07", inLbf("67"), 4)), IsOk());
}

TEST_F(SecondPerson, IsInspectorOrLeadAndSpeaksForNobodyElse) {
  bench.people().push_back({"pia", "Pia Lund", {Role::Technician}, false, true, ""});
  ASSERT_THAT(bench.say("pia", SignedIn{}), IsOk());
  EXPECT_THAT(bench.say("pia", saw("T-07", inLbf("66"), 4)),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("neither inspector nor lead")));
  Draft forAnother = bench.draftOf("mira", saw("T-07", inLbf("66"), 4));
  forAnother.by = {{"otto", ""}};
  EXPECT_THAT(bench.say(forAnother), FailsWith(ErrorCode::NotPermitted));
}

TEST(Supervisor, StandsThereWithNameAndPin) {
  Bench bench;
  ASSERT_THAT(bench.start(), IsOk());
  Draft draft = bench.draftOf("ada", SignedIn{});
  EXPECT_THAT(bench.say(draft), FailsWith(ErrorCode::NotPermitted, HasSubstr("is an apprentice")));
  draft.supervisor = "otto";
  EXPECT_THAT(bench.say(draft),
              FailsWith(ErrorCode::NotPermitted, HasSubstr("Otto Brand has not signed in")));
  draft.byPhone = true;
  EXPECT_THAT(bench.say(draft), FailsWith(ErrorCode::NotPermitted)) << "not by phone either";
  draft.byPhone = false;
  for (const char* nobody : {"wim", "ada"}) {
    draft.supervisor = nobody;
    EXPECT_THAT(bench.say(draft, {nobody}), FailsWith(ErrorCode::NotPermitted, HasSubstr("cannot supervise")))
        << nobody;
  }
  draft.supervisor = "otto";
  EXPECT_THAT(bench.say(draft, {"otto"}), IsOk());
  EXPECT_EQ(bench.job().last()->supervisor, "otto");
  EXPECT_EQ(bench.job().last()->voucher("otto")->how, Vouch::Pin);
}

/// A hold is left out, or a joint given up on, by no word but a lead's who is there.
TEST(AHold, IsLeftOutByALeadWhoIsHere) {
  Bench bench;
  ASSERT_EQ(bench.workThrough("s5"), "");
  const Body blank = LeftBlank{"s6", Absence::NotApplicable, "nobody was free", ""};
  EXPECT_THAT(bench.say(blank), FailsWith(ErrorCode::NotPermitted));
  EXPECT_THAT(bench.say(otherwise("s6", "")), FailsWith(ErrorCode::NotPermitted));
  for (const Body& body : {Body(LeftBlank{"s6", Absence::NotApplicable, "nobody was free", "lena"}),
                           Body(otherwise("s6", "lena"))}) {
    Draft phoned = bench.draftOf("mira", body);
    phoned.byPhone = true;
    EXPECT_THAT(bench.say(phoned), FailsWith(ErrorCode::NotPermitted, HasSubstr("in person")));
    EXPECT_THAT(bench.say(body), FailsWith(ErrorCode::NotPermitted, HasSubstr("in person")));
    Bench copy = bench;
    EXPECT_THAT(copy.say(copy.draftOf("mira", body), {"lena"}), IsOk());
    EXPECT_THAT(copy.say(Finished{}), FailsWith(ErrorCode::NotPermitted, HasSubstr("lead")));
  }
  ASSERT_THAT(bench.say(SetAside{"s6", "later"}), IsOk());
  EXPECT_THAT(bench.say(blank), FailsWith(ErrorCode::NotPermitted)) << "set aside first, then left out";
}

}  // namespace
}  // namespace cw

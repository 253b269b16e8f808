// A wrench that is dropped, put in quarantine or retired by another program while it is in use at the bench.
#include "core/record/next.h"
#include "core/record/verify.h"
#include "core/store/inspect.h"
#include "tests/support/matchers.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

using test::clicked;
using test::inLbf;
using test::kPin;
using test::need;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

class StoppedTool : public testing::Test {
 protected:
  /// The sample job up to `pulls` pulls of its final pass.
  void workToPull(int pulls) {
    m_job = m_shop.startJob();
    for (const auto& [sign, body] : test::sampleScript("s5")) {
      if (std::holds_alternative<Tightened>(body) && pulls-- == 0) return;
      need(m_shop.say(m_job, sign, body));
    }
  }
  void otherProgram(Result<void> (Tools::*deed)(const std::string&, const Deed&)) {
    const auto other = m_shop.another();
    need((other->tools().*deed)("T-07", lead("slipped off the bench")));
  }
  Deed lead(const std::string& why) { return {"lena", m_shop.clock().now(), why}; }
  const Job& job() { return **m_shop->ledger().refresh(m_job); }
  const ToolStopped* stopped() { return std::get_if<ToolStopped>(&job().entries.back().entry.body); }
  void calibrate() {
    Calibration fresh = *test::sampleTools().front().lastCalibration();
    fresh.date = *parseDate("2026-03-04");
    need(m_shop->tools().calibrate("T-07", fresh, lead("checked after the fall")));
  }

  test::SampleShop m_shop;
  Id m_job;
};

TEST_F(StoppedTool, IsEnteredBeforeWhatIsSaidWhichIsThenJudged) {
  workToPull(2);
  const int before = job().count();
  otherProgram(&Tools::drop);
  const Draft pull = m_shop.draft("mira", clicked("s5", "2"));
  EXPECT_THAT(m_shop->ledger().append(m_job, pull),
              FailsWith(ErrorCode::OutOfTurn, HasSubstr("set the wrench")));
  ASSERT_EQ(job().count(), before + 1) << "the program's own entry alone";
  ASSERT_NE(stopped(), nullptr);
  EXPECT_EQ(stopped()->tool, "T-07");
  EXPECT_EQ(stopped()->why.value, Stop::Dropped);
  EXPECT_EQ(stopped()->since.value, "2026-03-04");
  EXPECT_THAT(stopped()->positions.value, ElementsAre("1", "3"));
  EXPECT_EQ(next(job()).stage, Stage::SetTool);
  // Said again, nothing is entered twice, and nothing of what was refused is kept.
  EXPECT_THAT(m_shop->ledger().append(m_job, pull), FailsWith(ErrorCode::OutOfTurn));
  EXPECT_EQ(job().count(), before + 1);
}

TEST_F(StoppedTool, OfEveryKindOfStopSaysWhich) {
  for (const auto& [deed, why] :
       {std::pair{&Tools::quarantine, Stop::Quarantined}, std::pair{&Tools::retire, Stop::Retired}}) {
    workToPull(1);
    otherProgram(deed);
    EXPECT_THAT(m_shop.say(m_job, "mira", clicked("s5", "3")), testing::Not(IsOk()));
    ASSERT_NE(stopped(), nullptr);
    EXPECT_EQ(stopped()->why.value, why);
    if (deed == &Tools::quarantine) need(m_shop->tools().release("T-07", lead("sound")));
  }
}

TEST_F(StoppedTool, IsEnteredWhateverIsSaidNext) {
  workToPull(1);
  const int before = job().count();
  otherProgram(&Tools::drop);
  EXPECT_THAT(m_shop.say(m_job, "mira", Paused{"", false, "", ""}), IsOk());
  EXPECT_EQ(job().count(), before + 2);
  EXPECT_TRUE(
      std::holds_alternative<ToolStopped>(job().entries[static_cast<std::size_t>(before)].entry.body));
}

TEST_F(StoppedTool, AReplayOfWhatWasTakenBeforeIsStillAnswered) {
  workToPull(0);
  const Draft pull = m_shop.draft("mira", clicked("s5", "1"));
  const Receipt first = need(m_shop->ledger().append(m_job, pull));
  otherProgram(&Tools::drop);
  for (int again = 0; again < 2; ++again) {
    const Receipt replay = need(m_shop->ledger().append(m_job, pull));
    EXPECT_TRUE(replay.already);
    EXPECT_EQ(replay.hash, first.hash);
  }
  EXPECT_EQ(job().count(), first.sequence + 1);
}

TEST_F(StoppedTool, ThatIsInNobodysHandIsNoMatter) {
  m_job = m_shop.startJob();
  ASSERT_EQ(m_shop.work(m_job, "s4"), "");
  otherProgram(&Tools::drop);
  EXPECT_THAT(m_shop.say(m_job, "mira", HandStarted{"s5", 4, {}}), IsOk());
  EXPECT_TRUE(std::holds_alternative<HandStarted>(job().last()->body));
}

TEST_F(StoppedTool, ThatALeadAllowedKnowingItIsNotStoppedAgain) {
  workToPull(1);
  otherProgram(&Tools::drop);
  EXPECT_THAT(m_shop.say(m_job, "mira", clicked("s5", "3")), testing::Not(IsOk()));
  ToolSet anew = test::toolSet("s5", "T-07", inLbf("65"));
  EXPECT_THAT(m_shop.say(m_job, "mira", anew), testing::Not(IsOk()));
  anew.allowedBy = "lena", anew.reason = "looked at it, it reads right on the tester";
  const Draft draft = m_shop.draft("mira", anew);
  need(m_shop->ledger().append(m_job, draft, {{"lena", std::string(kPin)}}));
  EXPECT_TRUE(std::holds_alternative<ToolSet>(job().last()->body));
}

TEST_F(StoppedTool, TheJobGoesOnToARecordThatVerifies) {
  workToPull(2);
  otherProgram(&Tools::drop);
  EXPECT_THAT(m_shop.say(m_job, "mira", clicked("s5", "2")), testing::Not(IsOk()));
  calibrate();
  need(m_shop.say(m_job, "mira", test::toolSet("s5", "T-07", inLbf("65"))));
  bool pulled = false;
  for (const auto& [sign, body] : test::sampleScript("s5"))
    if (std::holds_alternative<Witnessed>(body)) need(m_shop.say(m_job, sign, body));
  for (const auto& [sign, body] : test::sampleScript()) {
    const auto* pull = std::get_if<Tightened>(&body);
    pulled = pulled || (pull != nullptr && pull->position == "2");
    if (pulled) need(m_shop.say(m_job, sign, body));
  }
  const std::string record =
      need(m_shop->records().seal(m_job, {"mira", std::string(kPin)}, m_shop.key(), "test"));
  EXPECT_TRUE(verifyRecord(record, publicOf(m_shop.key())).good());
  EXPECT_THAT(need(inspectFile(m_shop.file())), IsEmpty());
}

}  // namespace
}  // namespace cw

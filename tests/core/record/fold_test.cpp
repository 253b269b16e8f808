#include "core/record/fold.h"

#include <gmock/gmock.h>

#include <iostream>
#include <limits>
#include <random>

#include "core/units/stated_json.h"
#include "tests/support/every_kind.h"

namespace cw {
namespace {

using namespace test;

std::string shownList(const auto& list) {
  std::string out;
  for (const auto& each : list) out += std::string(each) + ",";
  return out;
}

/// Every field in words. A field that is added does not compile here until it is shown.
std::string shownStep(const StepProgress& progress) {
  const auto& [state, warningsRead, reason, absence, torque, hands, tightening] = progress;
  const auto& [handStarted, conditions, witnessed, pass, counted, inHand, gapsRead, tightened, firstOpen,
               rounds, settled] = tightening;
  std::ostringstream out;
  out << static_cast<int>(state) << warningsRead << reason << (absence ? static_cast<int>(*absence) : -1);
  if (torque) out << " torque " << text(torque->low) << text(torque->aim) << text(torque->high);
  out << " hands " << shownList(hands) << " started " << handStarted << " conditions "
      << shownList(conditions) << " witnessed " << witnessed << " pass " << pass << " counted "
      << shownList(counted) << " in hand ";
  for (const auto& [holder, set] : inHand) out << holder.text << canonical(bodyToJson(set));
  out << " gaps " << gapsRead << " tightened " << shownList(tightened) << " open " << firstOpen << " rounds "
      << rounds << settled;
  return out.str();
}

/// The whole job, entries apart from what was said.
std::string shownJob(const Job& job) {
  std::ostringstream out;
  for (const StepProgress& progress : job.steps) out << shownStep(progress) << '\n';
  for (const auto& [entry, hash, overtaken, correctedBy, now, turned, confirmedBy] : job.entries)
    out << entry.sequence << overtaken << correctedBy.value_or(0) << (now ? canonical(bodyToJson(*now)) : "")
        << turned << confirmedBy.value_or(0) << '\n';
  out << shownList(job.signedIn) << job.corrections << job.paused << job.parked << job.finished
      << job.calledOff << hex(job.head);
  return out.str();
}

/// The job as its entries alone make it.
Job foldedAnew(const Job& job) {
  Job out = *emptyJob(job.shop, job.id, job.sheetBytes);
  for (const Kept& kept : job.entries) {
    auto judged = judge(out, *entryFromJson(entryToJson(kept.entry), "entry"), From::Chain);
    if (!judged) throw std::runtime_error(sentence(judged.error()));
    apply(out, *std::move(judged));
  }
  return out;
}

void expectTheFold(const Job& job) {
  for (std::size_t step = 0; step < job.steps.size(); ++step)
    ASSERT_EQ(shownStep(job.steps[step]), shownStep(foldStep(job, step, std::numeric_limits<int>::max())))
        << "step " << step + 1 << " after entry " << job.count() << ", " << kindOf(job.last()->body);
}

/// Somebody at the bench who does what is next, and now and then something else that is allowed.
class RandomBench {
 public:
  RandomBench(unsigned seed, Sheet sheet) : m_dice(seed), m_job(std::move(sheet)) {
    need(m_job.bench.start());
  }

  const Job& job() { return m_job.bench.job(); }
  void step() {
    const int what = roll(10);
    if (job().paused || what > 3) return doNext();
    if (what < 2) return correct();
    if (what == 2) return roll(3) == 0 ? undo() : other();
    say(anyOf(std::vector<std::string>{"mira", "otto", "lena"}), SignedIn{});
  }

 private:
  int roll(int sides) { return static_cast<int>(m_dice() % static_cast<unsigned>(sides)); }
  template <class T>
  const T& anyOf(const std::vector<T>& list) {
    return list[static_cast<std::size_t>(roll(static_cast<int>(list.size())))];
  }
  bool say(const std::string& sign, Body body) {
    m_job.wait(std::chrono::seconds(3));
    Bench& bench = m_job.bench;
    return bench.say(bench.draftOf(sign, std::move(body)), {"mira", "lena"}).has_value();
  }
  std::string anyStep() { return anyOf(job().sheet.steps).id; }
  std::string anyPosition() { return anyOf(job().sheet.joints.front().order); }
  StatedTorque torqueFor(const Next& now) {
    const JobTorque torque = torqueAt(job(), now.step, setFor(job(), now));
    return now.pass < passesOf(job(), job().sheet.steps[now.step]) ? inLbf("27") : torque.aim;
  }
  void doNext() {
    const Next now = next(job());
    const std::string step = now.step < job().sheet.steps.size() ? job().sheet.steps[now.step].id : "";
    switch (now.stage) {
      case Stage::Resume:
        say("mira", SignedIn{});
        say("mira", Resumed{roll(2) == 0});
        break;
      case Stage::ReadWarnings:
        say("mira", WarningsRead{step});
        break;
      case Stage::Act:
        say("mira", ActDone{step, true, "", ""});
        break;
      case Stage::Check:
        say("mira", CheckMade{step, roll(4) == 0 ? Answer::No : Answer::Yes, ""});
        break;
      case Stage::Measure:
        say("mira", Measured{step, roll(4) == 0 ? "0.5" : "0.05", "mm", ""});
        break;
      case Stage::Apply:
        say("mira", Applied{step, "B-77", ""});
        break;
      case Stage::HandStart:
        say("mira", roll(4) == 0 ? HandStarted{step, 3, {anyPosition()}} : HandStarted{step, 4, {}});
        break;
      case Stage::ConfirmCondition:
        say("mira", ConditionConfirmed{step, now.condition});
        break;
      case Stage::SetTool:
        say("mira", toolSet(step, "T-07", torqueFor(now)));
        break;
      case Stage::CountPass:
        say("mira", counted(step, static_cast<int>(now.positions.size())));
        break;
      case Stage::ReadGaps:
        say("mira", gapsOf(roll(3) == 0 ? std::vector<const char*>{"0", "2", "0", "0"}
                                        : std::vector<const char*>{"0", "0", "0", "0"}));
        break;
      case Stage::WitnessBeforeFinal: {
        say("otto", SignedIn{});
        const InHand& held = job().steps[now.step].tightening.inHand.back();
        Witnessed seen = settingSeen(held.set.tool.text, held.set.setting);
        seen.what.push_back("count"), seen.count = roll(5) == 0 ? 3 : 4;
        say("otto", seen);
        break;
      }
      case Stage::TightenPosition:
        say("mira", roll(3) == 0 ? test::read(step, now.position, inLbf(roll(2) == 0 ? "90" : "55"))
                                 : clicked(step, now.position));
        break;
      case Stage::CheckPass:
        if (!say("mira", checkPass(step, roll(2) == 0 ? std::vector<std::string>{anyPosition()}
                                                      : std::vector<std::string>{})))
          say("mira", toolSet(step, "T-07", inLbf("65")));
        break;
      case Stage::Hold:
        say("otto", SignedIn{});
        say("otto", marksSeen());
        break;
      case Stage::Start:
      case Stage::Finish:
      case Stage::Nothing:
        undo();
    }
  }
  void correct() {
    Json now;
    const Kept& kept = job().kept(job().count() - roll(std::min(12, job().count())));
    if (std::holds_alternative<Tightened>(kept.entry.body))
      now.set("known", "read")
          .set("reading", toJson(inLbf(anyOf(std::vector<std::string>{"90", "65", "54", "30"}))));
    else if (std::holds_alternative<CheckMade>(kept.entry.body))
      now.set("answer", roll(2) == 0 ? "no" : "yes");
    else if (std::holds_alternative<Measured>(kept.entry.body))
      now.set("value", roll(2) == 0 ? "0.7" : "0.07");
    else if (std::holds_alternative<HandStarted>(kept.entry.body))
      now.set("count", 3 + roll(2)).set("stuck", roll(2) == 0 ? Json::Array{} : Json::Array{Json("2")});
    else if (std::holds_alternative<CheckPassMade>(kept.entry.body))
      now.set("moved", roll(2) == 0 ? Json::Array{} : Json::Array{Json("2")});
    else if (std::holds_alternative<GapsRead>(kept.entry.body))
      now.set("gaps",
              Json::Array{toJson(StatedLength{roll(2) == 0 ? "0" : "3", &kMillimetre}),
                          toJson(StatedLength{"0", &kMillimetre}), toJson(StatedLength{"0", &kMillimetre}),
                          toJson(StatedLength{"0", &kMillimetre})});
    else
      now.set("batch", "B-" + std::to_string(roll(99)));
    if (say(anyOf(std::vector<std::string>{"mira", "lena"}), Corrected{kept.entry.sequence, now, "a slip"}))
      ++corrections;
  }
  void undo() {
    switch (roll(4)) {
      case 0:
        say("mira", TakenApart{anyStep(), "a drip"});
        break;
      case 1:
        say("mira", Reopened{anyStep(), {}, "not done"});
        break;
      default:
        say("mira", Reopened{"s5", anyPosition(), "not pulled"});
    }
  }
  void other() {
    switch (roll(8)) {
      case 0:
        say("mira", SetAside{anyStep(), "later"});
        break;
      case 1:
        say("lena", LeftBlank{anyStep(), Absence::NotRecorded, "lost", "lena"});
        break;
      case 2:
        say("lena", otherwise(anyStep(), "lena"));
        break;
      case 3: {
        Deviated torque = otherwise("s5", "lena");
        torque.low = inLbf("50"), torque.aim = inLbf("54"), torque.high = inLbf("58");
        say("lena", torque);
        break;
      }
      case 4:
        say("mira", Paused{"a break", roll(2) == 0, "", ""});
        break;
      case 5:
        say("mira", toolSet("s5", anyOf(std::vector<std::string>{"T-07", "T-20"}), inLbf("65")));
        break;
      case 6:
        stop();
        break;
      default:
        say("lena", Repaired{"cover", anyPosition(), "chased", "burr", "lena"});
    }
  }
  /// The wrench in hand is dropped, and found sound afterwards.
  void stop() {
    Bench& bench = m_job.bench;
    bench.tools()[0].dueNow = *parseDate("2026-03-04");
    if (const auto stopped = stoppedTool(job(), bench.floor())) say("mira", *stopped);
    bench.tools()[0].dueNow.reset();
  }

  std::mt19937 m_dice;
  PlayedJob m_job;

 public:
  int corrections = 0;
};

TEST(TheKeptJob, EqualsTheFoldOfItsEntries) {
  std::size_t entries = 0;
  int corrections = 0, overtaken = 0;
  for (unsigned seed = 1; seed <= 20; ++seed) {
    Sheet sheet = everySheet();
    if (seed % 3 == 0) sheet.joints.front().passes.gaps.reset();
    if (seed % 2 == 0) sheet.joints.front().passes.check.reset();
    RandomBench bench(seed, sheet);
    int known = 1;
    for (int turn = 0; turn < 150; ++turn) {
      bench.step();
      if (bench.job().count() == known) continue;
      known = bench.job().count();
      SCOPED_TRACE("seed " + std::to_string(seed));
      expectTheFold(bench.job());
      if (testing::Test::HasFatalFailure()) return;
    }
    const Job again = foldedAnew(bench.job());
    ASSERT_EQ(shownJob(again), shownJob(bench.job())) << "seed " << seed;
    EXPECT_EQ(next(again), next(bench.job()));
    entries += bench.job().entries.size();
    corrections += bench.corrections;
    for (const Kept& kept : bench.job().entries) overtaken += kept.overtaken ? 1 : 0;
  }
  std::cout << entries << " entries, " << corrections << " of them corrections, " << overtaken
            << " overtaken\n";
  EXPECT_GT(corrections, 60);
  EXPECT_GT(overtaken, 300);
}

TEST(TheKeptJob, EqualsTheFoldWithEveryKindOfEntry) {
  for (const Job& whole : everyKindJobs()) {
    Job job = *emptyJob(whole.shop, whole.id, whole.sheetBytes);
    for (const Kept& kept : whole.entries) {
      apply(job, need(judge(job, kept.entry, From::Chain)));
      expectTheFold(job);
      if (testing::Test::HasFatalFailure()) return;
    }
    EXPECT_EQ(shownJob(job), shownJob(whole));
  }
}

}  // namespace
}  // namespace cw

#include "tests/rules_walk/walk.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <stdexcept>

#include "core/procedure/sheet_file.h"
#include "core/record/next.h"
#include "core/record/verify.h"
#include "tests/rules_walk/forge.h"
#include "tests/rules_walk/moves.h"
#include "tests/rules_walk/oracle.h"
#include "tests/rules_walk/sheets.h"
#include "tests/rules_walk/told.h"
#include "tests/support/need.h"

namespace cw::test {
namespace {

const SecretKey& key() {
  static const SecretKey kKey = makeKey();
  return kKey;
}

class Walk {
 public:
  explicit Walk(std::uint64_t seed)
      : m_dice(seed),
        m_quick(m_dice.inHundred(10)),
        m_whole(drawnFloor(m_dice)),
        m_floor(m_whole),
        m_job(empty(m_quick ? drawnQuickSheet(m_dice) : drawnSheet(m_dice))),
        m_chain(m_job),
        m_oracle(m_job),
        m_now(*parseRfc3339("2026-03-04T08:00:00.000+01:00")) {}

  Walked run(int tries) {
    try {
      start();
      while (m_out.tried < tries && !m_job.ended()) attempt();
      toTheEnd();
    } catch (const std::exception& wrong) {
      m_out.fault = wrong.what();
    }
    return std::move(m_out);
  }

 private:
  static Job empty(const Sheet& sheet) {
    return need(emptyJob(*Id::parse("01900000-0000-7000-8000-00000000000a"),
                         *Id::parse("01900000-0000-7000-8000-00000000000b"), writeSheet(sheet)));
  }
  static void demand(bool holds, const std::string& otherwise) {
    if (!holds) throw std::runtime_error(otherwise);
  }

  void start() {
    for (int i = 0; i < 200 && m_job.entries.empty(); ++i) {
      if (i % 3 == 2) {
        say(wildMove(m_job, m_floor, m_dice));
        continue;
      }
      JobStarted body;
      body.workOrder = "WO 1", body.machine = "P-1", body.model = "Test pump";
      body.quick = m_quick;
      if (m_quick) body.guard.value = m_dice.inHundred(70) ? "in-band" : "past-yield";
      if (m_quick && m_dice.inHundred(30)) body.guardAllowedBy = "lena", body.guardReason = "seen";
      body.alone.value = m_floor.alone;
      Move move = moveOf(m_dice.of(m_floor.people).sign, body);
      move.withPin.insert(move.draft.enteredBy);
      move.draft.byPhone = m_dice.inHundred(30);
      say(std::move(move));
    }
    demand(!m_job.entries.empty(), "the job cannot be started");
  }

  void attempt() {
    if (m_dice.inHundred(3)) change(m_floor, m_dice);
    if (m_dice.inHundred(2)) m_floor = m_whole;
    pass();
    const auto sensible = m_dice.inHundred(60) ? sensibleMoves(m_job, m_floor) : std::vector<Move>();
    const bool ends = next(m_job).stage == Stage::Finish;
    if (sensible.empty() || (ends && m_dice.inHundred(90)))
      say(wildMove(m_job, m_floor, m_dice));
    else if (m_dice.inHundred(50))
      say(spoilt(m_dice.inHundred(70) ? sensible.front() : m_dice.of(sensible), m_job, m_floor, m_dice));
    else
      firstOf(sensible);
  }

  /// The clock goes on, now and then far, seldom back.
  void pass() {
    m_now.utc +=
        std::chrono::milliseconds(m_dice.inHundred(90) ? m_dice.below(60'000) : m_dice.below(3'000'000));
    if (m_dice.inHundred(1)) m_now.utc -= std::chrono::hours(2);
  }

  bool firstOf(const std::vector<Move>& moves) {
    m_refusals.clear();
    for (const Move& move : moves)
      if (say(move)) return true;
    return false;
  }

  void toTheEnd() {
    m_floor = m_whole;
    m_ending = true;
    // Each position may be pulled, looked at and gone round again, each step taken apart once.
    std::size_t most = 60 + 30 * m_job.steps.size();
    for (const StepPlan& plan : m_job.plans) most += 30 * plan.placeInOrder.size();
    while (!m_job.ended()) {
      demand(most-- > 0, "a sensible player does not come to the end; next is stage " +
                             std::to_string(static_cast<int>(next(m_job).stage)));
      m_now.utc += std::chrono::minutes(m_job.paused ? 11 : 1);
      if (!firstOf(sensibleMoves(m_job, m_floor)))
        throw std::runtime_error(fmt::format("nothing sensible is accepted at stage {} of step {}: {}",
                                             static_cast<int>(next(m_job).stage), next(m_job).step,
                                             fmt::join(m_refusals, " / ")));
    }
    if (m_job.finished) seal();
  }

  /// As the ledger does it: stopped wrenches and a clock that went back come first.
  bool say(Move move) {
    ++m_out.tried;
    if (!m_job.ended())
      while (const auto stopped = m_job.entries.empty() ? std::nullopt : stoppedTool(m_job, m_floor.now()))
        if (!enter(moveOf(move.draft.enteredBy, *stopped))) break;
    if (m_job.last() != nullptr && m_now < m_job.last()->time)
      if (!enter(moveOf(move.draft.enteredBy, ClockWentBack{}))) return false;
    if (!m_ending && m_dice.inHundred(4)) {
      move.draft.done = m_now;
      move.draft.done->utc -= std::chrono::seconds(m_dice.between(-100, 3000));
    }
    return enter(std::move(move));
  }

  bool enter(Move move) {
    move.draft.id = *Id::parse(fmt::format("01900000-0000-7000-8000-{:012x}", ++m_ids));
    std::set<std::string> signedIn = m_job.signedIn;
    if (!m_ending && m_dice.inHundred(10) && !signedIn.empty()) signedIn.erase(signedIn.begin());
    const auto entry = compose(m_job, move.draft, m_floor.now(), {move.withPin, signedIn}, m_now);
    if (!entry) return refuse(entry.error());
    if (m_dice.inHundred(30)) forge(*entry);
    const bool looks = m_dice.inHundred(10);
    const std::string before = looks ? told(m_job) : std::string();
    auto judged = judge(m_job, *entry, From::Line);
    if (looks) demand(told(m_job) == before, "judging changed the job");
    if (!judged) return refuse(judged.error());
    take(*std::move(judged));
    return true;
  }
  bool refuse(const Error& error) {
    const std::string words = sentence(error);
    demand(!words.empty(), "a refusal without words");
    m_refusals.insert(words);
    return false;
  }

  /// What is accepted is, read back from its text, the same entry in the same job.
  void take(Judged judged) {
    ++m_out.taken;
    const std::string text = judged.text();
    const Digest hash = judged.hash();
    m_texts.push_back(text);
    m_out.story += text + "\n";
    apply(m_job, std::move(judged));
    readBack(m_chain, text, hash);
    const std::string is = toldSteps(m_job), becomes = toldSteps(m_chain);
    if (is != becomes)
      throw std::runtime_error("read back, the job is another:\n" + becomes + "and not\n" + is);
    if (const std::string wrong = m_oracle.afterEntry(m_job); !wrong.empty()) throw std::runtime_error(wrong);
    for (std::size_t i = 0; i < m_job.steps.size(); ++i) {
      const std::size_t most = m_job.plans[i].placeInOrder.size();
      demand(m_job.steps[i].tightening.tightened.size() <= most, "more positions than the joint has");
    }
  }
  static void readBack(Job& job, const std::string& text, const Digest& hash) {
    const auto json = parseJson(text);
    demand(json.has_value(), "an entry is not read back");
    auto entry = entryFromJson(*json, "entry");
    demand(entry.has_value(), entry ? "" : "an entry is not read back: " + sentence(entry.error()));
    auto judged = judge(job, *std::move(entry), From::Chain);
    demand(judged.has_value(),
           judged ? "" : "what was accepted is refused when read: " + sentence(judged.error()));
    demand(judged->text() == text && judged->hash() == hash, "read back, an entry is another");
    apply(job, *std::move(judged));
  }

  /// Somebody alters an entry before it comes to the chain. It is accepted only if a line could have made it.
  void forge(const Entry& line) {
    Entry entry = line;
    if (auto judged = judge(m_job, line, From::Line); judged) entry = judged->entry();
    const auto forged = forgedEntry(entry, m_dice);
    if (!forged) return;
    ++m_out.forged;
    const auto asChain = judge(m_job, *forged, From::Chain);
    if (!asChain) return;
    const auto asLine = judge(m_job, asIfStated(m_job, *forged), From::Line);
    const std::string made = asLine ? asLine->text() : sentence(asLine.error());
    if (made != asChain->text())
      throw std::runtime_error("a forged entry is accepted: " + asChain->text() + "\na line makes " + made);
    for (const Voucher& voucher : forged->vouchers)
      demand(voucher.how != Vouch::Session || m_job.signedIn.contains(voucher.person),
             voucher.person + " vouches by session and has not signed in: " + asChain->text());
  }

  void seal() {
    Job again = empty(m_job.sheet);
    again.sheetBytes = m_job.sheetBytes;
    for (std::size_t i = 0; i < m_texts.size(); ++i) readBack(again, m_texts[i], m_job.entries[i].hash);
    demand(told(again) == told(m_job), "loaded from scratch, the job is another");
    for (int i = 0; i < 20; ++i) change(m_floor, m_dice);
    const SealContext context{
        "Test shop", "0.0", {"mira", "Mira Sol", {Role::Technician}, false, Vouch::Pin}, m_now};
    const auto bytes = sealRecord(m_job, context, key());
    demand(bytes.has_value(), bytes ? "" : "a finished job is not sealed: " + sentence(bytes.error()));
    const Verification found = verifyRecord(*bytes, publicOf(key()));
    demand(found.good(),
           found.good() ? "" : "a sealed record does not verify: " + plain(firstFault(found).problem));
    const auto read = readRecord(*bytes);
    demand(read.has_value(), "a sealed record is not read");
    demand(told(read->job) == told(m_job), "a record holds another job");
    if (!shortfallsOf(m_job).empty()) return;
    m_out.complete = true;
    const std::string wrong = m_oracle.complete(m_job);
    demand(wrong.empty(), "said to be complete, but " + wrong);
  }

  Dice m_dice;
  bool m_quick;
  Floor m_whole, m_floor;
  Job m_job, m_chain;
  Oracle m_oracle;
  Moment m_now;
  std::vector<std::string> m_texts;
  std::set<std::string> m_refusals;
  int m_ids = 0;
  bool m_ending = false;
  Walked m_out;
};

}  // namespace

Walked walk(std::uint64_t seed, int tries) {
  return Walk(seed).run(tries);
}

}  // namespace cw::test

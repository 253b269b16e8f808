#include <fmt/format.h>

#include <algorithm>

#include "core/record/next.h"
#include "tests/rules_walk/moves.h"

namespace cw::test {
namespace {

const std::string kReason = "as told by the lead";

class Player {
 public:
  Player(const Job& job, const Floor& floor) : m_job(job), m_floor(floor), m_now(next(job)) {}

  std::vector<Move> moves() {
    switch (m_now.stage) {
      case Stage::Start:
      case Stage::Nothing:
        break;
      case Stage::Resume:
        byWorkers(Resumed{});
        break;
      case Stage::ReadWarnings:
        byWorkers(WarningsRead{id()});
        break;
      case Stage::Act:
        byWorkers(fit());
        break;
      case Stage::Check:
        byWorkers(CheckMade{id(), Answer::Yes, ""});
        break;
      case Stage::Measure:
        byWorkers(Measured{id(), "0.05", "mm", ""});
        break;
      case Stage::Apply:
        byWorkers(Applied{id(), "B-1", "2098-12-31"});
        break;
      case Stage::Hold:
      case Stage::WitnessBeforeFinal:
        witness();
        break;
      case Stage::HandStart:
        byWorkers(HandStarted{id(), places(), {}});
        break;
      case Stage::ConfirmCondition:
        byWorkers(ConditionConfirmed{id(), m_now.condition});
        break;
      case Stage::SetTool:
        setTools();
        break;
      case Stage::CountPass:
        withEachTool([&] {
          PassCounted body;
          body.step = id(), body.count = static_cast<int>(m_now.positions.size());
          return body;
        });
        break;
      case Stage::TightenPosition:
        withEachTool([&] {
          Tightened body;
          body.step = id(), body.position = m_now.position;
          return body;
        });
        break;
      case Stage::CheckPass:
        withEachTool([&] {
          CheckPassMade body;
          body.step = id();
          return body;
        });
        if (m_job.steps[m_now.step].tightening.set() == nullptr) setTools();
        break;
      case Stage::ReadGaps:
        byWorkers(evenGaps());
        break;
      case Stage::Finish:
        finish();
        return std::move(m_moves);
    }
    otherwise();
    return std::move(m_moves);
  }

 private:
  std::string id() const { return m_job.sheet.steps[m_now.step].id; }
  const Step& step() const { return m_job.sheet.steps[m_now.step]; }
  int places() const { return static_cast<int>(m_job.plans[m_now.step].placeInOrder.size()); }

  void add(const std::string& sign, Body body, std::vector<Doer> by = {}, std::set<std::string> pins = {}) {
    Move move = moveOf(sign, std::move(body));
    move.draft.by = std::move(by);
    move.withPin = std::move(pins);
    move.withPin.insert(sign);
    m_moves.push_back(std::move(move));
  }
  /// Those who may enter work on their own, technicians first, so that inspectors stay free to look.
  std::vector<std::string> workers() const {
    std::vector<std::string> out, rest;
    for (const Person& person : m_floor.people) {
      if (!person.active || person.apprentice) continue;
      const bool looks = person.may(Role::Inspector) || person.may(Role::ShopLead);
      if (person.may(Role::Technician) && !looks)
        out.push_back(person.sign);
      else if (looks)
        rest.push_back(person.sign);
      else if (person.may(Role::Technician))
        rest.push_back(person.sign);
    }
    out.insert(out.end(), rest.begin(), rest.end());
    return out;
  }
  std::vector<std::string> leads() const {
    std::vector<std::string> out;
    for (const Person& person : m_floor.people)
      if (person.active && !person.apprentice && person.may(Role::ShopLead)) out.push_back(person.sign);
    return out;
  }
  std::string worker() const { return workers().empty() ? std::string() : workers().front(); }

  void byWorkers(const Body& body) {
    for (const std::string& sign : workers()) add(sign, body);
  }
  ActDone fit() const {
    ActDone out{id(), false, "", ""};
    if (const Part* part = m_job.sheet.part(step().part)) {
      out.renewed = part->singleUse;
      if (part->batchWanted) out.batch = "B-1", out.expiry = "2098-12-31";
    }
    return out;
  }
  GapsRead evenGaps() const {
    GapsRead out;
    out.step = id();
    const auto& gaps = m_job.sheet.joint(step().joint)->passes.gaps;
    for (std::size_t i = 0; gaps && i < gaps->places; ++i) out.gaps.push_back({"2.0", &kMillimetre});
    return out;
  }

  void witness() {
    Witnessed body;
    body.step = id(), body.what = step().hold->what;
    body.manner = step().hold->witness == Witness::Independent ? Manner::Independent : Manner::Watched;
    const auto joint = lookedAt(m_job, m_now.step);
    for (const std::string& what : body.what) {
      if (what == "setting") lookAtTheWrench(body, joint);
      if (what == "count") body.count = joint ? static_cast<int>(m_job.plans[*joint].placeInOrder.size()) : 1;
    }
    for (const Person& person : m_floor.people)
      if (person.active && (person.may(Role::Inspector) || person.may(Role::ShopLead)) && !person.apprentice)
        add(person.sign, body);
    if (!m_job.start.alone) return;
    body.manner = Manner::Self;
    byWorkers(body);
    // Only after a break: the clock of the walk moves on before it resumes.
    byWorkers(Paused{});
  }
  void lookAtTheWrench(Witnessed& body, std::optional<std::size_t> joint) const {
    body.tool = "T-07", body.setting = StatedTorque{"65", &kPoundInch};
    if (!joint) return;
    if (const ToolSet* set = m_job.steps[*joint].tightening.set()) {
      body.tool = set->tool, body.setting = set->setting;
      return;
    }
    for (const Kept& kept : m_job.entries)
      if (const auto* set = std::get_if<ToolSet>(&kept.body()))
        if (!kept.overtaken && set->step == m_job.sheet.steps[*joint].id)
          body.tool = set->tool, body.setting = set->setting;
  }

  void setTools() {
    const JobTorque torque = torqueAt(m_job, m_now.step, setFor(m_job, m_now));
    const double low = torque.low.value().si(), aim = torque.aim.value().si(),
                 high = torque.high.value().si();
    const int passes = passesOf(m_job, step());
    const double share = m_now.pass < passes && m_now.pass >= 1 ? shareOf(m_job, step(), m_now.pass) : 1;
    std::vector<double> wanted{aim * share};
    if (share >= 1) wanted = {aim, (low + high) / 2, low + 0.8 * (high - low), low + 0.9 * (high - low)};
    std::vector<ToolSet> sets;
    for (const double each : wanted)
      for (const TorqueTool& tool : m_floor.tools)
        for (const Scale& scale : tool.scales) {
          const TorqueUnit& unit = *scale.low.unit;
          const double perUnit = StatedTorque{"1", &unit}.value().si();
          ToolSet set;
          set.step = id(), set.tool = tool.id;
          set.setting = {fmt::format("{:.3f}", each / perUnit), &unit};
          sets.push_back(set);
        }
    const std::string sign = worker();
    for (const ToolSet& set : sets) add(sign, set, {{sign, set.tool}});
    for (ToolSet set : sets)
      for (const std::string& lead : leads()) {
        set.allowedBy = lead, set.reason = kReason;
        add(sign, set, {{sign, set.tool}}, {lead});
      }
  }
  template <class Make>
  void withEachTool(Make&& make) {
    for (const InHand& each : m_job.steps[m_now.step].tightening.inHand) {
      add(each.holder, make(), {{each.holder, each.set.tool}});
      for (const std::string& sign : workers()) add(sign, make(), {{sign, each.set.tool}});
    }
  }

  void finish() {
    byWorkers(Finished{"", {}, {}});
    for (const std::string& lead : leads()) add(worker(), Finished{"", lead, kReason}, {}, {lead});
    for (const std::string& sign : workers()) add(sign, Finished{"", {}, kReason});
  }

  bool wasSetAside() const {
    return std::any_of(m_job.entries.begin(), m_job.entries.end(), [&](const Kept& kept) {
      return std::holds_alternative<SetAside>(kept.entry.body) && stepOf(kept.entry.body) == id();
    });
  }

  /// Where nothing of what is asked for can be done.
  void otherwise() {
    if (m_now.stage == Stage::Resume || m_now.step >= m_job.steps.size()) return;
    // What was looked at and found otherwise may be so once what is set aside is done.
    const std::size_t unseen = m_moves.size();
    if (m_job.steps[m_now.step].state == StepState::Open && !wasSetAside())
      byWorkers(SetAside{id(), kReason});
    LeftBlank blank{id(), Absence::NotRecorded, kReason, {}};
    Deviated deviated;
    deviated.step = id(), deviated.what = "by hand", deviated.reason = kReason;
    for (const std::string& lead : leads()) {
      deviated.allowedBy = blank.allowedBy = lead;
      add(worker(), deviated, {}, {lead});
      add(worker(), blank, {}, {lead});
    }
    deviated.allowedBy = blank.allowedBy = PersonSign();
    byWorkers(blank);
    byWorkers(deviated);
    if (leads().empty()) byWorkers(CalledOff{kReason});
    const auto* seen = std::get_if<Witnessed>(&m_job.last()->body);
    if (seen != nullptr && !seen->agrees && seen->step == id())
      std::rotate(m_moves.begin(), m_moves.begin() + static_cast<long>(unseen), m_moves.end());
  }

  const Job& m_job;
  const Floor& m_floor;
  Next m_now;
  std::vector<Move> m_moves;
};

}  // namespace

Move moveOf(std::string sign, Body body) {
  Move out;
  out.draft.enteredBy = std::move(sign);
  out.draft.body = std::move(body);
  return out;
}

std::vector<Move> sensibleMoves(const Job& job, const Floor& floor) {
  return Player(job, floor).moves();
}

}  // namespace cw::test

#include "core/record/job.h"

#include <algorithm>

#include "core/procedure/sheet_file.h"

namespace cw {
namespace {

// Half a unit in the last place of a double's decimal text is no breach of a stated limit.
constexpr double kSlack = 1e-9;

const Joint* jointOf(const Job& job, const Step& step) {
  return job.sheet.joint(step.joint);
}

/// A pass begins anew: what its entries said is overtaken.
void repeatPass(Job& job, std::size_t index) {
  Tightening& now = job.steps[index].tightening;
  const std::string& id = job.sheet.steps[index].id;
  for (Kept& kept : job.entries)
    if (const auto* pulled = std::get_if<Tightened>(&kept.entry.body); pulled && pulled->step == id)
      kept.overtaken = true;
  now.tightened.clear();
  now.set.reset();
}

/// Are the gaps still to be read after the pass that was just made?
bool gapsDue(const Job& job, std::size_t index) {
  const PassPlan& plan = jointOf(job, job.sheet.steps[index])->passes;
  const Tightening& now = job.steps[index].tightening;
  const int made = now.pass - 1, ofShares = made - (plan.snug ? 1 : 0);
  if (!plan.gaps || ofShares < 1 || now.gapsRead >= made) return false;
  const auto& after = plan.gaps->afterPasses;
  return std::find(after.begin(), after.end(), static_cast<std::size_t>(ofShares)) != after.end();
}

/// What each kind of entry does to the job.
class Fold {
 public:
  Fold(Job& job, const Entry& entry) : m_job(job), m_entry(entry) {}

  void operator()(const JobStarted& body) {
    m_job.start = body;
    m_job.signedIn = {m_entry.enteredBy};
  }
  void operator()(const SignedIn&) { m_job.signedIn.insert(m_entry.enteredBy); }
  void operator()(const WarningsRead& body) { at(body.step).warningsRead = true; }
  void operator()(const ActDone& body) { at(body.step).state = StepState::Done; }
  void operator()(const CheckMade& body) { closeIf(body.step, body.answer == Answer::Yes); }
  void operator()(const Measured& body) {
    closeIf(body.step, withinLimits(*m_job.sheet.step(body.step), body.value));
  }
  void operator()(const Applied& body) { at(body.step).state = StepState::Done; }
  void operator()(const HandStarted& body) {
    if (body.stuck.empty()) at(body.step).tightening.handStarted = true;
  }
  void operator()(const ConditionConfirmed& body) { at(body.step).tightening.conditionConfirmed = true; }
  void operator()(const ToolSet& body) {
    Tightening& now = at(body.step).tightening;
    now.set = body;
    now.witnessed = false;
    addDoers(now);
  }
  void operator()(const PassCounted& body) {
    Tightening& now = at(body.step).tightening;
    ++now.pass;
    now.set.reset();
    addDoers(now);
  }
  void operator()(const Tightened& body) {
    Tightening& now = at(body.step).tightening;
    addDoers(now);
    if (!body.within) return;
    now.tightened.insert(body.position);
    const Step& step = *m_job.sheet.step(body.step);
    if (now.tightened.size() < orderOf(m_job, step).size()) return;
    ++now.pass;
    closeIfThrough(body.step);
  }
  void operator()(const GapsRead& body) {
    if (!body.within && body.allowedBy.empty()) return;
    at(body.step).tightening.gapsRead = body.pass;
    closeIfThrough(body.step);
  }
  void operator()(const CheckPassMade& body) {
    Tightening& now = at(body.step).tightening;
    now.rounds = body.round;
    now.settled = body.moved.empty();
    if (now.settled) at(body.step).state = StepState::Done;
  }
  void operator()(const Witnessed& body) {
    StepProgress& progress = at(body.step);
    progress.tightening.witnessed = body.agrees;
    if (m_job.sheet.step(body.step)->kind == StepKind::Hold) closeIf(body.step, body.agrees);
  }
  void operator()(const SetAside& body) { close(body.step, StepState::SetAside, body.reason); }
  void operator()(const LeftBlank& body) { close(body.step, StepState::Blank, body.reason); }
  void operator()(const Deviated& body) {
    StepProgress& progress = at(body.step);
    progress.deviated = true;
    progress.reason = body.reason;
    if (body.aim)
      progress.torque = JobTorque{body.low.value_or(*body.aim), *body.aim, body.high.value_or(*body.aim)};
    else
      progress.state = StepState::Done;
  }
  void operator()(const Corrected& body) {
    Kept& old = m_job.entries[static_cast<std::size_t>(body.of - 1)];
    old.correctedBy = m_entry.sequence;
    const auto now = bodyFromJson(kindOf(old.entry.body), body.now, "now");
    if (const auto* measured = now ? std::get_if<Measured>(&*now) : nullptr) reopenOrClose(*measured);
    if (const auto* checked = now ? std::get_if<CheckMade>(&*now) : nullptr)
      at(checked->step).state = checked->answer == Answer::Yes ? StepState::Done : StepState::Open;
    if (const auto* pulled = now ? std::get_if<Tightened>(&*now) : nullptr) redoIfOutside(*pulled);
  }
  void operator()(const Paused& body) {
    m_job.paused = true;
    m_job.parked = body.parked;
    m_job.signedIn.clear();
  }
  void operator()(const Resumed& body) {
    const bool wasParked = m_job.parked;
    m_job.paused = m_job.parked = false;
    const Next now = next(m_job);
    if (m_job.steps.empty() || now.step >= m_job.steps.size() ||
        m_job.sheet.steps[now.step].kind != StepKind::Tighten)
      return;
    if (wasParked)
      restart(now.step, now.step + 1);
    else if (body.repeatPass)
      repeatPass(m_job, now.step);
  }
  void operator()(const TakenApart& body) { restart(*m_job.stepIndex(body.step), m_job.steps.size()); }
  void operator()(const Repaired&) {}
  void operator()(const ClockWentBack&) {}
  void operator()(const Finished&) { m_job.finished = true; }

 private:
  StepProgress& at(const std::string& step) { return m_job.steps[*m_job.stepIndex(step)]; }

  static bool withinLimits(const Step& step, const std::string& value) {
    const double number = numberOf(value);
    return (step.low.empty() || number >= numberOf(step.low)) &&
           (step.high.empty() || number <= numberOf(step.high));
  }
  void closeIf(const std::string& step, bool good) {
    if (good) at(step).state = StepState::Done;
  }
  /// After the last pass, where no check pass follows.
  void closeIfThrough(const std::string& id) {
    const std::size_t index = *m_job.stepIndex(id);
    const Step& step = m_job.sheet.steps[index];
    const bool passed = m_job.steps[index].tightening.pass > passesOf(m_job, step);
    closeIf(id, passed && checkRoundsOf(m_job, step) == 0 && !gapsDue(m_job, index));
  }
  void close(const std::string& step, StepState state, const std::string& reason) {
    at(step).state = state;
    at(step).reason = reason;
  }
  void addDoers(Tightening& now) {
    for (const Doer& doer : m_entry.by)
      if (std::find(now.doers.begin(), now.doers.end(), doer.person) == now.doers.end())
        now.doers.push_back(doer.person);
  }
  void reopenOrClose(const Measured& measured) {
    const bool good = withinLimits(*m_job.sheet.step(measured.step), measured.value);
    at(measured.step).state = good ? StepState::Done : StepState::Open;
  }
  /// A corrected reading that lies outside makes its position one to do again.
  void redoIfOutside(const Tightened& pulled) {
    if (pulled.within) return;
    StepProgress& progress = at(pulled.step);
    Tightening& now = progress.tightening;
    if (now.tightened.erase(pulled.position) == 0) return;
    now.pass = pulled.pass;
    now.settled = false;
    progress.state = StepState::Open;
  }
  /// Steps [from, to) are to be done anew.
  void restart(std::size_t from, std::size_t to) {
    for (std::size_t i = from; i < to; ++i) {
      const std::optional<JobTorque> torque = m_job.steps[i].torque;
      m_job.steps[i] = StepProgress{};
      m_job.steps[i].torque = torque;
      for (Kept& kept : m_job.entries)
        if (stepOf(kept.entry.body) == m_job.sheet.steps[i].id) kept.overtaken = true;
    }
  }

  Job& m_job;
  const Entry& m_entry;
};

Next nextInTighten(const Job& job, std::size_t index) {
  const Step& step = job.sheet.steps[index];
  const Tightening& now = job.steps[index].tightening;
  const int passes = passesOf(job, step);
  if (!now.handStarted && jointOf(job, step)->passes.byHand) return {Stage::HandStart, index, 0, {}, 0};
  if (!now.conditionConfirmed &&
      !job.sheet.specification(jointOf(job, step)->specification)->condition.empty())
    return {Stage::ConfirmCondition, index, 0, {}, 0};
  if (gapsDue(job, index)) return {Stage::ReadGaps, index, now.pass - 1, {}, 0};
  if (now.pass > passes) return {Stage::CheckPass, index, passes, {}, now.rounds + 1};
  if (!now.set) return {Stage::SetTool, index, now.pass, {}, 0};
  if (now.pass < passes) return {Stage::CountPass, index, now.pass, {}, 0};
  if (step.hold && !now.witnessed) return {Stage::WitnessBeforeFinal, index, now.pass, {}, 0};
  for (const std::string& label : orderOf(job, step)) {
    if (now.tightened.contains(label)) continue;
    const bool fits = within(now.set->setting, torqueAt(job, index, label));
    return {fits ? Stage::TightenPosition : Stage::SetTool, index, now.pass, label, 0};
  }
  return {Stage::Nothing, index, 0, {}, 0};
}

}  // namespace

std::optional<std::size_t> Job::stepIndex(std::string_view stepId) const {
  for (std::size_t i = 0; i < sheet.steps.size(); ++i)
    if (sheet.steps[i].id == stepId) return i;
  return std::nullopt;
}

Result<Job> emptyJob(Id shop, Id id, std::string sheetBytes) {
  CW_TRY(sheet, readSheet(sheetBytes));
  Job job;
  job.head = genesis(shop, id, sha256(sheetBytes));
  job.shop = std::move(shop);
  job.id = std::move(id);
  job.steps.resize(sheet.steps.size());
  job.sheet = std::move(sheet);
  job.sheetBytes = std::move(sheetBytes);
  return job;
}

void apply(Job& job, Entry entry) {
  job.head = entryHash(job.head, canonical(entryToJson(entry)));
  std::visit(Fold(job, entry), entry.body);
  job.entries.push_back({std::move(entry), job.head, false, std::nullopt});
}

bool leftOpen(const Job& job) {
  if (job.last() == nullptr) return false;
  const Body& body = job.last()->body;
  if (const auto* checked = std::get_if<CheckMade>(&body)) return checked->answer == Answer::No;
  if (const auto* measured = std::get_if<Measured>(&body))
    return job.steps[*job.stepIndex(measured->step)].state == StepState::Open;
  if (const auto* started = std::get_if<HandStarted>(&body)) return !started->stuck.empty();
  if (const auto* pulled = std::get_if<Tightened>(&body)) return !pulled->within;
  if (const auto* read = std::get_if<GapsRead>(&body)) return !read->within && read->allowedBy.empty();
  if (const auto* seen = std::get_if<Witnessed>(&body)) return !seen->agrees;
  if (const auto* round = std::get_if<CheckPassMade>(&body)) return !round->moved.empty();
  return false;
}

Next nextIn(const Job& job, std::size_t index) {
  const Step& step = job.sheet.steps[index];
  const StepProgress& progress = job.steps[index];
  if (!progress.warningsRead && !(step.warnings.empty() && step.cautions.empty()))
    return {Stage::ReadWarnings, index, 0, {}, 0};
  switch (step.kind) {
    case StepKind::Act:
      return {Stage::Act, index, 0, {}, 0};
    case StepKind::Check:
      return {Stage::Check, index, 0, {}, 0};
    case StepKind::Measure:
      return {Stage::Measure, index, 0, {}, 0};
    case StepKind::Apply:
      return {Stage::Apply, index, 0, {}, 0};
    case StepKind::Hold:
      return {Stage::Hold, index, 0, {}, 0};
    case StepKind::Tighten:
      return nextInTighten(job, index);
  }
  return {};
}

Next next(const Job& job) {
  if (job.entries.empty()) return {Stage::Start, 0, 0, {}, 0};
  if (job.finished) return {};
  if (job.paused) return {Stage::Resume, 0, 0, {}, 0};
  const auto firstIn = [&](StepState state) {
    return std::find_if(job.steps.begin(), job.steps.end(),
                        [&](const StepProgress& p) { return p.state == state; });
  };
  auto open = firstIn(StepState::Open);
  if (open == job.steps.end()) open = firstIn(StepState::SetAside);
  if (open == job.steps.end()) return {Stage::Finish, 0, 0, {}, 0};
  return nextIn(job, static_cast<std::size_t>(open - job.steps.begin()));
}

Length differenceOf(const std::vector<StatedLength>& gaps) {
  if (gaps.empty()) return {};
  const auto [narrowest, widest] = std::minmax_element(
      gaps.begin(), gaps.end(), [](const auto& a, const auto& b) { return a.value() < b.value(); });
  return widest->value() - narrowest->value();
}

bool even(const std::vector<StatedLength>& gaps, const GapReadings& wanted) {
  return differenceOf(gaps).si() <= wanted.mostDifference.value().si() * (1 + kSlack);
}

bool within(const StatedTorque& value, const JobTorque& torque) {
  const double slack = kSlack * torque.high.value().si();
  return value.value().si() >= torque.low.value().si() - slack &&
         value.value().si() <= torque.high.value().si() + slack;
}

const std::vector<std::string>& orderOf(const Job& job, const Step& step) {
  return jointOf(job, step)->order;
}

int passesOf(const Job& job, const Step& step) {
  const PassPlan& plan = jointOf(job, step)->passes;
  return static_cast<int>(plan.shares.size()) + (plan.snug ? 1 : 0);
}

double shareOf(const Job& job, const Step& step, int pass) {
  const PassPlan& plan = jointOf(job, step)->passes;
  if (plan.snug && pass == 1) return *plan.snug;
  return plan.shares.at(static_cast<std::size_t>(pass - (plan.snug ? 2 : 1)));
}

int checkRoundsOf(const Job& job, const Step& step) {
  const auto& check = jointOf(job, step)->passes.check;
  return check ? static_cast<int>(check->limit) : 0;
}

JobTorque torqueAt(const Job& job, std::size_t index, const std::string& position) {
  if (const auto& torque = job.steps[index].torque) return *torque;
  const Joint& joint = *jointOf(job, job.sheet.steps[index]);
  const Specification& specification = *job.sheet.specification(joint.specificationAt(position));
  const StatedTorque aim = specification.aim.value_or(StatedTorque{});
  // As in allowedBand: a source that states a highest torque only has no lowest.
  return {specification.low.value_or(StatedTorque{"0", aim.unit}), aim, specification.high.value_or(aim)};
}

}  // namespace cw

#include "core/record/fold.h"

#include <algorithm>

#include "core/record/next.h"

namespace cw {
namespace {

/// What an entry that holds does to its step; one overload for each kind, none for all.
class StepFold {
 public:
  StepFold(StepProgress& progress, const Job& job, std::size_t step, const Entry& entry)
      : m_progress(progress), m_now(progress.tightening), m_job(job), m_index(step), m_entry(entry) {}

  void operator()(const WarningsRead&) { m_progress.warningsRead = true; }
  void operator()(const ActDone&) { m_progress.state = StepState::Done; }
  void operator()(const CheckMade& body) { closeOrReopen(body.answer == Answer::Yes); }
  void operator()(const Measured& body) {
    closeOrReopen(withinLimits(m_job.sheet.steps[m_index], body.value));
  }
  void operator()(const Applied&) { m_progress.state = StepState::Done; }
  void operator()(const HandStarted& body) { m_now.handStarted = body.stuck.empty(); }
  void operator()(const ConditionConfirmed& body) { m_now.conditions.insert(body.condition); }
  void operator()(const ToolSet& body) {
    const PersonSign holder = m_entry.by.front().person;
    std::erase_if(m_now.inHand, [&](const InHand& each) {
      return each.holder == holder || each.set.tool == body.tool.text;
    });
    m_now.inHand.push_back({holder, body});
    m_now.witnessed = false;
  }
  void operator()(const PassCounted& body) {
    for (const std::string& label : body.positions.value) m_now.counted.insert(label);
    m_now.inHand.clear();
    if (!body.positions.value.empty() && m_now.counted.size() < order().size()) return;
    m_now.counted.clear();
    ++m_now.pass;
  }
  void operator()(const Tightened& body) {
    if (!body.within) return;
    m_now.tightened.insert(body.position);
    while (m_now.firstOpen < order().size() && m_now.tightened.contains(order()[m_now.firstOpen]))
      ++m_now.firstOpen;
    if (m_now.firstOpen < order().size()) return;
    ++m_now.pass;
    closeIfThrough();
  }
  void operator()(const GapsRead& body) {
    if (!body.within && body.allowedBy.empty()) return;
    m_now.gapsRead = body.pass;
    closeIfThrough();
  }
  void operator()(const CheckPassMade& body) {
    m_now.rounds = body.round;
    m_now.settled = body.moved.empty();
    if (m_now.settled) m_progress.state = StepState::Done;
  }
  void operator()(const Witnessed& body) {
    m_now.witnessed = body.agrees;
    if (m_job.sheet.steps[m_index].kind == StepKind::Hold) closeOrReopen(body.agrees);
  }
  void operator()(const SetAside& body) { close(StepState::SetAside, body.reason); }
  void operator()(const LeftBlank& body) {
    close(StepState::Blank, body.reason);
    m_progress.absence = body.absence;
  }
  void operator()(const Deviated& body) {
    m_progress.reason = body.reason;
    if (body.aim)
      m_progress.torque = torqueOf(body);
    else
      m_progress.state = StepState::Deviated;
  }
  void operator()(const ToolStopped& body) {
    std::erase_if(m_now.inHand, [&](const InHand& each) { return each.set.tool == body.tool.text; });
  }
  // Which earlier entries these overtake is seen to before; what is done anew begins with setting the wrench.
  void operator()(const Reopened&) { m_now.inHand.clear(); }
  void operator()(const Corrected&) {
    if (m_job.kept(m_entry.sequence).turned) m_now.inHand.clear();
  }
  void operator()(const TakenApart&) {}
  // Of the job, not of a step.
  void operator()(const JobStarted&) {}
  void operator()(const SignedIn&) {}
  void operator()(const Confirmed&) {}
  void operator()(const Paused&) {}
  void operator()(const Resumed&) {}
  void operator()(const Repaired&) {}
  void operator()(const ClockWentBack&) {}
  void operator()(const CalledOff&) {}
  void operator()(const Finished&) {}

 private:
  const std::vector<std::string>& order() const { return orderOf(m_job, m_job.sheet.steps[m_index]); }
  void close(StepState state, const std::string& reason) {
    m_progress.state = state;
    m_progress.reason = reason;
  }
  void closeOrReopen(bool good) { m_progress.state = good ? StepState::Done : StepState::Open; }
  /// After the last pass, where no check pass follows.
  void closeIfThrough() {
    const Step& step = m_job.sheet.steps[m_index];
    const bool passed = m_now.pass > passesOf(m_job, step);
    if (passed && checkRoundsOf(m_job, step) == 0 && !gapsDue(m_job, m_index, m_progress))
      m_progress.state = StepState::Done;
  }

  StepProgress& m_progress;
  Tightening& m_now;
  const Job& m_job;
  std::size_t m_index;
  const Entry& m_entry;
};

/// Does an entry bear on the step?
bool concerns(const Job& job, std::size_t step, const Kept& kept) {
  const Body& body = kept.body();
  if (std::holds_alternative<ToolStopped>(body)) return job.sheet.steps[step].kind == StepKind::Tighten;
  if (const auto* corrected = std::get_if<Corrected>(&body))
    return !job.kept(corrected->of).overtaken && stepMeant(job, job.kept(corrected->of).body()) == step;
  return stepMeant(job, body) == step;
}

}  // namespace

std::size_t stepMeant(const Job& job, const Body& body) {
  const std::string& step = stepOf(body);
  return step.empty() ? job.steps.size() : job.stepIndex(step).value_or(job.steps.size());
}

void foldOne(StepProgress& progress, const Job& job, std::size_t step, const Entry& entry, const Body& body) {
  if (!std::holds_alternative<ToolStopped>(body) && !std::holds_alternative<Witnessed>(body)) {
    for (const Doer& doer : entry.by) progress.hands.insert(doer.person);
    progress.hands.insert(entry.enteredBy);
    if (!entry.supervisor.empty()) progress.hands.insert(entry.supervisor);
  }
  std::visit(StepFold(progress, job, step, entry), body);
}

StepProgress foldStep(const Job& job, std::size_t step, int before) {
  StepProgress out;
  for (const Kept& kept : job.entries) {
    if (kept.entry.sequence >= before) break;
    if (!kept.overtaken && concerns(job, step, kept)) foldOne(out, job, step, kept.entry, kept.body());
  }
  return out;
}

}  // namespace cw

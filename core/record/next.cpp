#include "core/record/next.h"

#include <algorithm>

namespace cw {
namespace {

const Joint& jointOf(const Job& job, std::size_t step) {
  return *job.sheet.joint(job.sheet.steps[step].joint);
}

/// The first condition that nobody has confirmed, with the positions it holds for.
std::optional<Next> conditionDue(const Job& job, std::size_t step, const Tightening& now) {
  for (const std::string& condition : job.plans[step].conditions) {
    if (now.conditions.contains(condition)) continue;
    Next out{Stage::ConfirmCondition, step};
    out.condition = condition;
    for (const std::string& label : jointOf(job, step).order)
      if (conditionAt(job, step, label) == condition) out.positions.push_back(label);
    return out;
  }
  return std::nullopt;
}

/// The positions of an early pass that are to be done next with one setting.
std::vector<std::string> partOfPass(const Job& job, std::size_t step, const StepProgress& progress) {
  std::vector<std::string> out;
  JobTorque torque;
  for (const std::string& label : jointOf(job, step).order) {
    if (progress.tightening.counted.contains(label)) continue;
    const JobTorque own = torqueAt(job, step, progress, label);
    if (out.empty()) torque = own;
    if (own == torque) out.push_back(label);
  }
  return out;
}

Next inFinalPass(const Job& job, std::size_t step, const StepProgress& progress) {
  const Tightening& now = progress.tightening;
  const auto& order = jointOf(job, step).order;
  if (now.firstOpen >= order.size()) return {Stage::Nothing, step};
  const std::string& label = order[now.firstOpen];
  Next out{Stage::SetTool, step, now.pass};
  if (!now.tightened.empty() || now.set() != nullptr) out.position = label;
  if (now.set() == nullptr) return out;
  if (job.sheet.steps[step].hold && !now.witnessed) return {Stage::WitnessBeforeFinal, step, now.pass};
  const JobTorque torque = torqueAt(job, step, progress, label);
  const bool fits = std::any_of(now.inHand.begin(), now.inHand.end(),
                                [&](const InHand& each) { return within(each.set.setting, torque); });
  if (fits) out.stage = Stage::TightenPosition;
  return out;
}

Next nextInTighten(const Job& job, std::size_t step, const StepProgress& progress) {
  const Tightening& now = progress.tightening;
  const int passes = passesOf(job, job.sheet.steps[step]);
  if (!now.handStarted && jointOf(job, step).passes.byHand) return {Stage::HandStart, step};
  if (auto due = conditionDue(job, step, now)) return *std::move(due);
  if (gapsDue(job, step, progress)) return {Stage::ReadGaps, step, now.pass - 1};
  if (now.pass > passes)
    return {now.set() == nullptr ? Stage::SetTool : Stage::CheckPass, step, passes, {}, now.rounds + 1};
  if (now.pass == passes) return inFinalPass(job, step, progress);
  Next out{now.set() == nullptr ? Stage::SetTool : Stage::CountPass, step, now.pass};
  out.positions = partOfPass(job, step, progress);
  return out;
}

bool holdLeftOut(const Job& job, std::size_t step) {
  const Step& asked = job.sheet.steps[step];
  const StepProgress& progress = job.steps[step];
  if (!asked.hold || progress.state == StepState::Done) return false;
  if (asked.kind == StepKind::Hold) return true;
  return !progress.tightening.witnessed;
}

}  // namespace

bool gapsDue(const Job& job, std::size_t step, const StepProgress& progress) {
  const PassPlan& plan = jointOf(job, step).passes;
  const Tightening& now = progress.tightening;
  const int made = now.pass - 1, ofShares = made - (plan.snug ? 1 : 0);
  if (!plan.gaps || ofShares < 1 || now.gapsRead >= made) return false;
  const auto& after = plan.gaps->afterPasses;
  return std::find(after.begin(), after.end(), static_cast<std::size_t>(ofShares)) != after.end();
}

bool isReopenable(const Job& job, std::size_t step) {
  const StepState state = job.steps[step].state;
  if (job.sheet.steps[step].kind == StepKind::Tighten && state == StepState::Done) return false;
  return state != StepState::Open;
}

bool leavesUndone(const Job& job, const Body& body) {
  if (const auto* checked = std::get_if<CheckMade>(&body)) return checked->answer == Answer::No;
  if (const auto* measured = std::get_if<Measured>(&body)) {
    const auto step = job.stepIndex(measured->step.text);
    return !step || !withinLimits(job.sheet.steps[*step], measured->value);
  }
  if (const auto* started = std::get_if<HandStarted>(&body)) return !started->stuck.empty();
  if (const auto* pulled = std::get_if<Tightened>(&body)) return !pulled->within;
  if (const auto* read = std::get_if<GapsRead>(&body)) return !read->within && read->allowedBy.empty();
  if (const auto* seen = std::get_if<Witnessed>(&body)) return !seen->agrees;
  if (const auto* round = std::get_if<CheckPassMade>(&body)) return !round->moved.empty();
  return false;
}

bool leftOpen(const Job& job) {
  return job.last() != nullptr && leavesUndone(job, job.last()->body);
}

Next nextIn(const Job& job, std::size_t index) {
  return nextIn(job, index, job.steps[index]);
}

Next nextIn(const Job& job, std::size_t index, const StepProgress& progress) {
  const Step& step = job.sheet.steps[index];
  if (!progress.warningsRead && !(step.warnings.empty() && step.cautions.empty()))
    return {Stage::ReadWarnings, index};
  switch (step.kind) {
    case StepKind::Act:
      return {Stage::Act, index};
    case StepKind::Check:
      return {Stage::Check, index};
    case StepKind::Measure:
      return {Stage::Measure, index};
    case StepKind::Apply:
      return {Stage::Apply, index};
    case StepKind::Hold:
      return {Stage::Hold, index};
    case StepKind::Tighten:
      return nextInTighten(job, index, progress);
  }
  return {};
}

Next next(const Job& job) {
  if (job.entries.empty()) return {Stage::Start};
  if (job.ended()) return {};
  if (job.paused) return {Stage::Resume};
  const auto firstIn = [&](StepState state) {
    return std::find_if(job.steps.begin(), job.steps.end(),
                        [&](const StepProgress& p) { return p.state == state; });
  };
  auto open = firstIn(StepState::Open);
  if (open == job.steps.end()) open = firstIn(StepState::SetAside);
  if (open == job.steps.end()) return {Stage::Finish};
  return nextIn(job, static_cast<std::size_t>(open - job.steps.begin()));
}

bool isWholeJoint(const Job& job, const Next& next) {
  return next.positions.empty() || next.positions.size() == job.plans[next.step].placeInOrder.size();
}

const std::string& setFor(const Job& job, const Next& next) {
  if (!next.position.empty()) return next.position;
  if (!next.positions.empty()) return next.positions.front();
  const auto& order = jointOf(job, next.step).order;
  const std::size_t open = job.steps[next.step].tightening.firstOpen;
  return order[open < order.size() ? open : 0];
}

std::vector<Shortfall> shortfallsOf(const Job& job) {
  std::vector<Shortfall> out;
  for (std::size_t i = 0; i < job.steps.size(); ++i) {
    const StepProgress& progress = job.steps[i];
    const StepKind kind = job.sheet.steps[i].kind;
    if (progress.state == StepState::Done) continue;
    const bool closed = progress.state == StepState::Blank || progress.state == StepState::Deviated;
    if (kind == StepKind::Tighten) {
      const std::size_t done = progress.tightening.tightened.size(), of = job.plans[i].placeInOrder.size();
      if (done < of)
        out.push_back({Shortfall::Kind::Positions, i, done, of});
      else if (!closed || progress.state == StepState::Blank)
        out.push_back({Shortfall::Kind::Step, i});
    } else if (kind == StepKind::Check && progress.state != StepState::Deviated) {
      out.push_back({Shortfall::Kind::Check, i});
    } else if (kind != StepKind::Hold && (!closed || progress.absence == Absence::NotRecorded)) {
      out.push_back({Shortfall::Kind::Step, i});
    }
    if (holdLeftOut(job, i)) out.push_back({Shortfall::Kind::Hold, i});
  }
  return out;
}

}  // namespace cw

#include <algorithm>

#include "core/record/rule_checks.h"
#include "core/record/rules.h"

namespace cw {
namespace {

Result<void> stageIs(const Situation& at, Stage stage) {
  CW_CHECK(stepInTurn(at.job, at.asked().id));
  const Next now = nextIn(at.job, at.step, at.progress);
  if (now.stage == stage) return {};
  return fail(ErrorCode::OutOfTurn, "step " + at.asked().id, kindOf(at.entry.body),
              {"“%1” is not what comes next here", {std::string(kindOf(at.entry.body))}}, doing(now.stage));
}

/// A wrench may be changed or set anew at any moment of a pass.
Result<void> inAPass(const Situation& at) {
  CW_CHECK(stepInTurn(at.job, at.asked().id));
  const Stage stage = nextIn(at.job, at.step, at.progress).stage;
  const bool isIt = stage == Stage::SetTool || stage == Stage::CountPass || stage == Stage::TightenPosition ||
                    stage == Stage::WitnessBeforeFinal || stage == Stage::CheckPass;
  return isIt ? Result<void>() : stageIs(at, Stage::SetTool);
}

Result<void> positionInTurn(const Tightened& body, const Situation& at) {
  CW_CHECK(stepInTurn(at.job, at.asked().id));
  if (at.progress.tightening.tightened.contains(body.position))
    return fail(ErrorCode::AlreadyDone, "position " + body.position.text, body.position.text,
                {"position %1 is tightened already", {body.position}},
                "go on with the next; one more click is one too many");
  CW_CHECK(stageIs(at, Stage::TightenPosition));
  const std::string wanted = nextIn(at.job, at.step, at.progress).position;
  if (body.position == wanted) return {};
  return fail(ErrorCode::OutOfTurn, "position " + body.position.text, body.position.text,
              {"position %1 is not next in the order", {body.position}}, {"position %1 is", {wanted}});
}

/// What each kind must come after; one overload for each.
struct Turn {
  const Situation& at;

  Result<void> operator()(const JobStarted&) const { return {}; }
  Result<void> operator()(const SignedIn&) const { return {}; }
  Result<void> operator()(const WarningsRead&) const { return stageIs(at, Stage::ReadWarnings); }
  Result<void> operator()(const ActDone&) const { return stageIs(at, Stage::Act); }
  Result<void> operator()(const CheckMade&) const { return stageIs(at, Stage::Check); }
  Result<void> operator()(const Measured&) const { return stageIs(at, Stage::Measure); }
  Result<void> operator()(const Applied&) const { return stageIs(at, Stage::Apply); }
  Result<void> operator()(const HandStarted&) const { return stageIs(at, Stage::HandStart); }
  Result<void> operator()(const ConditionConfirmed&) const { return stageIs(at, Stage::ConfirmCondition); }
  Result<void> operator()(const ToolSet&) const { return inAPass(at); }
  Result<void> operator()(const PassCounted&) const { return stageIs(at, Stage::CountPass); }
  Result<void> operator()(const GapsRead&) const { return stageIs(at, Stage::ReadGaps); }
  Result<void> operator()(const Tightened& body) const { return positionInTurn(body, at); }
  Result<void> operator()(const CheckPassMade&) const { return stageIs(at, Stage::CheckPass); }
  Result<void> operator()(const Witnessed&) const {
    return stageIs(at, at.asked().kind == StepKind::Hold ? Stage::Hold : Stage::WitnessBeforeFinal);
  }
  Result<void> operator()(const SetAside&) const { return stepTurn(); }
  Result<void> operator()(const LeftBlank&) const { return stepTurn(); }
  Result<void> operator()(const Deviated&) const { return stepTurn(); }
  Result<void> operator()(const Corrected&) const { return {}; }
  Result<void> operator()(const Reopened&) const { return {}; }
  Result<void> operator()(const Confirmed&) const { return {}; }
  Result<void> operator()(const Paused&) const { return {}; }
  Result<void> operator()(const Resumed&) const {
    if (at.job.paused) return {};
    return fail(ErrorCode::OutOfTurn, "job", "", "the job is not paused", doing(next(at.job).stage));
  }
  Result<void> operator()(const TakenApart&) const { return {}; }
  Result<void> operator()(const Repaired&) const { return {}; }
  Result<void> operator()(const ToolStopped&) const { return {}; }
  Result<void> operator()(const ClockWentBack&) const { return {}; }
  Result<void> operator()(const CalledOff&) const { return {}; }
  Result<void> operator()(const Finished&) const {
    const Next now = next(at.job);
    if (now.stage == Stage::Finish) return {};
    return fail(ErrorCode::OutOfTurn, "step " + at.job.sheet.steps[now.step].id, "",
                {"step %1 is still open", {at.job.sheet.steps[now.step].id}}, doing(now.stage));
  }

 private:
  Result<void> stepTurn() const { return stepInTurn(at.job, at.asked().id).map([](auto) {}); }
};

Result<std::size_t> knownStep(const Job& job, const std::string& step) {
  if (const auto index = job.stepIndex(step)) return *index;
  return fail(ErrorCode::NotFound, "step", step, {"the sheet has no step “%1”", {shown(step)}},
              "write the id of a step of this sheet");
}

/// The kinds of step that entries of a kind may speak of.
Result<void> ofKind(const Job& job, const Body& body, const std::string& step,
                    std::initializer_list<StepKind> kinds) {
  CW_TRY(index, knownStep(job, step));
  if (std::find(kinds.begin(), kinds.end(), job.sheet.steps[index].kind) != kinds.end()) return {};
  return fail(ErrorCode::OutOfTurn, "step " + step, kindOf(body),
              {"“%1” is not what comes next here", {std::string(kindOf(body))}},
              doing(nextIn(job, index).stage));
}

Result<void> knownEntry(const Job& job, int sequence) {
  if (sequence >= 1 && sequence <= job.count()) return {};
  return fail(ErrorCode::NotFound, "of", std::to_string(sequence),
              {"there is no entry %1", {std::to_string(sequence)}},
              {"write a number from 1 to %1", {std::to_string(job.count())}});
}

/// What each kind refers to is there; one overload for each.
struct References {
  const Job& job;
  const Body& body;

  Result<void> operator()(const JobStarted&) const { return {}; }
  Result<void> operator()(const SignedIn&) const { return {}; }
  Result<void> operator()(const WarningsRead& b) const { return knownStep(job, b.step).map([](auto) {}); }
  Result<void> operator()(const ActDone& b) const { return ofKind(job, body, b.step, {StepKind::Act}); }
  Result<void> operator()(const CheckMade& b) const { return ofKind(job, body, b.step, {StepKind::Check}); }
  Result<void> operator()(const Measured& b) const { return ofKind(job, body, b.step, {StepKind::Measure}); }
  Result<void> operator()(const Applied& b) const { return ofKind(job, body, b.step, {StepKind::Apply}); }
  Result<void> operator()(const HandStarted& b) const { return positions(b.step, b.stuck, "stuck"); }
  Result<void> operator()(const ConditionConfirmed& b) const { return tighten(b.step); }
  Result<void> operator()(const ToolSet& b) const { return tighten(b.step); }
  Result<void> operator()(const PassCounted& b) const { return positions(b.step, b.positions, "positions"); }
  Result<void> operator()(const GapsRead& b) const { return tighten(b.step); }
  Result<void> operator()(const Tightened& b) const { return positions(b.step, {b.position}, "position"); }
  Result<void> operator()(const CheckPassMade& b) const { return positions(b.step, b.moved, "moved"); }
  Result<void> operator()(const Witnessed& b) const {
    CW_TRY(index, knownStep(job, b.step));
    if (job.sheet.steps[index].hold) return {};
    return fail(ErrorCode::OutOfTurn, "step " + b.step.text, b.step.text,
                {"step %1 asks for no second person", {b.step}}, "leave it out");
  }
  Result<void> operator()(const SetAside& b) const { return knownStep(job, b.step).map([](auto) {}); }
  Result<void> operator()(const LeftBlank& b) const { return knownStep(job, b.step).map([](auto) {}); }
  Result<void> operator()(const Deviated& b) const {
    CW_TRY(index, knownStep(job, b.step));
    if (!b.aim || job.sheet.steps[index].kind == StepKind::Tighten) return {};
    return fail(ErrorCode::InvalidInput, "aim", b.aim->digits, "only a tighten step has a torque",
                "leave it out");
  }
  Result<void> operator()(const Corrected& b) const { return knownEntry(job, b.of); }
  Result<void> operator()(const Reopened& b) const {
    if (b.position.empty()) return knownStep(job, b.step).map([](auto) {});
    return positions(b.step, {b.position}, "position");
  }
  Result<void> operator()(const Confirmed& b) const {
    for (const int of : b.of) CW_CHECK(knownEntry(job, of));
    return {};
  }
  Result<void> operator()(const Paused&) const { return {}; }
  Result<void> operator()(const Resumed&) const { return {}; }
  Result<void> operator()(const TakenApart& b) const { return knownStep(job, b.step).map([](auto) {}); }
  Result<void> operator()(const Repaired& b) const {
    const Joint* joint = job.sheet.joint(b.joint);
    if (joint == nullptr)
      return fail(ErrorCode::NotFound, "joint", b.joint, {"the sheet has no joint “%1”", {shown(b.joint)}},
                  "write the id of a joint of this sheet");
    if (std::find(joint->order.begin(), joint->order.end(), b.position.text) != joint->order.end()) return {};
    return fail(ErrorCode::NotFound, "position", b.position.text,
                {"the joint has no position “%1”", {shown(b.position)}},
                "write the label that is on the part");
  }
  Result<void> operator()(const ToolStopped&) const { return {}; }
  Result<void> operator()(const ClockWentBack&) const { return {}; }
  Result<void> operator()(const CalledOff&) const { return {}; }
  Result<void> operator()(const Finished&) const { return {}; }

 private:
  Result<void> tighten(const std::string& step) const {
    return ofKind(job, body, step, {StepKind::Tighten});
  }
  Result<void> positions(const std::string& step, const std::vector<std::string>& labels,
                         std::string_view place) const {
    CW_CHECK(tighten(step));
    return knownPositions(job, *job.stepIndex(step), labels, place);
  }
};

}  // namespace

Result<void> inTurn(const Body& body, const Situation& at) {
  return std::visit(Turn{at}, body);
}

Result<void> speaksOfWhatIsThere(const Job& job, const Body& body) {
  return std::visit(References{job, body}, body);
}

Result<std::size_t> stepInTurn(const Job& job, const std::string& stepId) {
  CW_TRY(index, knownStep(job, stepId));
  const StepState state = job.steps[index].state;
  if (state == StepState::SetAside) return index;
  const Next now = next(job);
  if (state == StepState::Open && now.stage != Stage::Finish && now.step == index) return index;
  if (state != StepState::Open)
    return fail(ErrorCode::AlreadyDone, "step " + stepId, stepId, {"step %1 is closed already", {stepId}},
                "correct its entry, reopen it, or take apart from there");
  return fail(ErrorCode::OutOfTurn, "step " + stepId, stepId, {"step %1 is not yet its turn", {stepId}},
              {"step %1 is next", {job.sheet.steps[now.step].id}});
}

}  // namespace cw

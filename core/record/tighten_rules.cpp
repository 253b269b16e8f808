#include "core/record/step_rules.h"

#include <algorithm>

#include "core/joint/tool_fitness.h"
#include "core/record/rule_checks.h"
#include "core/shop/shop_json.h"
#include "core/units/format.h"

namespace cw {

namespace {

constexpr Length kWidestGap = millimetres(100);

/// Refused where the tool's deviation alone can leave the tolerance, or the setting is off its scale.
Result<void> checkFitness(const TorqueTool& tool, const StatedTorque& setting, const JobTorque& torque) {
  const TorqueBand allowed{torque.low.value(), torque.high.value()};
  for (const Finding& finding :
       toolFitness(tool, {setting, setting.value(), allowed, setting.value()}).findings)
    if (finding.severity == Severity::Blocking)
      return fail(ErrorCode::NotPermitted, tool.id, codeText(setting), finding.problem, finding.cure);
  return {};
}

/// A click carries no reading; a reading stands on the confirmed scale and within reason of the target.
Result<void> checkReading(const Tightened& body, const JobTorque& torque) {
  const std::string place = "position " + body.position;
  if (body.known == Known::Clicked) {
    if (!body.reading) return {};
    return fail(ErrorCode::InvalidInput, place, codeText(*body.reading), "a click is no reading",
                "say “read”, or leave the reading out");
  }
  if (!body.reading)
    return fail(ErrorCode::InvalidInput, place, "", "the reading is missing", "write what the tool shows");
  if (body.reading->unit != body.setting.unit)
    return fail(ErrorCode::InvalidInput, place, codeText(*body.reading),
                {"%1 is not on the scale in use", {text(*body.reading)}},
                {"read it in %1", {std::string(body.setting.unit->words)}});
  const double ratio = body.reading->value() / body.target.value();
  if (ratio < 0.2 || ratio > 5)
    return fail(ErrorCode::OutOfRange, place, codeText(*body.reading),
                {"%1 is %2 times the target", {text(*body.reading), significant(ratio, 2)}},
                "read the scale again");
  if (body.within != within(*body.reading, torque))
    return fail(ErrorCode::InvalidInput, place, codeText(*body.reading),
                "this does not say whether the reading is within tolerance", "leave that to the program");
  return {};
}

}  // namespace

Result<void> StepRules::operator()(const HandStarted& body) const {
  CW_TRY(index, at(body.step, Stage::HandStart));
  const auto& order = orderOf(m_job, m_job.sheet.steps[index]);
  CW_CHECK(knownPositions(order, body.stuck, "stuck"));
  return fullCount(body.count + static_cast<int>(body.stuck.size()), order.size());
}

Result<void> StepRules::operator()(const ConditionConfirmed& body) const {
  CW_TRY(index, at(body.step, Stage::ConfirmCondition));
  const Joint& joint = *m_job.sheet.joint(m_job.sheet.steps[index].joint);
  const std::string& wanted = m_job.sheet.specification(joint.specification)->condition;
  if (body.condition == wanted) return {};
  return fail(ErrorCode::OutOfRange, "condition", body.condition,
              {"the value is for %1 threads, not for “%2”", {wanted, shown(body.condition)}},
              {"bring them to “%1”, or have a deviation allowed", {wanted}});
}

Result<void> StepRules::operator()(const ToolSet& body) const {
  if (body.asUsed.isNull())
    return fail(ErrorCode::NotFound, "tool", body.tool,
                {"there is no tool “%1” in the crib", {shown(body.tool)}}, "write the id marked on the tool");
  CW_TRY(tool, toolFromJson(body.asUsed, "as_used"));
  if (body.setting.empty())
    return fail(ErrorCode::InvalidInput, "setting", "", "the setting is missing",
                "write value and unit as on the tool");
  CW_TRY(index, stepInTurn(m_job, body.step));
  const Next now = nextIn(m_job, index);
  // A wrench may be changed or set anew at any moment of a pass.
  const bool inPass = now.stage == Stage::SetTool || now.stage == Stage::CountPass ||
                      now.stage == Stage::TightenPosition || now.stage == Stage::WitnessBeforeFinal;
  if (!inPass) return at(body.step, Stage::SetTool).map([](auto) {});
  if (body.pass != now.pass)
    return fail(ErrorCode::OutOfTurn, "pass", std::to_string(body.pass),
                {"pass %1 is not under way", {std::to_string(body.pass)}},
                {"pass %1 is", {std::to_string(now.pass)}});
  CW_CHECK(checkRange(tool, body.setting));
  if (now.pass == passesOf(m_job, m_job.sheet.steps[index])) return finalTool(body, tool, now);
  const JobTorque torque = torqueAt(m_job, index, orderOf(m_job, m_job.sheet.steps[index]).front());
  if (body.setting.value() > torque.high.value())
    return fail(ErrorCode::OutOfRange, "setting", codeText(body.setting),
                {"%1 is above the final torque", {text(body.setting)}},
                {"an early pass stays below %1", {text(torque.aim)}});
  return {};
}

Result<void> StepRules::finalTool(const ToolSet& body, const TorqueTool& tool, const Next& now) const {
  const Step& step = m_job.sheet.steps[now.step];
  const std::string position = now.position.empty() ? orderOf(m_job, step).front() : now.position;
  const JobTorque torque = torqueAt(m_job, now.step, position);
  if (!within(body.setting, torque))
    return fail(ErrorCode::OutOfRange, "setting", codeText(body.setting),
                {"%1 is not the specified torque", {text(body.setting)}},
                {"set %1 to %2", {text(torque.low), text(torque.high)}});
  auto fit = checkInService(tool, localDate(m_entry.time));
  if (fit) fit = checkFitness(tool, body.setting, torque);
  if (fit || body.allowedBy.empty()) return fit;
  CW_CHECK(reasonGiven(body.reason, "a tool that is refused"));
  return lead(body.allowedBy, "allowed_by");
}

Result<void> StepRules::operator()(const PassCounted& body) const {
  CW_TRY(index, at(body.step, Stage::CountPass));
  return fullCount(body.count, orderOf(m_job, m_job.sheet.steps[index]).size());
}

Result<void> StepRules::operator()(const Tightened& body) const {
  CW_TRY(index, stepInTurn(m_job, body.step));
  if (m_job.sheet.steps[index].kind != StepKind::Tighten)
    return at(body.step, Stage::TightenPosition).map([](auto) {});
  const auto& order = orderOf(m_job, m_job.sheet.steps[index]);
  CW_CHECK(knownPositions(order, {body.position}, "position"));
  const Tightening& now = m_job.steps[index].tightening;
  if (now.tightened.contains(body.position))
    return fail(ErrorCode::AlreadyDone, "position " + body.position, body.position,
                {"position %1 is tightened already", {body.position}},
                "go on with the next; one more click is one too many");
  CW_CHECK(at(body.step, Stage::TightenPosition));
  const Next wanted = nextIn(m_job, index);
  if (body.position != wanted.position)
    return fail(ErrorCode::OutOfTurn, "position " + body.position, body.position,
                {"position %1 is not next in the order", {body.position}},
                {"position %1 is", {wanted.position}});
  const JobTorque torque = torqueAt(m_job, index, body.position);
  if (body.pass != now.pass || body.setting != now.set->setting || body.target != torque.aim)
    return fail(ErrorCode::InvalidInput, "position " + body.position, codeText(body.setting),
                "pass, setting or target are not those in force",
                {"they are pass %1, %2 for a target of %3",
                 {std::to_string(now.pass), text(now.set->setting), text(torque.aim)}});
  return checkReading(body, torque);
}

Result<void> StepRules::operator()(const GapsRead& body) const {
  CW_TRY(index, at(body.step, Stage::ReadGaps));
  const GapReadings& wanted = *m_job.sheet.joint(m_job.sheet.steps[index].joint)->passes.gaps;
  if (body.gaps.size() != wanted.places)
    return fail(ErrorCode::InvalidInput, "gaps", std::to_string(body.gaps.size()),
                {"%1 gaps are given", {std::to_string(body.gaps.size())}},
                {"the sheet asks for %1, going round", {std::to_string(wanted.places)}});
  for (const StatedLength& gap : body.gaps)
    if (gap.value() < Length() || gap.value() > kWidestGap)
      return fail(ErrorCode::OutOfRange, "gaps", codeText(gap),
                  {"%1 is no gap between two faces", {text(gap)}}, "read it again");
  if (const int made = nextIn(m_job, index).pass; body.pass != made)
    return fail(ErrorCode::OutOfTurn, "pass", std::to_string(body.pass),
                {"pass %1 is not the one just made", {std::to_string(body.pass)}},
                {"pass %1 is", {std::to_string(made)}});
  if (body.within != even(body.gaps, wanted))
    return fail(ErrorCode::InvalidInput, "within", "", "this does not say whether the gaps are even enough",
                "leave that to the program");
  if (body.within || body.allowedBy.empty()) return {};
  CW_CHECK(reasonGiven(body.reason, "faces that are not even"));
  return lead(body.allowedBy, "allowed_by");
}

Result<void> StepRules::operator()(const CheckPassMade& body) const {
  CW_TRY(index, at(body.step, Stage::CheckPass));
  const Step& step = m_job.sheet.steps[index];
  CW_CHECK(knownPositions(orderOf(m_job, step), body.moved, "moved"));
  const int wanted = m_job.steps[index].tightening.rounds + 1;
  if (wanted > checkRoundsOf(m_job, step))
    return fail(ErrorCode::OutOfTurn, "step " + body.step, std::to_string(wanted),
                {"%1 rounds have been made and it still moves", {std::to_string(wanted - 1)}},
                "stop: find the cause, then take apart or have a deviation allowed");
  if (body.round != wanted)
    return fail(ErrorCode::OutOfTurn, "round", std::to_string(body.round),
                {"round %1 is not next", {std::to_string(body.round)}},
                {"round %1 is", {std::to_string(wanted)}});
  return {};
}

}  // namespace cw

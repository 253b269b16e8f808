#include <algorithm>

#include "core/joint/tool_fitness.h"
#include "core/record/rule_checks.h"
#include "core/record/rules.h"
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
Result<void> checkReading(const Tightened& body) {
  const std::string place = "position " + body.position.text;
  if (body.known == Known::Clicked) {
    if (!body.reading) return {};
    return fail(ErrorCode::InvalidInput, place, codeText(*body.reading), "a click is no reading",
                "say “read”, or leave the reading out");
  }
  if (!body.reading)
    return fail(ErrorCode::InvalidInput, place, "", "the reading is missing", "write what the tool shows");
  if (body.reading->unit != body.setting.value.unit)
    return fail(ErrorCode::InvalidInput, place, codeText(*body.reading),
                {"%1 is not on the scale in use", {text(*body.reading)}},
                {"read it in %1", {std::string(body.setting.value.unit->words)}});
  const double ratio = body.reading->value() / body.target.value.value();
  if (ratio < 0.2 || ratio > 5)
    return fail(ErrorCode::OutOfRange, place, codeText(*body.reading),
                {"%1 is %2 times the target", {text(*body.reading), significant(ratio, 2)}},
                "read the scale again");
  return {};
}

}  // namespace

Result<void> Rules::operator()(const HandStarted& body) const {
  return fullCount(body.count + static_cast<int>(body.stuck.size()), m_job.plans[m_at.step].placeInOrder.size());
}

Result<void> Rules::operator()(const ConditionConfirmed& body) const {
  const std::string wanted = nextIn(m_job, m_at.step, m_at.progress).condition;
  if (body.condition == wanted) return {};
  return fail(ErrorCode::OutOfRange, "condition", body.condition,
              {"the value is for %1 threads, not for “%2”", {wanted, shown(body.condition)}},
              {"bring them to “%1”, or have a deviation allowed", {wanted}});
}

Result<void> Rules::operator()(const ToolSet& body) const {
  if (body.asUsed.value.isNull())
    return fail(ErrorCode::NotFound, "tool", body.tool.text,
                {"there is no tool “%1” in the crib", {shown(body.tool)}}, "write the id marked on the tool");
  CW_TRY(tool, toolFromJson(body.asUsed, "as_used"));
  if (tool.id != body.tool.text || m_entry.by.front().tool != body.tool.text)
    return fail(ErrorCode::InvalidInput, "tool", body.tool.text,
                {"the tool is %1 here and %2 there", {shown(body.tool), shown(tool.id)}},
                "name one tool, as marked on it");
  if (body.setting.empty())
    return fail(ErrorCode::InvalidInput, "setting", "", "the setting is missing",
                "write value and unit as on the tool");
  CW_CHECK(checkRange(tool, body.setting));
  const Next now = nextIn(m_job, m_at.step, m_at.progress);
  const JobTorque torque = torqueAt(m_job, m_at.step, m_at.progress, setFor(m_job, now));
  const bool last = now.pass >= passesOf(m_job, m_at.asked());
  return last ? finalTool(body, tool, torque) : earlyTool(body, tool, torque);
}

/// An early pass needs range, unit and a wrench that nobody doubts.
Result<void> Rules::earlyTool(const ToolSet& body, const TorqueTool& tool, const JobTorque& torque) const {
  if (body.setting.value() > torque.high.value())
    return fail(ErrorCode::OutOfRange, "setting", codeText(body.setting),
                {"%1 is above the final torque", {text(body.setting)}},
                {"an early pass stays below %1", {text(torque.aim)}});
  return refusedTool(body, checkUndoubted(tool));
}

Result<void> Rules::finalTool(const ToolSet& body, const TorqueTool& tool, const JobTorque& torque) const {
  if (!within(body.setting, torque))
    return fail(ErrorCode::OutOfRange, "setting", codeText(body.setting),
                {"%1 is not the specified torque", {text(body.setting)}},
                {"set %1 to %2", {text(torque.low), text(torque.high)}});
  auto fit = checkInService(tool, localDate(m_entry.doneAt()));
  if (fit) fit = checkFitness(tool, body.setting, torque);
  return refusedTool(body, std::move(fit));
}

Result<void> Rules::refusedTool(const ToolSet& body, Result<void> fit) const {
  if (fit && body.allowedBy.empty() && body.reason.empty()) return {};
  if (fit)
    return fail(ErrorCode::InvalidInput, "allowed_by", body.allowedBy.text, "this tool needs nobody's word",
                "leave “allowed_by” and “reason” out");
  if (body.allowedBy.empty() && body.reason.empty()) return fit;
  CW_CHECK(said(body.reason, "reason", "a tool that is refused is used for a reason"));
  return leadsWord(body.allowedBy, "allowed_by");
}

/// Every tool named by a pull is one that is set for this pass, at a setting that the torque allows.
Result<void> Rules::toolInHand(const JobTorque* torque) const {
  for (const Doer& doer : m_entry.by) {
    const auto& inHand = m_at.progress.tightening.inHand;
    const auto found = std::find_if(inHand.begin(), inHand.end(),
                                    [&](const InHand& each) { return each.set.tool == doer.tool.text; });
    if (found == inHand.end())
      return fail(ErrorCode::OutOfTurn, "by.tool", doer.tool.text,
                  {"no tool “%1” is set for this pass", {shown(doer.tool)}},
                  "set the wrench first, and name the one in hand");
    if (torque != nullptr && !within(found->set.setting, *torque))
      return fail(ErrorCode::OutOfTurn, "by.tool", doer.tool.text,
                  {"%1 is set to %2, which is not the torque here", {doer.tool, text(found->set.setting)}},
                  {"set %1 to %2", {text(torque->low), text(torque->high)}});
  }
  return {};
}

Result<void> Rules::operator()(const PassCounted& body) const {
  CW_CHECK(toolInHand(nullptr));
  const Next due = nextIn(m_job, m_at.step, m_at.progress);
  return fullCount(body.count, due.positions.size());
}

Result<void> Rules::operator()(const Tightened& body) const {
  const JobTorque torque = torqueAt(m_job, m_at.step, m_at.progress, body.position);
  CW_CHECK(toolInHand(&torque));
  return checkReading(body);
}

Result<void> Rules::operator()(const GapsRead& body) const {
  const GapReadings& wanted = *m_at.joint().passes.gaps;
  if (body.gaps.size() != wanted.places)
    return fail(ErrorCode::InvalidInput, "gaps", std::to_string(body.gaps.size()),
                {"%1 gaps are given", {std::to_string(body.gaps.size())}},
                {"the sheet asks for %1, going round", {std::to_string(wanted.places)}});
  for (const StatedLength& gap : body.gaps)
    if (gap.value() < Length() || gap.value() > kWidestGap)
      return fail(ErrorCode::OutOfRange, "gaps", codeText(gap),
                  {"%1 is no gap between two faces", {text(gap)}}, "read it again");
  const bool asksALead = !body.allowedBy.empty() || !body.reason.empty();
  if (body.within && asksALead)
    return fail(ErrorCode::InvalidInput, "allowed_by", body.allowedBy.text, "even gaps need nobody's word",
                "leave “allowed_by” and “reason” out");
  if (!asksALead) return {};
  CW_CHECK(said(body.reason, "reason", "faces that are not even are let be for a reason"));
  if (body.allowedBy.empty())
    return fail(ErrorCode::InvalidInput, "allowed_by", "", "it is not said who let the faces be",
                "name the shop lead");
  return leadsWord(body.allowedBy, "allowed_by");
}

Result<void> Rules::operator()(const CheckPassMade& body) const {
  CW_CHECK(toolInHand(nullptr));
  if (body.round <= checkRoundsOf(m_job, m_at.asked())) return {};
  return fail(ErrorCode::OutOfTurn, "step " + body.step.text, std::to_string(body.round),
              {"%1 rounds have been made and it still moves", {std::to_string(body.round - 1)}},
              "stop: find the cause, then take apart or have a deviation allowed");
}

}  // namespace cw

#include "core/record/step_rules.h"

#include <algorithm>

#include "core/procedure/quick_joint.h"
#include "core/record/rule_checks.h"
#include "core/units/format.h"

namespace cw {

namespace {

bool sameField(const Json& a, const Json& b, std::string_view key) {
  const Json* left = a.find(key);
  const Json* right = b.find(key);
  return (left == nullptr) == (right == nullptr) && (left == nullptr || *left == *right);
}

/// A correction restates what was entered: kind, step, pass, position, tool setting and target stay.
Result<void> checkCorrection(const Kept& old, const Corrected& body) {
  const std::string_view kind = kindOf(old.entry.body);
  static constexpr std::string_view kCorrectable[] = {"done", "checked", "measured", "applied", "tightened"};
  if (std::find(std::begin(kCorrectable), std::end(kCorrectable), kind) == std::end(kCorrectable))
    return fail(ErrorCode::NotPermitted, "of", kind,
                {"an entry of kind “%1” is not corrected", {std::string(kind)}},
                "take apart or set aside instead");
  if (old.correctedBy || old.overtaken)
    return fail(ErrorCode::AlreadyDone, "of", std::to_string(body.of),
                {"entry %1 no longer holds", {std::to_string(body.of)}}, "correct the entry that holds now");
  CW_TRY(now, bodyFromJson(kind, body.now, "now"));
  const Json before = bodyToJson(old.entry.body), after = bodyToJson(now);
  for (const auto key : {"step", "pass", "position", "setting", "target", "unit"})
    if (!sameField(before, after, key))
      return fail(ErrorCode::InvalidInput, std::string("now.") + key, "",
                  {"“%1” is not what was entered", {key}}, "correct only what was read or noted");
  return {};
}

}  // namespace

Result<void> StepRules::operator()(const JobStarted& body) const {
  if (body.workOrder.empty() || body.machine.empty())
    return fail(ErrorCode::InvalidInput, body.workOrder.empty() ? "work_order" : "machine", "",
                "a job belongs to a work order and a machine", "write both");
  if (body.sheetDigest != hex(sha256(m_job.sheetBytes)))
    return fail(ErrorCode::InvalidInput, "sheet_digest", body.sheetDigest,
                "this is not the digest of the job's sheet", "start from the sheet as it was issued");
  const bool follows = body.reason == Reason::Comeback || body.reason == Reason::RetorqueDue;
  if (follows && body.parent.empty())
    return fail(ErrorCode::InvalidInput, "parent", "",
                {"“%1” names no earlier record", {std::string(wordOf(body.reason))}},
                "name the job it follows from");
  return body.quick ? quickJoint(body) : Result<void>();
}

/// Values that nobody reviewed are answered for by somebody who has learned the trade, and by a lead where
/// the guard would stop them.
Result<void> StepRules::quickJoint(const JobStarted& body) const {
  CW_CHECK(checkQuickSheet(m_job.sheet));
  const Person& author = *m_floor.person(m_entry.enteredBy);
  const bool qualified = (author.may(Role::Technician) || author.may(Role::ShopLead)) && !author.apprentice;
  if (!qualified)
    return fail(ErrorCode::NotPermitted, "entered_by", author.sign,
                {"%1 may not answer for values that have no sheet", {author.name}},
                "let a technician who is no apprentice, or a lead, enter them");
  CW_TRY(verdict, verdictFromCode(body.guard));
  if (verdict == Verdict::InBand || verdict == Verdict::NotJudged) return {};
  if (body.guardAllowedBy.empty())
    return fail(ErrorCode::NotPermitted, "guard", body.guard,
                {"the guard says “%1” of this torque", {body.guard}},
                "look at the source again, or have a lead allow it with a reason");
  CW_CHECK(lead(body.guardAllowedBy, "guard_allowed_by"));
  return reasonGiven(body.guardReason, "a torque that the guard refuses");
}

Result<void> StepRules::operator()(const SignedIn&) const {
  return {};
}

Result<void> StepRules::operator()(const SetAside& body) const {
  CW_CHECK(stepInTurn(m_job, body.step));
  return reasonGiven(body.reason, "setting a step aside");
}

Result<void> StepRules::operator()(const LeftBlank& body) const {
  CW_CHECK(stepInTurn(m_job, body.step));
  return reasonGiven(body.reason, "leaving a step blank");
}

Result<void> StepRules::operator()(const Deviated& body) const {
  CW_TRY(index, stepInTurn(m_job, body.step));
  CW_CHECK(reasonGiven(body.what, "what was done otherwise"));
  CW_CHECK(reasonGiven(body.reason, "a deviation"));
  CW_CHECK(lead(body.allowedBy, "allowed_by"));
  if (!body.aim) return {};
  if (m_job.sheet.steps[index].kind != StepKind::Tighten)
    return fail(ErrorCode::InvalidInput, "aim", codeText(*body.aim), "only a tighten step has a torque",
                "leave it out");
  const Torque low = body.low.value_or(*body.aim).value(), high = body.high.value_or(*body.aim).value();
  if (low > body.aim->value() || body.aim->value() > high || !(body.aim->value() > Torque{}))
    return fail(ErrorCode::OutOfRange, "aim", codeText(*body.aim),
                {"%1 is not between its own limits", {text(*body.aim)}},
                "give low, aim and high in rising order");
  return {};
}

Result<void> StepRules::operator()(const Corrected& body) const {
  if (body.of < 1 || body.of > m_job.count())
    return fail(ErrorCode::NotFound, "of", std::to_string(body.of),
                {"there is no entry %1", {std::to_string(body.of)}},
                {"write a number from 1 to %1", {std::to_string(m_job.count())}});
  CW_CHECK(reasonGiven(body.reason, "a correction"));
  const Kept& old = m_job.entries[static_cast<std::size_t>(body.of - 1)];
  return checkCorrection(old, body);
}

Result<void> StepRules::operator()(const Paused& body) const {
  return reasonGiven(body.reason, "a pause");
}

Result<void> StepRules::operator()(const Resumed&) const {
  if (m_job.paused) return {};
  return fail(ErrorCode::OutOfTurn, "job", "", "the job is not paused", doing(next(m_job).stage));
}

Result<void> StepRules::operator()(const TakenApart& body) const {
  if (!m_job.stepIndex(body.step))
    return fail(ErrorCode::NotFound, "step", body.step, {"the sheet has no step “%1”", {shown(body.step)}},
                "write the id of a step of this sheet");
  return reasonGiven(body.reason, "taking apart");
}

Result<void> StepRules::operator()(const Repaired& body) const {
  CW_CHECK(lead(m_entry.enteredBy, "entered_by"));
  const Joint* joint = m_job.sheet.joint(body.joint);
  if (joint == nullptr)
    return fail(ErrorCode::NotFound, "joint", body.joint,
                {"the sheet has no joint “%1”", {shown(body.joint)}},
                "write the id of a joint of this sheet");
  CW_CHECK(knownPositions(joint->order, {body.position}, "position"));
  CW_CHECK(reasonGiven(body.what, "what was repaired"));
  return reasonGiven(body.reason, "a repair");
}

Result<void> StepRules::operator()(const ClockWentBack& body) const {
  CW_TRY(before, parseRfc3339(body.before));
  if (m_job.last() != nullptr && before == m_job.last()->time && m_entry.time < before) return {};
  return fail(ErrorCode::InvalidInput, "before", body.before, "the clock did not go back from there",
              "leave this entry to the program");
}

Result<void> StepRules::operator()(const Finished&) const {
  const Next now = next(m_job);
  if (now.stage == Stage::Finish) return {};
  return fail(ErrorCode::OutOfTurn, "step " + m_job.sheet.steps[now.step].id, "",
              {"step %1 is still open", {m_job.sheet.steps[now.step].id}}, doing(now.stage));
}

}  // namespace cw

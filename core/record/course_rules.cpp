#include "core/procedure/applicability.h"
#include "core/procedure/bench_limits.h"
#include "core/procedure/quick_joint.h"
#include "core/record/rule_checks.h"
#include "core/record/rules.h"
#include "core/units/format.h"

namespace cw {
namespace {

/// Every position of every joint has a torque that can be compared with.
Result<void> everyTorqueIsStated(const Job& job) {
  for (std::size_t i = 0; i < job.sheet.steps.size(); ++i) {
    if (job.sheet.steps[i].kind != StepKind::Tighten) continue;
    for (const std::string& label : orderOf(job, job.sheet.steps[i]))
      if (const JobTorque torque = torqueBySheet(job, i, label);
          torque.empty() || !(torque.aim.value() > Torque{}))
        return fail(ErrorCode::NotPermitted, "sheet, step " + job.sheet.steps[i].id, label,
                    {"position %1 has no torque to aim at", {label}}, "state it on the sheet");
  }
  return {};
}

}  // namespace

Result<void> Rules::leadsWord(const PersonSign& sign, std::string_view place) const {
  const Given how = wordFor(m_job, m_at.step, m_at.progress, m_entry.body).value_or(Given::HereOrByPhone);
  const auto* started = std::get_if<JobStarted>(&m_entry.body);
  const bool alone = started != nullptr ? started->alone : m_job.start.alone;
  const Voucher* lead = m_entry.voucher(sign.empty() ? m_entry.enteredBy.text : sign.text);
  const bool isLead = lead != nullptr && lead->may(Role::ShopLead) && !lead->apprentice;
  if (sign.empty() && alone && how == Given::HereOrByPhone) return {};
  if (!isLead)
    return fail(ErrorCode::NotPermitted, std::string(place), sign.text,
                sign.empty() ? Message("this is not for the one at the bench to decide")
                             : Message("“%1” is no shop lead", {shown(sign)}),
                "this needs a shop lead's word");
  if (how == Given::HereOrByPhone || lead->here()) return {};
  return fail(ErrorCode::NotPermitted, std::string(place), sign.text,
              {"%1 must say so in person", {lead->name}}, "let the lead come and give the PIN");
}

Result<void> Rules::operator()(const JobStarted& body) const {
  if (body.workOrder.empty() || body.machine.empty())
    return fail(ErrorCode::InvalidInput, body.workOrder.empty() ? "work_order" : "machine", "",
                "a job belongs to a work order and a machine", "write both");
  CW_CHECK(checkBenchCan(m_job.sheet));
  CW_CHECK(everyTorqueIsStated(m_job));
  CW_CHECK(sheetFits(body));
  const bool follows = body.reason == Reason::Comeback || body.reason == Reason::RetorqueDue;
  if (follows && body.parent.empty())
    return fail(ErrorCode::InvalidInput, "parent", "",
                {"“%1” names no earlier record", {std::string(wordOf(*body.reason))}},
                "name the job it follows from");
  return body.quick ? quickJoint(body) : Result<void>();
}

/// A sheet for another model or serial number is used by a lead's word only.
Result<void> Rules::sheetFits(const JobStarted& body) const {
  const Applicability fit = applicability(m_job.sheet, body.model, body.serial);
  if (fit.verdict != Applies::Unfit) {
    if (body.fitAllowedBy.empty()) return {};
    return fail(ErrorCode::InvalidInput, "fit_allowed_by", body.fitAllowedBy.text,
                "nothing says that the sheet is for another machine", "leave “fit_allowed_by” out");
  }
  if (body.fitAllowedBy.empty() && body.fitReason.empty())
    return fail(ErrorCode::NotPermitted, "machine", body.machine, fit.doubts.front(),
                "take the sheet for this machine, or have a lead allow it with a reason");
  CW_CHECK(said(body.fitReason, "fit_reason", "a sheet for another machine is used for a reason"));
  return leadsWord(body.fitAllowedBy, "fit_allowed_by");
}

/// Values that nobody reviewed are answered for by somebody who has learned the trade, and by a lead where
/// the guard would stop them.
Result<void> Rules::quickJoint(const JobStarted& body) const {
  CW_CHECK(checkQuickSheet(m_job.sheet));
  const Voucher& author = *m_entry.voucher(m_entry.enteredBy.text);
  const bool qualified = (author.may(Role::Technician) || author.may(Role::ShopLead)) && !author.apprentice;
  if (!qualified)
    return fail(ErrorCode::NotPermitted, "entered_by", author.person,
                {"%1 may not answer for values that have no sheet", {author.name}},
                "let a technician who is no apprentice, or a lead, enter them");
  CW_TRY(verdict, fromWord<Verdict>(body.guard.value, "guard"));
  if (verdict == Verdict::InBand || verdict == Verdict::NotJudged) return {};
  if (body.guardAllowedBy.empty())
    return fail(ErrorCode::NotPermitted, "guard", body.guard.value,
                {"the guard says “%1” of this torque", {body.guard.value}},
                "look at the source again, or have a lead allow it with a reason");
  CW_CHECK(leadsWord(body.guardAllowedBy, "guard_allowed_by"));
  return said(body.guardReason, "guard_reason", "a torque that the guard refuses is used for a reason");
}

Result<void> Rules::operator()(const SignedIn&) const {
  return {};
}

Result<void> Rules::operator()(const SetAside& body) const {
  return said(body.reason, "reason", "a step is set aside for a reason");
}

Result<void> Rules::operator()(const LeftBlank& body) const {
  CW_CHECK(said(body.reason, "reason", "a step is left blank for a reason"));
  const bool needsAWord = wordFor(m_job, m_at.step, m_at.progress, body).has_value();
  if (!needsAWord && body.allowedBy.empty()) return {};
  return leadsWord(body.allowedBy, "allowed_by");
}

Result<void> Rules::operator()(const Deviated& body) const {
  CW_CHECK(said(body.what, "what", "it is not said what was done otherwise"));
  CW_CHECK(said(body.reason, "reason", "a deviation has a reason"));
  CW_CHECK(leadsWord(body.allowedBy, "allowed_by"));
  if (!body.aim) {
    if (!body.low && !body.high) return {};
    return fail(ErrorCode::InvalidInput, "aim", "", "limits stand without a torque to aim at",
                "give the aim too, or neither");
  }
  const Torque low = body.low.value_or(*body.aim).value(), high = body.high.value_or(*body.aim).value();
  if (low > body.aim->value() || body.aim->value() > high || !(body.aim->value() > Torque{}))
    return fail(ErrorCode::OutOfRange, "aim", codeText(*body.aim),
                {"%1 is not between its own limits", {text(*body.aim)}},
                "give low, aim and high in rising order");
  return {};
}

Result<void> Rules::operator()(const Corrected& body) const {
  return said(body.reason, "reason", "a correction has a reason");
}

Result<void> Rules::operator()(const Reopened& body) const {
  CW_CHECK(said(body.reason, "reason", "a thing is reopened for a reason"));
  const std::string place =
      body.position.empty() ? "step " + body.step.text : "position " + body.position.text;
  const bool closed = body.position.empty() ? m_at.progress.state != StepState::Open
                                            : m_at.progress.tightening.tightened.contains(body.position);
  if (!closed) return fail(ErrorCode::OutOfTurn, place, "", "it is still open", "do it when it is its turn");
  const bool doneByPulls = body.position.empty() && m_at.asked().kind == StepKind::Tighten &&
                           m_at.progress.state == StepState::Done;
  if (!doneByPulls) return {};
  return fail(ErrorCode::InvalidInput, "position", "", "a tightened joint is reopened position by position",
              "name the position, or take apart from there");
}

/// Only words that somebody else wrote down for this lead, and that nobody has confirmed yet.
Result<void> Rules::operator()(const Confirmed& body) const {
  const std::string& sign = m_entry.enteredBy;
  if (body.of.empty())
    return fail(ErrorCode::InvalidInput, "of", "", "no entry is named", "name the entries to confirm");
  for (const int of : body.of) {
    const Kept& kept = m_job.kept(of);
    if (!restsOnWordOf(m_job, of, sign))
      return fail(ErrorCode::OutOfTurn, "of", std::to_string(of),
                  {"entry %1 holds no word of %2's to confirm", {std::to_string(of), sign}},
                  "name entries that rest on your word by phone or in writing");
    if (kept.confirmedBy)
      return fail(ErrorCode::AlreadyDone, "of", std::to_string(of),
                  {"entry %1 is confirmed already", {std::to_string(of)}}, "leave it out");
  }
  return {};
}

Result<void> Rules::operator()(const Paused& body) const {
  if (!body.parked) return {};
  return said(body.reason, "reason", "a job is parked for a reason");
}

Result<void> Rules::operator()(const Resumed&) const {
  return {};
}

Result<void> Rules::operator()(const TakenApart& body) const {
  return said(body.reason, "reason", "taking apart has a reason");
}

Result<void> Rules::operator()(const Repaired& body) const {
  CW_CHECK(said(body.what, "what", "it is not said what was repaired"));
  CW_CHECK(said(body.reason, "reason", "a repair has a reason"));
  return leadsWord(body.allowedBy, "allowed_by");
}

Result<void> Rules::operator()(const ToolStopped& body) const {
  for (const StepProgress& progress : m_job.steps)
    for (const InHand& each : progress.tightening.inHand)
      if (each.set.tool == body.tool.text) return {};
  return fail(ErrorCode::OutOfTurn, "tool", body.tool.text, {"%1 is not in use", {shown(body.tool)}},
              "leave this entry to the program");
}

Result<void> Rules::operator()(const ClockWentBack&) const {
  if (m_job.last() != nullptr && m_entry.time < m_job.last()->time) return {};
  return fail(ErrorCode::InvalidInput, "time", rfc3339(m_entry.time), "the clock did not go back here",
              "leave this entry to the program");
}

Result<void> Rules::operator()(const CalledOff& body) const {
  return said(body.reason, "reason", "a job is called off for a reason");
}

/// With something undone, a lead says that the machine may go as it is.
Result<void> Rules::operator()(const Finished& body) const {
  const auto missing = shortfallsOf(m_job);
  if (missing.empty() && body.allowedBy.empty()) return {};
  if (missing.empty())
    return fail(ErrorCode::InvalidInput, "allowed_by", body.allowedBy.text, "nothing is left undone",
                "leave “allowed_by” out");
  CW_CHECK(leadsWord(body.allowedBy, "allowed_by"));
  return said(body.reason, "reason", "a job with something undone is finished for a reason");
}

}  // namespace cw

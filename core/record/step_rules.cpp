#include "core/record/step_rules.h"

#include <algorithm>

#include "core/record/rule_checks.h"
#include "core/units/parse.h"

namespace cw {

Result<std::size_t> StepRules::at(const std::string& stepId, Stage stage) const {
  CW_TRY(step, stepInTurn(m_job, stepId));
  const Next now = nextIn(m_job, step);
  if (now.stage == stage) return step;
  return fail(ErrorCode::OutOfTurn, "step " + stepId, kindOf(m_entry.body),
              {"“%1” is not what comes next here", {std::string(kindOf(m_entry.body))}}, doing(now.stage));
}

Result<void> StepRules::lead(const std::string& sign, std::string_view place) const {
  const Person* person = m_floor.person(sign);
  if (person != nullptr && person->active && person->may(Role::ShopLead)) return {};
  return fail(ErrorCode::NotPermitted, std::string(place), sign, {"“%1” is no shop lead", {shown(sign)}},
              "this needs a shop lead's word");
}

Result<void> StepRules::operator()(const WarningsRead& body) const {
  return at(body.step, Stage::ReadWarnings).map([](auto) {});
}

Result<void> StepRules::operator()(const ActDone& body) const {
  CW_TRY(index, at(body.step, Stage::Act));
  const Part* part = m_job.sheet.part(m_job.sheet.steps[index].part);
  if (part != nullptr && part->singleUse && !body.renewed)
    return fail(ErrorCode::OutOfTurn, "renewed", "", {"%1 is used once only", {part->name}},
                "fit a new one and say so");
  if (part != nullptr && part->batchWanted && body.batch.empty())
    return fail(ErrorCode::InvalidInput, "batch", "", {"the batch of %1 is missing", {part->name}},
                "write it from the pack");
  return {};
}

Result<void> StepRules::operator()(const CheckMade& body) const {
  return at(body.step, Stage::Check).map([](auto) {});
}

Result<void> StepRules::operator()(const Measured& body) const {
  CW_TRY(index, at(body.step, Stage::Measure));
  const Step& step = m_job.sheet.steps[index];
  if (auto number = parseNumber(body.value, DecimalMark::Point, true); !number)
    return fail(within("value", number.error()));
  if (body.unit != step.unit)
    return fail(ErrorCode::InvalidInput, "unit", body.unit,
                {"“%1” is not the unit of this reading", {shown(body.unit)}},
                {"the sheet asks for %1", {step.unit}});
  return {};
}

Result<void> StepRules::operator()(const Applied& body) const {
  CW_TRY(index, at(body.step, Stage::Apply));
  const Part* part = m_job.sheet.part(m_job.sheet.steps[index].part);
  if (part != nullptr && part->batchWanted && body.batch.empty())
    return fail(ErrorCode::InvalidInput, "batch", "", {"the batch of %1 is missing", {part->name}},
                "write it from the pack");
  if (body.expiry.empty()) return {};
  CW_TRY(expiry, parseDate(body.expiry));
  if (std::chrono::sys_days{expiry} < std::chrono::sys_days{localDate(m_entry.time)})
    return fail(ErrorCode::OutOfRange, "expiry", body.expiry, {"this batch expired on %1", {body.expiry}},
                "take a fresh one");
  return {};
}

Result<void> StepRules::operator()(const Witnessed& body) const {
  CW_TRY(index, stepInTurn(m_job, body.step));
  const Stage stage = nextIn(m_job, index).stage;
  if (stage != Stage::Hold) CW_CHECK(at(body.step, Stage::WitnessBeforeFinal));
  CW_CHECK(secondPerson(body, index));
  const auto& set = m_job.steps[index].tightening.set;
  const auto& demanded = m_job.sheet.steps[index].hold->what;
  for (const std::string& item : demanded)
    if (std::find(body.what.begin(), body.what.end(), item) == body.what.end())
      return fail(ErrorCode::InvalidInput, "what", item, {"“%1” was not looked at", {item}},
                  "look at all that the sheet asks for");
  const bool same = !set || !body.setting || (body.tool == set->tool && *body.setting == set->setting);
  if (set && hasPosition(demanded, "setting") && !body.setting)
    return fail(ErrorCode::InvalidInput, "setting", "", "the setting was not entered",
                "read it from the tool and enter it");
  if (body.agrees != same)
    return fail(ErrorCode::InvalidInput, "agrees", "", "this does not say whether both entries agree",
                "leave that to the program");
  return {};
}

Result<void> StepRules::secondPerson(const Witnessed& body, std::size_t index) const {
  const std::string& sign = m_entry.enteredBy;
  const auto& doers = m_job.steps[index].tightening.doers;
  const bool did = std::find(doers.begin(), doers.end(), sign) != doers.end() ||
                   (doers.empty() && sign == m_job.entries.front().entry.enteredBy);
  if (m_job.start.alone) {
    const auto isSet = [](const Kept& kept) { return std::holds_alternative<ToolSet>(kept.entry.body); };
    const auto set = std::find_if(m_job.entries.rbegin(), m_job.entries.rend(), isSet);
    const bool rested = std::any_of(m_job.entries.rbegin(), set, [](const Kept& k) {
      return std::holds_alternative<Resumed>(k.entry.body);
    });
    if (body.manner == Manner::Self && rested) return {};
    return fail(ErrorCode::NotPermitted, "manner", wordOf(body.manner),
                "in a shop of one the check comes after a break",
                "pause, resume, and look again as a self-check");
  }
  if (body.manner == Manner::Self || did)
    return fail(ErrorCode::NotPermitted, "entered_by", sign,
                {"%1 did the work and cannot be the second person", {sign}},
                "let somebody else look and sign");
  const Person& person = *m_floor.person(sign);
  if (!person.may(Role::Inspector) && !person.may(Role::ShopLead))
    return fail(ErrorCode::NotPermitted, "entered_by", sign,
                {"%1 is neither inspector nor lead", {person.name}}, "let an inspector look and sign");
  return {};
}

}  // namespace cw

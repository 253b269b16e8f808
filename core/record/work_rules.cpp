#include <algorithm>

#include "core/record/rule_checks.h"
#include "core/record/rules.h"
#include "core/units/parse.h"

namespace cw {
namespace {

constexpr std::chrono::minutes kBreak{10};

bool has(const std::vector<std::string>& list, std::string_view item) {
  return std::find(list.begin(), list.end(), item) != list.end();
}

/// Everybody who did, entered or supervised what a second person looks at: the step, or, for a hold of its own,
/// all steps since the hold before it.
std::set<std::string> handsBefore(const Situation& at) {
  std::set<std::string> out = at.progress.hands;
  if (at.asked().kind != StepKind::Hold) return out;
  for (std::size_t i = at.step; i-- > 0 && at.job.sheet.steps[i].kind != StepKind::Hold;)
    out.insert(at.job.steps[i].hands.begin(), at.job.steps[i].hands.end());
  if (out.empty()) out.insert(at.job.entries.front().entry.enteredBy);
  return out;
}

}  // namespace

Result<void> Rules::operator()(const WarningsRead&) const {
  return {};
}

Result<void> Rules::operator()(const ActDone& body) const {
  const Part* part = m_job.sheet.part(m_at.asked().part);
  if (part != nullptr && part->singleUse && !body.renewed)
    return fail(ErrorCode::OutOfTurn, "renewed", "", {"%1 is used once only", {part->name}},
                "fit a new one and say so");
  if (part == nullptr && body.renewed)
    return fail(ErrorCode::InvalidInput, "renewed", "", "this step fits no part", "leave it out");
  return pack(part, body.batch, body.expiry);
}

Result<void> Rules::operator()(const CheckMade&) const {
  return {};
}

Result<void> Rules::operator()(const Measured& body) const {
  const Step& step = m_at.asked();
  if (auto number = parseNumber(body.value, DecimalMark::Point, true); !number)
    return fail(within("value", number.error()));
  else if (*number != body.value)
    return fail(ErrorCode::InvalidInput, "value", body.value,
                {"“%1” is not a plain number", {shown(body.value)}}, {"write “%1”", {*number}});
  if (body.unit == step.unit) return {};
  return fail(ErrorCode::InvalidInput, "unit", body.unit,
              {"“%1” is not the unit of this reading", {shown(body.unit)}},
              {"the sheet asks for %1", {step.unit}});
}

Result<void> Rules::operator()(const Applied& body) const {
  return pack(m_job.sheet.part(m_at.asked().part), body.batch, body.expiry);
}

/// What stands on a pack, judged by the day on which it was used.
Result<void> Rules::pack(const Part* part, const std::string& batch, const std::string& expiry) const {
  if (part != nullptr && part->batchWanted && batch.empty())
    return fail(ErrorCode::InvalidInput, "batch", "", {"the batch of %1 is missing", {part->name}},
                "write it from the pack");
  if (expiry.empty()) return {};
  auto date = parseDate(expiry);
  if (!date) return fail(within("expiry", date.error()));
  if (std::chrono::sys_days{*date} < std::chrono::sys_days{localDate(m_entry.doneAt())})
    return fail(ErrorCode::OutOfRange, "expiry", expiry, {"this batch expired on %1", {expiry}},
                "take a fresh one");
  return {};
}

Result<void> Rules::operator()(const Witnessed& body) const {
  CW_CHECK(secondPerson(body));
  return seenAsAsked(body);
}

Result<void> Rules::secondPerson(const Witnessed& body) const {
  const std::string& sign = m_entry.enteredBy;
  if (m_entry.by.size() != 1 || m_entry.by.front().person != sign)
    return fail(ErrorCode::NotPermitted, "by", sign, "a second person speaks for nobody else",
                "let the one who looked enter it, alone");
  if (m_job.start.alone) return selfCheck(body);
  if (body.manner == Manner::Self || handsBefore(m_at).contains(sign))
    return fail(ErrorCode::NotPermitted, "entered_by", sign,
                {"%1 did the work and cannot be the second person", {sign}},
                "let somebody else look and sign");
  const Voucher& person = *m_entry.voucher(sign);
  if (person.may(Role::Inspector) || person.may(Role::ShopLead)) return {};
  return fail(ErrorCode::NotPermitted, "entered_by", sign,
              {"%1 is neither inspector nor lead", {person.name}}, "let an inspector look and sign");
}

/// In a shop of one: with fresh eyes, after a break since the last of the work.
Result<void> Rules::selfCheck(const Witnessed& body) const {
  bool rested = false;
  std::optional<Moment> resumed;
  for (auto kept = m_job.entries.rbegin(); kept != m_job.entries.rend() && !rested; ++kept) {
    const Body& before = kept->entry.body;
    if (std::holds_alternative<Resumed>(before)) resumed = kept->entry.time;
    if (std::holds_alternative<Paused>(before) && resumed)
      rested = resumed->utc - kept->entry.time.utc >= kBreak;
    if (std::holds_alternative<ToolSet>(before)) break;
  }
  if (body.manner == Manner::Self && rested) return {};
  return fail(ErrorCode::NotPermitted, "manner", wordOf(body.manner),
              "in a shop of one the check comes after a break of ten minutes",
              "pause, resume, and look again as a self-check");
}

/// All that the sheet asks for was looked at, each thing with its answer.
Result<void> Rules::seenAsAsked(const Witnessed& body) const {
  for (const std::string& item : m_at.asked().hold->what) {
    if (has(body.what, item) == has(body.notSo, item))
      return fail(ErrorCode::InvalidInput, "what", item, {"it is not said how “%1” was found", {item}},
                  "look at all that the sheet asks for, and say of each that it is so or not so");
    if (item == "setting" && !body.setting)
      return fail(ErrorCode::InvalidInput, "setting", "", "the setting was not entered",
                  "read it from the tool and enter it");
    if (item == "setting" && body.tool.empty())
      return fail(ErrorCode::InvalidInput, "tool", "", "it is not said which tool", "read it from the tool");
    if (item == "count" && !body.count)
      return fail(ErrorCode::InvalidInput, "count", "", "the count was not entered", "count them");
  }
  return {};
}

}  // namespace cw

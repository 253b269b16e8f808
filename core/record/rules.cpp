#include "core/record/rules.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/record/step_rules.h"

namespace cw {
namespace {

Result<const Person*> activePerson(const ShopFloor& floor, const std::string& sign, std::string_view place) {
  const Person* person = floor.person(sign);
  if (person == nullptr)
    return fail(ErrorCode::NotFound, std::string(place), sign, {"nobody here signs as “%1”", {shown(sign)}},
                "write the sign of a person of this shop");
  if (!person->active)
    return fail(ErrorCode::NotPermitted, std::string(place), sign,
                {"%1 no longer works here", {person->name}}, "let somebody who does sign");
  return person;
}

Result<void> checkSupervisor(const ShopFloor& floor, const Entry& entry, const Person& author) {
  if (!author.apprentice) return {};
  if (entry.supervisor.empty())
    return fail(ErrorCode::NotPermitted, "supervisor", "", {"%1 is an apprentice", {author.name}},
                "name who supervised");
  CW_TRY(supervisor, activePerson(floor, entry.supervisor, "supervisor"));
  if (supervisor->apprentice || supervisor->sign == author.sign)
    return fail(ErrorCode::NotPermitted, "supervisor", entry.supervisor,
                {"%1 cannot supervise this", {supervisor->name}}, "name a person who is no apprentice");
  return {};
}

Result<void> checkPeople(const Job& job, const Entry& entry, const ShopFloor& floor) {
  CW_TRY(author, activePerson(floor, entry.enteredBy, "entered_by"));
  for (const Doer& doer : entry.by) {
    CW_CHECK(activePerson(floor, doer.person, "by"));
    if (!doer.tool.empty() && floor.tool(doer.tool) == nullptr)
      return fail(ErrorCode::NotFound, "by.tool", doer.tool,
                  {"there is no tool “%1” in the crib", {shown(doer.tool)}},
                  "write the id marked on the tool");
  }
  CW_CHECK(checkSupervisor(floor, entry, *author));
  // What the program itself notes of the clock may have to come before a sign-in.
  const bool asksNoSignIn = std::holds_alternative<SignedIn>(entry.body) ||
                            std::holds_alternative<JobStarted>(entry.body) ||
                            std::holds_alternative<ClockWentBack>(entry.body);
  if (!asksNoSignIn && !job.signedIn.contains(entry.enteredBy))
    return fail(ErrorCode::NotPermitted, "entered_by", entry.enteredBy,
                {"%1 has not signed in", {author->name}}, "sign in with name and PIN first");
  const bool mayWork =
      author->may(Role::Technician) || author->may(Role::ShopLead) || author->may(Role::Inspector);
  if (!mayWork)
    return fail(ErrorCode::NotPermitted, "entered_by", entry.enteredBy,
                {"%1 is neither technician, inspector nor lead", {author->name}}, "let a technician sign");
  return {};
}

Result<void> checkOrder(const Job& job, const Entry& entry) {
  if (entry.sequence != job.count() + 1)
    return fail(
        ErrorCode::OutOfTurn, "seq", std::to_string(entry.sequence),
        {"entry %1 cannot follow entry %2", {std::to_string(entry.sequence), std::to_string(job.count())}},
        {"the next is %1", {std::to_string(job.count() + 1)}});
  const bool starts = std::holds_alternative<JobStarted>(entry.body);
  if (starts != job.entries.empty())
    return fail(ErrorCode::OutOfTurn, "kind", kindOf(entry.body),
                starts ? Message("the job has started already") : Message("the job has not started"),
                "a job starts once, with its first entry");
  const Entry* last = job.last();
  if (last != nullptr && entry.time < last->time && !std::holds_alternative<ClockWentBack>(entry.body))
    return fail(ErrorCode::OutOfTurn, "time", rfc3339(entry.time),
                {"%1 is before the last entry, %2", {rfc3339(entry.time), rfc3339(last->time)}},
                "a clock that runs backwards is entered first");
  if (entry.done && entry.time < *entry.done)
    return fail(ErrorCode::OutOfRange, "done", rfc3339(*entry.done),
                {"%1 has not come yet", {rfc3339(*entry.done)}}, "write when it was done");
  return {};
}

Result<void> checkState(const Job& job, const Entry& entry) {
  if (job.finished)
    return fail(ErrorCode::OutOfTurn, "job", kindOf(entry.body),
                "the job is finished and takes no more entries", "add an addendum to its record");
  const bool wakes = std::holds_alternative<Resumed>(entry.body) ||
                     std::holds_alternative<SignedIn>(entry.body) ||
                     std::holds_alternative<ClockWentBack>(entry.body);
  if (job.paused && !wakes)
    return fail(ErrorCode::OutOfTurn, "job", kindOf(entry.body), "the job is paused", "resume it first");
  return {};
}

}  // namespace

const Person* ShopFloor::person(std::string_view sign) const {
  const auto found =
      std::find_if(people.begin(), people.end(), [&](const Person& p) { return p.sign == sign; });
  return found == people.end() ? nullptr : &*found;
}

const TorqueTool* ShopFloor::tool(std::string_view id) const {
  const auto found =
      std::find_if(tools.begin(), tools.end(), [&](const TorqueTool& t) { return t.id == id; });
  return found == tools.end() ? nullptr : &*found;
}

Result<void> mayAppend(const Job& job, const Entry& entry, const ShopFloor& floor) {
  CW_CHECK(checkOrder(job, entry));
  CW_CHECK(checkState(job, entry));
  CW_CHECK(checkPeople(job, entry, floor));
  return std::visit(StepRules(job, entry, floor), entry.body);
}

Result<std::size_t> stepInTurn(const Job& job, const std::string& stepId) {
  const auto index = job.stepIndex(stepId);
  if (!index)
    return fail(ErrorCode::NotFound, "step", stepId, {"the sheet has no step “%1”", {shown(stepId)}},
                "write the id of a step of this sheet");
  const StepState state = job.steps[*index].state;
  if (state == StepState::SetAside) return *index;
  const Next now = next(job);
  if (state == StepState::Open && now.stage != Stage::Finish && now.step == *index) return *index;
  if (state != StepState::Open)
    return fail(ErrorCode::AlreadyDone, "step " + stepId, stepId, {"step %1 is closed already", {stepId}},
                "correct its entry, or take apart from there");
  return fail(ErrorCode::OutOfTurn, "step " + stepId, stepId, {"step %1 is not yet its turn", {stepId}},
              {"step %1 is next", {job.sheet.steps[now.step].id}});
}

}  // namespace cw

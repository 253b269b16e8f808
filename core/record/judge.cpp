#include "core/record/judge.h"

#include <fmt/format.h>

#include "core/record/derive.h"
#include "core/record/people_rules.h"
#include "core/record/rule_checks.h"
#include "core/record/rules.h"

namespace cw {
namespace {

bool isWork(const Body& body) {
  return !std::holds_alternative<JobStarted>(body) && !std::holds_alternative<SignedIn>(body) &&
         !std::holds_alternative<Paused>(body) && !std::holds_alternative<Resumed>(body) &&
         !std::holds_alternative<ClockWentBack>(body) && !std::holds_alternative<ToolStopped>(body);
}

/// Work that is entered late was done in the order in which it is entered, and after what was entered on time.
Result<void> checkDone(const Job& job, const Entry& entry) {
  if (!entry.done) return {};
  if (entry.time < *entry.done)
    return fail(ErrorCode::OutOfRange, "done", rfc3339(*entry.done),
                {"%1 has not come yet", {rfc3339(*entry.done)}}, "write when it was done");
  for (auto kept = job.entries.rbegin(); kept != job.entries.rend(); ++kept) {
    if (!isWork(kept->entry.body)) continue;
    if (!(*entry.done < kept->entry.doneAt())) break;
    return fail(ErrorCode::OutOfRange, "done", rfc3339(*entry.done),
                {"%1 is before entry %2, done at %3",
                 {rfc3339(*entry.done), std::to_string(kept->entry.sequence), rfc3339(kept->entry.doneAt())}},
                "enter the work in the order in which it was done");
  }
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
  return entry.version > kTrialVersion ? checkDone(job, entry) : Result<void>();
}

/// One version throughout; a trial job takes nothing that this version writes but its calling-off.
Result<void> checkVersion(const Job& job, const Entry& entry) {
  if (job.entries.empty() || entry.version == job.entries.front().entry.version) return {};
  if (job.isTrial() && std::holds_alternative<CalledOff>(entry.body)) return {};
  return fail(ErrorCode::NotPermitted, "v", std::to_string(entry.version),
              {"this job was begun by version %1, whose rules are not judged any more",
               {std::to_string(job.entries.front().entry.version)}},
              "call it off, and do the work as a new job");
}

Result<void> checkState(const Job& job, const Entry& entry) {
  if (job.finished)
    return fail(ErrorCode::OutOfTurn, "job", kindOf(entry.body),
                "the job is finished and takes no more entries", "add an addendum to its record");
  if (job.calledOff)
    return fail(ErrorCode::OutOfTurn, "job", kindOf(entry.body),
                "the job was called off and takes no more entries", "start a new one");
  const bool wakes = std::holds_alternative<Resumed>(entry.body) ||
                     std::holds_alternative<SignedIn>(entry.body) ||
                     std::holds_alternative<ClockWentBack>(entry.body) ||
                     std::holds_alternative<ToolStopped>(entry.body) ||
                     std::holds_alternative<CalledOff>(entry.body);
  if (job.paused && !wakes)
    return fail(ErrorCode::OutOfTurn, "job", kindOf(entry.body), "the job is paused", "resume it first");
  return {};
}

Result<void> checkDerived(const Body& body, const Situation& at) {
  const std::string field = fieldThatDoesNotFollow(body, at);
  if (field.empty()) return {};
  return fail(ErrorCode::InvalidInput, field, "", {"“%1” does not follow from the rest of the job", {field}},
              "the program works it out; it was altered");
}

const StepProgress& progressOf(const Job& job, std::size_t step) {
  static const StepProgress kNone;
  return step < job.steps.size() ? job.steps[step] : kNone;
}

}  // namespace

Judged::Judged(Entry entry, const Digest& previous)
    : m_entry(std::move(entry)), m_text(canonical(entryToJson(m_entry))), m_hash(entryHash(previous, m_text)) {}

Result<Judged> judge(const Job& job, Entry entry, From from) {
  CW_CHECK(checkOrder(job, entry));
  CW_CHECK(checkVersion(job, entry));
  CW_CHECK(checkState(job, entry));
  if (entry.version > kTrialVersion) CW_CHECK(checkPeople(job, entry));
  CW_CHECK(speaksOfWhatIsThere(job, entry.body));
  if (entry.version <= kTrialVersion) {
    if (const auto* corrected = std::get_if<Corrected>(&entry.body))
      CW_CHECK(speaksOfTheSame(job, *corrected));
    return Judged(std::move(entry), job.head);
  }
  const std::size_t step = stepMeant(job, entry.body);
  const Situation at{job, entry, step, progressOf(job, step)};
  CW_CHECK(inTurn(entry.body, at));
  if (auto* corrected = std::get_if<Corrected>(&entry.body)) {
    CW_TRY(complete, completeCorrection(job, *corrected, from));
    *corrected = std::move(complete);
  } else if (from == From::Line) {
    deriveAll(entry.body, at);
  } else {
    CW_CHECK(checkDerived(entry.body, at));
  }
  CW_CHECK(std::visit(Rules(at), entry.body));
  return Judged(std::move(entry), job.head);
}

void apply(Job& job, Judged judged) {
  foldIn(job, {std::move(judged.m_entry), judged.m_hash});
}

}  // namespace cw

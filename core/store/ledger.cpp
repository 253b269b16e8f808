#include "core/store/ledger.h"

#include <fmt/format.h>

#include "core/fastener/catalogue.h"
#include "core/procedure/quick_joint.h"
#include "core/procedure/sheet_file.h"
#include "core/store/connection.h"
#include "core/store/database.h"
#include "core/store/job_rows.h"
#include "core/store/machines.h"
#include "core/store/people.h"
#include "core/store/sheets.h"
#include "core/store/shop_library.h"
#include "core/store/tools.h"

namespace cw {
namespace {

/// Between setting the wrench and the last fastener of the pass, nobody is asked for a PIN.
bool inPass(const Job& job) {
  const Next now = next(job);
  if (now.step >= job.steps.size()) return false;
  return now.stage == Stage::CheckPass || job.steps[now.step].tightening.set.has_value();
}

Draft clockDraft(const Draft& draft, const Moment& now) {
  Draft out;
  out.id = Id::make(now);
  out.enteredBy = draft.enteredBy;
  out.supervisor = draft.supervisor;
  out.body = ClockWentBack{};
  return out;
}

}  // namespace

Ledger::Ledger(Needs needs)
    : m_needs(std::move(needs)), m_gate(m_needs.database, m_needs.people), m_sessions(m_needs.idle) {}

Result<Receipt> Ledger::start(const Beginning& beginning) {
  const Moment now = m_needs.clock.now();
  CW_CHECK(m_gate.check(beginning.by, beginning.pin, beginning.job, now));
  CW_TRY(draft, firstDraft(beginning));
  CW_TRY(bytes, beginning.quickSheet ? *beginning.quickSheet : m_needs.sheets.bytes(beginning.sheetDigest));
  CW_TRY(job, emptyJob(m_needs.shop, beginning.job, std::move(bytes)));

  CW_TRY(transaction, Transaction::begin(m_needs.database.connection()));
  CW_TRY(earlier, already(job.id, draft.id, kindOf(draft.body)));
  if (!earlier) {
    CW_TRY(entries, judge(job, draft, now));
    CW_CHECK(insertJob(job, std::get<JobStarted>(draft.body), now));
    CW_CHECK(insert(job, entries));
    CW_CHECK(transaction.commit());
    CW_TRY(receipt, reread(job, std::move(entries)));
    earlier = receipt;
    m_jobs.insert_or_assign(job.id, std::move(job));
  }
  m_sessions.renew(beginning.job, beginning.by, now);
  return *earlier;
}

Result<Draft> Ledger::firstDraft(const Beginning& beginning) {
  Draft out;
  out.id = beginning.entry;
  out.enteredBy = beginning.by;
  out.supervisor = beginning.supervisor;
  JobStarted start = beginning.start;
  CW_TRY(active, m_needs.people.activeCount());
  start.sheetDigest = beginning.sheetDigest;
  start.quick = beginning.quickSheet.has_value();
  if (start.quick) {
    CW_TRY(sheet, readSheet(*beginning.quickSheet));
    CW_TRY(catalogue, m_needs.library.catalogue());
    CW_TRY(judged, judgeQuickSheet(sheet, *catalogue));
    start.sheetDigest = hex(sha256(*beginning.quickSheet));
    start.guard = codeOf(judged.verdict);
  }
  start.alone = active == 1;
  if (const auto known = m_needs.machines.find(start.machine)) {
    if (start.model.empty()) start.model = known->model;
    if (start.serial.empty()) start.serial = known->serial;
    if (start.hours.empty()) start.hours = known->hours;
  }
  out.body = std::move(start);
  return out;
}

Result<void> Ledger::checkIssued(const Job& job, const JobStarted& start) {
  CW_TRY(revision, m_needs.sheets.find(job.sheet.id, job.sheet.revision));
  if (revision.status == SheetStatus::Issued && revision.digest == start.sheetDigest) return {};
  return fail(ErrorCode::NotPermitted, "sheet", revision.revision,
              {"revision %1 is %2", {revision.revision, std::string(word(revision.status))}},
              "a job starts from the issued revision");
}

/// A quick joint's sheet is kept like any other's bytes, but is no revision of anything.
Result<void> Ledger::keepQuickSheet(const Job& job) {
  if (m_needs.sheets.find(job.sheet.id, job.sheet.revision))
    return fail(ErrorCode::NotPermitted, "sheet", job.sheet.revision,
                {"“%1” is a sheet of this shop already", {shown(job.sheet.title)}},
                "start the job by that sheet once it is issued");
  return m_needs.sheets.keep(job.sheetBytes);
}

Result<void> Ledger::insertJob(const Job& job, const JobStarted& start, const Moment& now) {
  CW_CHECK(start.quick ? keepQuickSheet(job) : checkIssued(job, start));
  const auto taken = first(m_needs.database.connection(), "SELECT 1 FROM job WHERE id = ?", {job.id.text()},
                           [](const SqlRows&) { return true; });
  if (!taken) return fail(taken.error());
  if (*taken)
    return fail(ErrorCode::AlreadyDone, "job", job.id.text(), "a job of this id was started before",
                "start it under a new id");
  return m_needs.database.connection().run(
      "INSERT INTO job(id, digest, sheet, revision, title, work_order, machine, model, serial, started)"
      " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
      {job.id.text(), start.sheetDigest, job.sheet.id.text(), job.sheet.revision, job.sheet.title,
       start.workOrder, start.machine, start.model, start.serial,
       rfc3339({now.utc, std::chrono::minutes{0}})});
}

Result<Receipt> Ledger::signIn(const Id& job, const std::string& sign, std::string_view pin,
                               const Id& entry) {
  Draft draft;
  draft.id = entry;
  draft.enteredBy = sign;
  draft.body = SignedIn{};
  return append(job, draft, std::string(pin));
}

Result<Receipt> Ledger::append(const Id& id, const Draft& draft, const std::optional<std::string>& pin) {
  CW_TRY(job, held(id));
  const Moment now = m_needs.clock.now();
  if (pin) {
    CW_CHECK(m_gate.check(draft.enteredBy, *pin, id, now));
    m_sessions.renew(id, draft.enteredBy, now);
  }
  CW_TRY(transaction, Transaction::begin(m_needs.database.connection()));
  CW_TRY(earlier, already(id, draft.id, kindOf(draft.body)));
  if (earlier) return *earlier;
  CW_CHECK(checkCurrent(*job));
  if (std::holds_alternative<SignedIn>(draft.body) && !pin)
    return fail(ErrorCode::WrongPin, "pin", "", "the PIN is missing", "enter name and PIN");
  CW_CHECK(checkSignedIn(*job, draft, now));
  CW_TRY(entries, judge(*job, draft, now));
  CW_CHECK(insert(*job, entries));
  CW_CHECK(transaction.commit());
  m_sessions.renew(id, draft.enteredBy, now);
  return reread(*job, std::move(entries));
}

Result<Job*> Ledger::held(const Id& id) {
  const auto found = m_jobs.find(id);
  if (found != m_jobs.end()) return &found->second;
  CW_TRY(job, loadJob(m_needs.database.connection(), m_needs.shop, id));
  return &m_jobs.insert_or_assign(id, std::move(job)).first->second;
}

Result<std::optional<Receipt>> Ledger::already(const Id& job, const Id& entry, std::string_view kind) {
  CW_TRY(stored, storedEntry(m_needs.database.connection(), entry));
  if (!stored) return std::optional<Receipt>();
  if (stored->job == job && stored->kind == kind)
    return std::optional<Receipt>({stored->sequence, stored->hash, true});
  return fail(ErrorCode::InvalidInput, "id", entry.text(),
              {"this id belongs to entry %1, “%2”, of job %3",
               {std::to_string(stored->sequence), stored->kind, stored->job.text()}},
              "give each entry an id of its own");
}

/// The file's head must be the one that the caller saw in `job`.
Result<void> Ledger::checkCurrent(Job& job) {
  CW_TRY(head, headOf(m_needs.database.connection(), job.id));
  if (head == hex(job.head)) return {};
  const auto seen = static_cast<std::size_t>(job.count());
  if (auto caught = catchUp(m_needs.database.connection(), job); !caught) {
    m_jobs.erase(job.id);
    return fail(caught.error());
  }
  const Entry& other = job.entries[seen].entry;
  return fail(ErrorCode::Conflict, "job " + job.id.text(), std::to_string(other.sequence),
              {"%1 was first, with “%2” (entry %3)",
               {other.enteredBy, std::string(kindOf(other.body)), std::to_string(other.sequence)}},
              "look at the job again, then enter what still holds");
}

Result<void> Ledger::checkSignedIn(const Job& job, const Draft& draft, const Moment& now) const {
  if (m_sessions.alive(job.id, draft.enteredBy, now, inPass(job))) return {};
  return fail(ErrorCode::NotPermitted, "entered_by", draft.enteredBy,
              {"“%1” has not signed in here, or not for a while", {shown(draft.enteredBy)}},
              "sign in with name and PIN first");
}

/// The entries that the draft makes, each allowed after the one before.
Result<std::vector<Entry>> Ledger::judge(const Job& job, const Draft& draft, const Moment& now) {
  CW_TRY(people, floor());
  std::vector<Entry> out;
  std::optional<Job> after;  // a copy, because nothing has happened before the commit
  if (job.last() != nullptr && now < job.last()->time) {
    out.push_back(compose(job, clockDraft(draft, now), people, now));
    CW_CHECK(mayAppend(job, out.back(), people));
    apply(after.emplace(job), out.back());
  }
  const Job& before = after ? *after : job;
  out.push_back(compose(before, draft, people, now));
  CW_CHECK(mayAppend(before, out.back(), people));
  return out;
}

Result<void> Ledger::insert(const Job& job, const std::vector<Entry>& entries) {
  Digest previous = job.head;
  for (const Entry& entry : entries) {
    CW_CHECK(insertEntry(m_needs.database.connection(), job.id, entry, previous));
    previous = entryHash(previous, canonical(entryToJson(entry)));
  }
  return {};
}

/// Takes the committed entries into the fold, and compares the last with what the file says to somebody else.
Result<Receipt> Ledger::reread(Job& job, std::vector<Entry> entries) {
  const Id last = entries.back().id;
  const std::string text = canonical(entryToJson(entries.back()));
  for (Entry& entry : entries) apply(job, std::move(entry));
  CW_TRY(stored, storedEntry(m_needs.database.reader(), last));
  if (stored && stored->text == text && stored->hash == hex(job.head))
    return Receipt{stored->sequence, stored->hash};
  return fail(ErrorCode::Storage, "job " + job.id.text(), std::to_string(job.count()),
              "what was written is not what the file says", "check the disk; enter it again");
}

Result<const Job*> Ledger::job(const Id& id) {
  CW_TRY(job, held(id));
  return job;
}

Result<const Job*> Ledger::refresh(const Id& id) {
  CW_TRY(job, held(id));
  if (auto caught = catchUp(m_needs.database.connection(), *job); !caught) {
    m_jobs.erase(id);
    return fail(caught.error());
  }
  return job;
}

bool Ledger::isSignedIn(const Id& id, const std::string& sign) {
  const auto job = held(id);
  return job && (*job)->signedIn.contains(sign) &&
         m_sessions.alive(id, sign, m_needs.clock.now(), inPass(**job));
}

Result<ShopFloor> Ledger::floor() {
  CW_TRY(people, m_needs.people.all());
  CW_TRY(tools, m_needs.tools.all());
  return ShopFloor{people, tools};
}

}  // namespace cw

#include "core/store/ledger.h"

#include <fmt/format.h>

#include "core/base/found.h"
#include "core/fastener/catalogue.h"
#include "core/procedure/quick_joint.h"
#include "core/procedure/sheet_file.h"
#include "core/record/next.h"
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
  return now.stage == Stage::CheckPass || job.steps[now.step].tightening.set() != nullptr;
}

/// What the program notes before it takes what somebody states.
Draft programsOwn(const Draft& draft, Body body, const Moment& now) {
  Draft out;
  out.id = Id::make(now);
  out.enteredBy = draft.enteredBy;
  out.body = std::move(body);
  return out;
}

}  // namespace

Ledger::Ledger(Needs needs)
    : m_needs(std::move(needs)), m_gate(m_needs.database, m_needs.people), m_sessions(m_needs.idle) {}

Result<Receipt> Ledger::start(const Beginning& beginning) {
  const Moment now = m_needs.clock.now();
  Pins pins = beginning.others;
  pins[beginning.by] = beginning.pin;
  CW_CHECK(checkPins(pins, beginning.job, now));
  CW_TRY(draft, firstDraft(beginning));
  CW_TRY(bytes, beginning.quickSheet ? *beginning.quickSheet : m_needs.sheets.bytes(beginning.sheetDigest));
  CW_TRY(job, emptyJob(m_needs.shop, beginning.job, std::move(bytes)));

  CW_TRY(transaction, Transaction::begin(m_needs.database.connection()));
  CW_TRY(earlier, already(job.id, draft.id, kindOf(draft.body)));
  if (!earlier) {
    CW_TRY(entries, judged(job, draft, presentFor(job, pins, now), now));
    CW_CHECK(insertJob(job, std::get<JobStarted>(entries.back().entry().body), now));
    CW_CHECK(insert(job, entries));
    CW_CHECK(transaction.commit());
    CW_TRY(receipt, reread(job, std::move(entries)));
    earlier = receipt;
    m_jobs.insert_or_assign(job.id, std::move(job));
  }
  m_sessions.renew(beginning.job, beginning.by, now);
  if (!beginning.supervisor.empty()) m_sessions.renew(beginning.job, beginning.supervisor, now);
  return *earlier;
}

Result<Draft> Ledger::firstDraft(const Beginning& beginning) {
  Draft out;
  out.id = beginning.entry;
  out.enteredBy = beginning.by;
  out.supervisor = beginning.supervisor;
  out.byPhone = beginning.byPhone;
  JobStarted start = beginning.start;
  CW_TRY(active, m_needs.people.activeCount());
  start.quick = beginning.quickSheet.has_value();
  if (start.quick) {
    CW_TRY(sheet, readSheet(*beginning.quickSheet));
    CW_TRY(catalogue, m_needs.library.catalogue());
    CW_TRY(judged, judgeQuickSheet(sheet, *catalogue));
    start.guard.value = wordOf(judged.verdict);
  }
  start.alone.value = active == 1;
  CW_TRY(known, ifFound(m_needs.machines.find(start.machine)));
  if (known) {
    start.registered.value = true;
    if (start.model.empty()) start.model = known->model;
    if (start.serial.empty()) start.serial = known->serial;
  }
  out.body = std::move(start);
  return out;
}

Result<void> Ledger::checkIssued(const Job& job, const JobStarted& start) {
  CW_TRY(revision, m_needs.sheets.find(job.sheet.id, job.sheet.revision));
  if (revision.status == SheetStatus::Issued && revision.digest == start.sheetDigest.value) return {};
  return fail(ErrorCode::NotPermitted, "sheet", revision.revision,
              {"revision %1 is %2", {revision.revision, std::string(wordOf(revision.status))}},
              "a job starts from the issued revision");
}

/// A quick joint's sheet is kept like any other's bytes, but is no revision of anything.
Result<void> Ledger::keepQuickSheet(const Job& job) {
  CW_TRY(known, ifFound(m_needs.sheets.find(job.sheet.id, job.sheet.revision)));
  if (known)
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
      {job.id.text(), start.sheetDigest.value, job.sheet.id.text(), job.sheet.revision, job.sheet.title,
       start.workOrder, start.machine, start.model, start.serial,
       rfc3339({now.utc, std::chrono::minutes{0}})});
}

Result<Receipt> Ledger::signIn(const Id& job, const std::string& sign, std::string_view pin,
                               const Id& entry) {
  Draft draft;
  draft.id = entry;
  draft.enteredBy = sign;
  draft.body = SignedIn{};
  return append(job, draft, {{sign, std::string(pin)}});
}

Result<Receipt> Ledger::append(const Id& id, const Draft& draft, const Pins& pins) {
  CW_TRY(job, held(id));
  const Moment now = m_needs.clock.now();
  CW_CHECK(checkPins(pins, id, now));
  Present present = presentFor(*job, pins, now);
  CW_CHECK(noteStoppedTools(*job, draft, present, now));
  CW_TRY(transaction, Transaction::begin(m_needs.database.connection()));
  CW_TRY(earlier, already(id, draft.id, kindOf(draft.body)));
  if (earlier) {
    renewSessions(*job, pins, now);
    return *earlier;
  }
  CW_CHECK(checkCurrent(*job));
  CW_CHECK(checkSignedIn(*job, draft, present));
  CW_TRY(entries, judged(*job, draft, present, now));
  CW_CHECK(insert(*job, entries));
  CW_CHECK(transaction.commit());
  CW_TRY(receipt, reread(*job, std::move(entries)));
  renewSessions(*job, pins, now);
  m_sessions.renew(id, draft.enteredBy, now);
  return receipt;
}

/// Whoever is signed in to the job and gave the PIN now, be it with an entry that was there before: a file of
/// lines goes on where another process left it.
void Ledger::renewSessions(const Job& job, const Pins& pins, const Moment& now) {
  for (const auto& [sign, pin] : pins)
    if (job.signedIn.contains(sign)) m_sessions.renew(job.id, sign, now);
}

Result<void> Ledger::checkPins(const Pins& pins, const Id& job, const Moment& now) {
  for (const auto& [sign, pin] : pins) CW_CHECK(m_gate.check(sign, pin, job, now));
  return {};
}

Present Ledger::presentFor(const Job& job, const Pins& pins, const Moment& now) const {
  Present out;
  for (const auto& [sign, pin] : pins) out.withPin.insert(sign);
  const bool busy = inPass(job);
  for (const std::string& sign : job.signedIn)
    if (m_sessions.alive(job.id, sign, now, busy)) out.signedIn.insert(sign);
  return out;
}

/// A wrench that was dropped since it was set is not used on, whatever else is about to be entered.
Result<void> Ledger::noteStoppedTools(Job& job, const Draft& draft, const Present& present,
                                      const Moment& now) {
  if (job.ended() || job.isTrial()) return {};
  CW_TRY(shop, floor());
  while (auto stopped = stoppedTool(job, shop)) {
    CW_TRY(transaction, Transaction::begin(m_needs.database.connection()));
    CW_CHECK(checkCurrent(job));
    CW_TRY(entries, judged(job, programsOwn(draft, *std::move(stopped), now), present, now));
    CW_CHECK(insert(job, entries));
    CW_CHECK(transaction.commit());
    CW_CHECK(reread(job, std::move(entries)));
  }
  return {};
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

Result<void> Ledger::checkSignedIn(const Job& job, const Draft& draft, const Present& present) const {
  if (std::holds_alternative<SignedIn>(draft.body) && !present.withPin.contains(draft.enteredBy))
    return fail(ErrorCode::WrongPin, "pin", "", "the PIN is missing", "enter name and PIN");
  if (present.withPin.contains(draft.enteredBy) || present.signedIn.contains(draft.enteredBy)) return {};
  return fail(ErrorCode::NotPermitted, "entered_by", draft.enteredBy,
              {"“%1” has not signed in here, or not for a while", {shown(draft.enteredBy)}},
              job.paused ? Message("sign in with name and PIN, then resume")
                         : Message("sign in with name and PIN first"));
}

/// The entries that the draft makes, each allowed after the one before.
Result<std::vector<Judged>> Ledger::judged(const Job& job, const Draft& draft, const Present& present,
                                           const Moment& now) {
  CW_TRY(shop, floor());
  std::vector<Judged> out;
  std::optional<Job> after;  // a copy, because nothing has happened before the commit
  const auto add = [&](const Job& before, const Draft& next) -> Result<void> {
    CW_TRY(entry, compose(before, next, shop, present, now));
    CW_TRY(allowed, judge(before, std::move(entry), From::Line));
    out.push_back(std::move(allowed));
    return {};
  };
  if (job.last() != nullptr && now < job.last()->time) {
    CW_CHECK(add(job, programsOwn(draft, ClockWentBack{}, now)));
    apply(after.emplace(job), out.back());
  }
  CW_CHECK(add(after ? *after : job, draft));
  return out;
}

Result<void> Ledger::insert(const Job& job, const std::vector<Judged>& entries) {
  Digest previous = job.head;
  for (const Judged& entry : entries) {
    CW_CHECK(insertEntry(m_needs.database.connection(), job, entry, previous));
    previous = entry.hash();
  }
  return {};
}

/// Takes the committed entries into the fold, and compares the last with what the file says to somebody else.
/// They are in the file whatever that comes to: where it fails, the job is folded anew, from what is there.
Result<Receipt> Ledger::reread(Job& job, std::vector<Judged> entries) {
  const Judged last = entries.back();
  for (Judged& entry : entries) apply(job, std::move(entry));
  const Receipt receipt{last.entry().sequence, hex(last.hash())};
  const auto stored = storedEntry(m_needs.database.reader(), last.entry().id);
  // Whoever holds the file just then keeps it from being looked at, not from being durable.
  if (!stored && stored.error().code == ErrorCode::Locked) return receipt;
  if (stored && *stored && (*stored)->text == last.text() && (*stored)->hash == receipt.hash) return receipt;
  const std::string place = "job " + job.id.text(), number = std::to_string(receipt.sequence);
  m_jobs.erase(Id(job.id));
  if (!stored)
    return fail(
        stored.error().code, place, number,
        {"entry %1 was written, but it could not be read back: %2", {number, sentence(stored.error())}},
        "look at the job before you enter it again");
  return fail(ErrorCode::Storage, place, number,
              {"entry %1 was written, but it is not what the file says", {number}},
              "check the disk, and look at the job before you enter it again");
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

Result<bool> Ledger::isSignedIn(const Id& id, const std::string& sign) {
  CW_TRY(job, held(id));
  return job->signedIn.contains(sign) && m_sessions.alive(id, sign, m_needs.clock.now(), inPass(*job));
}

Result<ShopFloor> Ledger::floor() {
  CW_TRY(people, m_needs.people.all());
  CW_TRY(tools, m_needs.tools.all());
  return ShopFloor{people, tools};
}

}  // namespace cw

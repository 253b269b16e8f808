#include "core/report/content.h"

#include <algorithm>

#include "core/report/describe.h"
#include "core/report/headline.h"
#include "core/report/joint_content.h"
#include "core/report/named_lines.h"

namespace cw {
namespace {

Message reasonOf(const JobStarted& start) {
  if (!start.reason) return {};
  switch (*start.reason) {
    case Reason::NewWork:
      return "new work";
    case Reason::Warranty:
      return "warranty";
    case Reason::Comeback:
      return {"comeback of job %1", {start.parent}};
    case Reason::RetorqueDue:
      return {"retorque due from job %1", {start.parent}};
  }
  return {};
}

std::string whoOf(const Entry& entry, std::span<const Person> people, const Wording& wording) {
  std::vector<std::string> out{doersOf(entry, people)};
  const bool byAnother = std::any_of(entry.by.begin(), entry.by.end(),
                                     [&](const Doer& doer) { return doer.person != entry.enteredBy; });
  if (byAnother) out.push_back(wording({"entered by %1", {nameOf(entry.enteredBy, people)}}));
  if (!entry.supervisor.empty())
    out.push_back(wording({"supervised by %1", {nameOf(entry.supervisor, people)}}));
  return listed(out);
}

std::vector<EntryLine> entriesOf(const Job& job, std::span<const Person> people, const Wording& wording) {
  std::vector<EntryLine> out;
  for (const Kept& kept : job.entries) {
    const Entry& entry = kept.entry;
    EntryLine line;
    line.sequence = entry.sequence;
    line.time = entry.time, line.done = entry.done;
    line.who = whoOf(entry, people, wording);
    line.step = stepNumber(job, stepOf(entry.body));
    line.what = say(describe(entry, job, people), wording);
    line.overtaken = kept.overtaken;
    line.correctedBy = kept.correctedBy;
    line.hash = hex(kept.hash);
    if (const auto* corrected = std::get_if<Corrected>(&entry.body)) {
      const Kept& old = job.kept(corrected->of);
      line.corrects = corrected->of;
      line.step = stepNumber(job, stepOf(old.entry.body));
      line.overtaken = old.overtaken;
    }
    out.push_back(std::move(line));
  }
  return out;
}

std::vector<std::string> sourcesOf(const Sheet& sheet, const Wording& wording) {
  std::vector<std::string> out;
  for (const Source& source : sheet.sources) {
    out.push_back(wording({"%1, page %2, revision %3", {source.document, source.page, source.revision}}));
    if (source.photograph)
      out.push_back(wording(
          {"photograph “%1”, SHA-256 %2", {source.photograph->name, hex(sha256(source.photograph->bytes))}}));
  }
  return out;
}

/// Stands on every page.
std::string noticeOf(const Job& job, const Wording& wording) {
  std::vector<Message> out;
  if (job.isTrial()) out.push_back(trialNotice());
  if (job.start.quick) out.push_back("Quick joint: no issued sheet.");
  if (!job.sheet.notice.empty()) out.push_back({"%1", {job.sheet.notice}});
  return say(out, wording);
}

std::string sealedByText(const Voucher& by, const Wording& wording) {
  return wording({by.how == Vouch::Pin ? "%1, with the PIN for it" : "%1, signed in with the PIN", {by.name}});
}

void takeStart(RecordContent& out, const Job& job, const Wording& wording) {
  const JobStarted& start = job.start;
  out.workOrder = start.workOrder, out.machine = start.machine, out.model = start.model;
  out.serial = start.serial, out.hours = start.hours;
  out.reason = wording(reasonOf(start));
  if (job.entries.empty()) return;
  out.started = job.entries.front().entry.time;
  if (job.finished) out.ended = job.last()->time;
}

RecordContent ofJob(const Job& job, std::span<const Person> people, const Wording& wording) {
  RecordContent out;
  out.finished = job.finished;
  out.trial = job.isTrial();
  takeStart(out, job, wording);
  out.sheetTitle = job.sheet.title, out.sheetRevision = job.sheet.revision;
  out.sheetId = job.sheet.id.text(), out.sheetDigest = hex(sha256(job.sheetBytes));
  out.quick = job.start.quick;
  out.notice = noticeOf(job, wording);
  out.sources = sourcesOf(job.sheet, wording);
  out.exceptions = exceptionsOf(job, people, wording);
  out.people = peopleOf(job, people, wording);
  out.tools = toolsOf(job, people, wording);
  out.parts = partsOf(job, people, wording);
  out.joints = jointsOf(job, people, wording);
  out.entries = entriesOf(job, people, wording);
  out.jobId = job.id.text(), out.head = hex(job.head);
  return out;
}

}  // namespace

RecordContent contentOf(const SealedRecord& record, std::span<const Addendum> addenda,
                        const Wording& wording) {
  RecordContent out = ofJob(record.job, record.people, wording);
  out.sealed = true;
  out.shopName = record.shopName, out.program = record.program, out.keyId = record.keyId;
  out.sealedAt = record.sealed;
  if (record.sealedBy) out.sealedBy = sealedByText(*record.sealedBy, wording);
  for (const Addendum& addendum : addenda)
    out.addenda.push_back({addendum.number, addendum.name, addendum.time, addendum.text});
  out.outcome = headlineOf({record.job, true, out.exceptions}, wording);
  return out;
}

RecordContent contentOf(const Job& job, const ShopFloor& floor, const std::string& shopName,
                        const Wording& wording) {
  // Names as the entries have them; the shop's, where an entry of a trial version names somebody by sign alone.
  const std::vector<Person> named = peopleIn(job);
  RecordContent out = ofJob(job, named.empty() ? floor.people : std::span<const Person>(named), wording);
  out.shopName = shopName;
  out.outcome = headlineOf({job, false, out.exceptions}, wording);
  return out;
}

}  // namespace cw

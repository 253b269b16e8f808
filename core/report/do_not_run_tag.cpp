#include "core/report/describe.h"
#include "core/report/paper_sheet.h"
#include "core/report/record_words.h"

namespace cw {
namespace {

/// The entry that parked the job, the last of its kind.
const Entry* parkingOf(const Job& job) {
  const Entry* out = nullptr;
  for (const Kept& kept : job.entries)
    if (const auto* paused = std::get_if<Paused>(&kept.entry.body); paused && paused->parked)
      out = &kept.entry;
  return out;
}

}  // namespace

Result<Document> doNotRunTag(const Job& job, std::span<const Person> people, const Wording& wording) {
  const Entry* parking = parkingOf(job);
  if (!job.parked || parking == nullptr)
    return fail(ErrorCode::OutOfTurn, "job " + job.id.text(), "", "the job is not parked",
                "park it first, with what it waits for");
  const auto& paused = std::get<Paused>(parking->body);
  FactList facts(wording);
  facts.add("Machine", job.start.machine);
  facts.add("Serial", job.start.serial);
  facts.add("Work order", job.start.workOrder);
  facts.add("State", paused.machineState);
  facts.add("Waits for", paused.waitsFor);
  facts.add("Why", paused.reason);
  facts.add("Parked by", doersOf(*parking, people));
  facts.add("Since", timeText(parking->time));
  Document out;
  out.title = job.start.machine + " · " + job.start.workOrder;
  out.subtitle = wording("Tag for the machine");
  out.notice = job.sheet.notice;
  out.footer = {wording({"Job %1, %2 entries", {job.id.text(), std::to_string(job.count())}})};
  out.sections = {
      {"",
       {Paragraph{wording("DO NOT RUN"), Tone::Headline},
        Paragraph{wording("Work on this machine is not finished."), Tone::Lead}, facts.take(),
        Paragraph{wording("Only somebody who resumes the job may take this tag off."), Tone::Caution}},
       false}};
  return out;
}

}  // namespace cw

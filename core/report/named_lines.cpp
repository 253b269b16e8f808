#include "core/report/named_lines.h"

#include <algorithm>

#include "core/report/describe.h"
#include "core/shop/shop_json.h"
#include "core/units/format.h"

namespace cw {
namespace {

void addOnce(std::vector<std::string>& list, std::string item) {
  if (std::find(list.begin(), list.end(), item) == list.end()) list.push_back(std::move(item));
}

Message roleName(Role role) {
  switch (role) {
    case Role::Technician:
      return "technician";
    case Role::ServiceWriter:
      return "service writer";
    case Role::Trainer:
      return "trainer";
    case Role::Inspector:
      return "inspector";
    case Role::ShopLead:
      return "shop lead";
  }
  return {};
}

/// Gathers people and their part in the job.
class Gathering {
 public:
  Gathering(std::span<const Person> people, const Wording& wording) : m_people(people), m_wording(wording) {}

  void take(const Entry& entry) {
    const bool isWork = !stepOf(entry.body).empty();
    const auto* witnessed = std::get_if<Witnessed>(&entry.body);
    for (const Doer& doer : entry.by) {
      if (witnessed != nullptr)
        add(doer.person, witnessed->manner == Manner::Self ? "self-check" : "second person");
      else if (isWork)
        add(doer.person, "did the work");
      else
        add(doer.person, {});
    }
    const bool byAnother = std::any_of(entry.by.begin(), entry.by.end(),
                                       [&](const Doer& doer) { return doer.person != entry.enteredBy; });
    if (byAnother) add(entry.enteredBy, "entered it for others");
    if (!entry.supervisor.empty()) add(entry.supervisor, "supervised");
    for (const std::string& sign : namedIn(entry.body).people) add(sign, "gave a word as lead");
    if (std::holds_alternative<Finished>(entry.body)) add(entry.enteredBy, "finished the job");
  }
  std::vector<PersonLine> lines() { return std::move(m_lines); }

 private:
  void add(const std::string& sign, const Message& part) {
    PersonLine& line = lineOf(sign);
    if (!part.empty()) addOnce(line.part, m_wording(part));
  }
  PersonLine& lineOf(const std::string& sign) {
    for (PersonLine& line : m_lines)
      if (line.sign == sign) return line;
    PersonLine line{nameOf(sign, m_people), sign, {}, {}};
    for (const Person& person : m_people) {
      if (person.sign != sign) continue;
      if (person.apprentice) line.roles.push_back(m_wording("apprentice"));
      for (const Role role : person.roles) line.roles.push_back(m_wording(roleName(role)));
    }
    m_lines.push_back(std::move(line));
    return m_lines.back();
  }

  std::span<const Person> m_people;
  const Wording& m_wording;
  std::vector<PersonLine> m_lines;
};

std::string standingOf(const TorqueTool& tool, const Entry& entry, const ToolSet& set,
                       std::span<const Person> people, const Wording& wording) {
  const auto day = localDate(entry.doneAt());
  const auto fit = checkInService(tool, day);
  if (fit && set.allowedBy.empty()) return wording({"in date on %1", {isoDate(day)}});
  const std::string why = fit ? set.reason : wording(fit.error().problem);
  if (set.allowedBy.empty()) return wording({"early passes only: %1", {why}});
  return wording({"%1; allowed by %2: “%3”", {why, nameOf(set.allowedBy, people), set.reason}});
}

}  // namespace

std::vector<PersonLine> peopleOf(const Job& job, std::span<const Person> people, const Wording& wording) {
  Gathering gathering(people, wording);
  for (const Kept& kept : job.entries) gathering.take(kept.entry);
  return gathering.lines();
}

std::vector<ToolLine> toolsOf(const Job& job, std::span<const Person> people, const Wording& wording) {
  std::vector<ToolLine> out;
  std::vector<std::string> pages;  // canonical crib page and standing of each line, to tell states apart
  for (const Kept& kept : job.entries) {
    const auto* set = std::get_if<ToolSet>(&kept.entry.body);
    if (set == nullptr) continue;
    auto tool = toolFromJson(set->asUsed, "as_used");
    if (!tool) continue;
    std::string standing = standingOf(*tool, kept.entry, *set, people, wording);
    const std::string page = canonical(set->asUsed.value) + standing;
    const auto at = static_cast<std::size_t>(std::find(pages.begin(), pages.end(), page) - pages.begin());
    if (at == pages.size()) {
      pages.push_back(page);
      out.push_back({*std::move(tool), {}, {}, std::move(standing)});
    }
    addOnce(out[at].settings, text(set->setting));
    out[at].entries.push_back(kept.entry.sequence);
  }
  return out;
}

std::vector<PartLine> partsOf(const Job& job, std::span<const Person> people, const Wording& wording) {
  std::vector<PartLine> out;
  for (const Part& part : job.sheet.parts) {
    PartLine line{part.name, part.count, {}, 0};
    for (const Kept& kept : job.entries) {
      const Step* step = job.sheet.step(stepOf(kept.entry.body));
      const bool uses = std::holds_alternative<ActDone>(kept.entry.body) ||
                        std::holds_alternative<Applied>(kept.entry.body);
      if (step == nullptr || step->part != part.id || !uses || kept.overtaken) continue;
      Entry holding = kept.entry;
      holding.body = kept.body();
      line.used = say(describe(holding, job, people), wording);
      line.entry = kept.correctedBy.value_or(kept.entry.sequence);
    }
    out.push_back(std::move(line));
  }
  return out;
}

}  // namespace cw

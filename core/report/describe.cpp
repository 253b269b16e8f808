#include "core/report/describe.h"

#include <algorithm>

#include "core/record/next.h"
#include "core/report/wording.h"
#include "core/units/format.h"

namespace cw {
namespace {

using Messages = std::vector<Message>;

std::string number(int value) {
  return std::to_string(value);
}

/// One sentence or more for each kind of entry.
class Describer {
 public:
  Describer(const Job& job, const Entry& entry, std::span<const Person> people)
      : m_job(job), m_entry(entry), m_people(people) {}

  Messages all() {
    std::visit(*this, m_entry.body);
    addWords();
    return std::move(m_out);
  }

  void operator()(const JobStarted& body) {
    add({"Started work order %1 on machine %2.", {body.workOrder, body.machine}});
    if (body.quick) add({"Quick joint: no issued sheet. The guard says: %1.", {body.guard}});
    if (!body.guardAllowedBy.empty())
      add({"Allowed by %1: %2.", {name(body.guardAllowedBy), body.guardReason}});
    if (!body.fitAllowedBy.empty())
      add({"%1 allowed this sheet for this machine: “%2”.", {name(body.fitAllowedBy), body.fitReason}});
    if (m_entry.version > kTrialVersion && !body.registered)
      add("The machine is not in the shop's register.");
    if (body.reason == Reason::NewWork) add("New work.");
    if (body.reason == Reason::Warranty) add("Warranty work.");
    if (body.reason == Reason::Comeback) add({"Comeback of job %1.", {body.parent}});
    if (body.reason == Reason::RetorqueDue) add({"Retorque due from job %1.", {body.parent}});
    if (body.alone) add("The shop has one active person: holds are self-checks, not independent.");
  }
  void operator()(const SignedIn&) { add("Signed in with name and PIN."); }
  void operator()(const WarningsRead&) { add("Read the warnings and cautions."); }
  void operator()(const ActDone& body) {
    const Part* part = partOf(body.step);
    if (body.renewed)
      add({"Done, with a new part: %1.", {part != nullptr ? part->name : ""}});
    else
      add("Done.");
    pack(body.batch, body.expiry);
  }
  void operator()(const CheckMade& body) {
    add(body.answer == Answer::Yes ? "Checked: yes." : "Checked: no; the step stays open.");
    remark(body.remark);
  }
  void operator()(const Measured& body) {
    add({"Measured %1 %2.", {body.value, body.unit}});
    if (!body.gauge.empty()) add({"Gauge: %1.", {body.gauge}});
    limits(body);
  }
  void operator()(const Applied& body) {
    const Part* part = partOf(body.step);
    add({"Applied: %1.", {part != nullptr ? part->name : body.step.text}});
    pack(body.batch, body.expiry);
  }
  void operator()(const HandStarted& body) {
    add({"Fasteners run to the face by finger: %1.", {number(body.count)}});
    if (!body.stuck.empty()) add({"These would not run: %1.", {listed(body.stuck)}});
  }
  void operator()(const ConditionConfirmed& body) {
    add({"Threads and bearing faces confirmed: %1.", {body.condition}});
  }
  void operator()(const ToolSet& body) {
    add({"Tool %1 set to %2 for pass %3.", {body.tool, text(body.setting), number(body.pass)}});
    if (!body.allowedBy.empty())
      add({"%1 allowed this tool although it is refused: “%2”.", {name(body.allowedBy), body.reason}});
  }
  void operator()(const PassCounted& body) {
    add({"Pass %1 done, counted: %2 fasteners.", {number(body.pass), number(body.count)}});
    if (!body.setting.value.empty()) add({"Clicked at %1.", {text(body.setting.value)}});
    if (!body.positions.value.empty()) add({"These positions: %1.", {listed(body.positions)}});
  }
  void operator()(const Tightened& body) {
    const std::string reading = body.reading ? text(*body.reading) : std::string();
    switch (body.known) {
      case Known::Clicked:
        add({"Position %1 clicked at %2.", {body.position, text(body.setting.value)}});
        break;
      case Known::Read:
        add({"Position %1 tightened, %2 read.", {body.position, reading}});
        break;
      case Known::Instrument:
        add({"Position %1 tightened, %2 by instrument.", {body.position, reading}});
        break;
    }
    if (!body.within) add("Outside the tolerance: to be done again.");
  }
  void operator()(const GapsRead& body) {
    std::vector<std::string> gaps;
    for (const StatedLength& gap : body.gaps) gaps.push_back(text(gap));
    const Unit<LengthTag>& unit = body.gaps.empty() ? kMillimetre : *body.gaps.front().unit;
    add({"Gap between the faces after pass %1, going round: %2.", {number(body.pass), listed(gaps)}});
    add({"They differ by %1.", {text(differenceOf(body.gaps), unit)}});
    if (!body.within)
      add(body.allowedBy.empty() ? Message("More than the sheet allows: to be brought even and read again.")
                                 : Message("More than the sheet allows; %1 let the work go on: “%2”.",
                                           {name(body.allowedBy), body.reason}));
  }
  void operator()(const CheckPassMade& body) {
    if (body.moved.empty())
      add({"Check pass, round %1: nothing moved.", {number(body.round)}});
    else
      add({"Check pass, round %1: these moved: %2.", {number(body.round), listed(body.moved)}});
  }
  void operator()(const Witnessed& body) {
    const std::string what = listed(body.what.empty() ? body.notSo : body.what);
    switch (body.manner) {
      case Manner::Watched:
        add({"Watched by a second person: %1.", {what}});
        break;
      case Manner::Independent:
        add({"Checked independently by a second person: %1.", {what}});
        break;
      case Manner::Self:
        add({"Self-check after a break, not independent: %1.", {what}});
        break;
    }
    if (!body.notSo.empty()) add({"Not so: %1.", {listed(body.notSo)}});
    if (body.setting && body.tool.empty())
      add({"Found a tool set to %1.", {text(*body.setting)}});
    else if (body.setting)
      add({"Found tool %1 set to %2.", {body.tool, text(*body.setting)}});
    else if (!body.tool.empty())
      add({"Found tool %1.", {body.tool}});
    if (body.count) add({"Counted %1.", {number(*body.count)}});
    if (!body.agrees) add("This does not agree with the first entry.");
  }
  void operator()(const SetAside& body) { add({"Set aside: “%1”.", {body.reason}}); }
  void operator()(const LeftBlank& body) {
    add({body.absence == Absence::NotApplicable ? "Left blank, not applicable: “%1”."
                                                : "Left blank, not recorded: “%1”.",
         {body.reason}});
    if (!body.allowedBy.empty()) add({"Allowed by %1.", {name(body.allowedBy)}});
  }
  void operator()(const Deviated& body) {
    add({"Done otherwise than the sheet says: “%1”.", {body.what}});
    add({"Reason: “%1”.", {body.reason}});
    allowed(body.allowedBy);
    if (body.aim)
      add({"The torque for this job only is %1, from %2 to %3.",
           {text(*body.aim), text(body.low.value_or(*body.aim)), text(body.high.value_or(*body.aim))}});
  }
  void operator()(const Corrected& body) {
    add({"Corrects entry %1: “%2”.", {number(body.of), body.reason}});
    if (body.of < 1 || body.of > m_job.count()) return;
    const auto now = bodyFromJson(kindOf(m_job.kept(body.of).entry.body), body.now, "now", From::Chain);
    if (!now) return;
    add("It should say:");
    std::visit(*this, *now);
  }
  void operator()(const Reopened& body) {
    if (body.position.empty())
      add({"Not done after all, step %1: “%2”.", {number(stepNumber(m_job, body.step)), body.reason}});
    else
      add({"Position %1 was not tightened after all: “%2”.", {body.position, body.reason}});
  }
  void operator()(const Confirmed& body) {
    std::vector<std::string> entries;
    for (const int of : body.of) entries.push_back(number(of));
    add({"Stands by the word given in these entries: %1.", {listed(entries)}});
  }
  void operator()(const Paused& body) {
    if (body.reason.empty())
      add("Paused.");
    else
      add({body.parked ? "Parked: “%1”." : "Paused: “%1”.", {body.reason}});
    if (!body.waitsFor.empty()) add({"Waits for: “%1”.", {body.waitsFor}});
    if (!body.machineState.empty()) add({"State of the machine: “%1”.", {body.machineState}});
  }
  void operator()(const Resumed& body) {
    add("Resumed, after signing in again.");
    if (body.repeatPass) add("The pass is repeated from its start.");
  }
  void operator()(const TakenApart& body) {
    add({"Taken apart: step %1 and all after it are done again: “%2”.",
         {number(stepNumber(m_job, body.step)), body.reason}});
  }
  void operator()(const Repaired& body) {
    const Joint* joint = m_job.sheet.joint(body.joint);
    add({"Repaired position %1 of “%2”: “%3”. Reason: “%4”.",
         {body.position, joint != nullptr ? joint->name : body.joint, body.what, body.reason}});
    allowed(body.allowedBy);
  }
  void operator()(const ToolStopped& body) {
    switch (body.why.value) {
      case Stop::Dropped:
        add({"Tool %1 was dropped or doubted since it was set: it is not used on.", {body.tool}});
        break;
      case Stop::Quarantined:
        add({"Tool %1 was put in quarantine since it was set: it is not used on.", {body.tool}});
        break;
      case Stop::Retired:
        add({"Tool %1 was retired since it was set: it is not used on.", {body.tool}});
        break;
    }
    if (!body.since.value.empty()) add({"The crib says so from %1 on.", {body.since}});
    if (!body.positions.value.empty()) add({"Pulled with it in this pass: %1.", {listed(body.positions)}});
  }
  void operator()(const ClockWentBack& body) {
    const auto before = parseRfc3339(body.before.value);
    add({"The clock of this computer went back; the entry before says %1.",
         {before ? timeText(*before) : body.before.value}});
  }
  void operator()(const CalledOff& body) { add({"Called off: “%1”.", {body.reason}}); }
  void operator()(const Finished& body) {
    add("Finished.");
    remark(body.remark);
    if (!body.reason.empty()) add({"With something left undone: “%1”.", {body.reason}});
    if (!body.allowedBy.empty()) add({"Allowed by %1.", {name(body.allowedBy)}});
  }

 private:
  void add(Message message) { m_out.push_back(std::move(message)); }
  void allowed(const PersonSign& lead) {
    if (!lead.empty())
      add({"Allowed by %1.", {name(lead)}});
    else if (m_job.start.alone)
      add("Nobody else was there to allow it.");
  }
  /// How those whose word the entry rests on gave it.
  void addWords() {
    for (const std::string& sign : namedIn(m_entry.body).people) {
      const Voucher* word = m_entry.voucher(sign);
      if (word == nullptr) continue;
      if (word->here()) {
        add({"%1 gave the PIN.", {word->name}});
        continue;
      }
      add({word->how == Vouch::Phone ? "%1 said so by phone, as %2 writes." : "%1 is named so by %2.",
           {word->name, name(m_entry.enteredBy)}});
      const bool kept = m_entry.sequence >= 1 && m_entry.sequence <= m_job.count();
      const auto confirmed = kept ? m_job.kept(m_entry.sequence).confirmedBy : std::nullopt;
      if (confirmed)
        add({"Confirmed in entry %1.", {number(*confirmed)}});
      else
        add("Not confirmed.");
    }
  }
  void remark(const std::string& words) {
    if (!words.empty()) add({"Remark: “%1”.", {words}});
  }
  void pack(const std::string& batch, const std::string& expiry) {
    if (!batch.empty()) add({"Batch %1.", {batch}});
    if (!expiry.empty()) add({"Good until %1.", {expiry}});
  }
  void limits(const Measured& body) {
    const Step* step = m_job.sheet.step(body.step);
    if (step == nullptr) return;
    const bool below = !step->low.empty() && numberOf(body.value) < numberOf(step->low);
    const bool above = !step->high.empty() && numberOf(body.value) > numberOf(step->high);
    if (below) add({"That is less than %1 %2; the step stays open.", {step->low, step->unit}});
    if (above) add({"That is more than %1 %2; the step stays open.", {step->high, step->unit}});
  }
  const Part* partOf(const std::string& stepId) const {
    const Step* step = m_job.sheet.step(stepId);
    return step != nullptr ? m_job.sheet.part(step->part) : nullptr;
  }
  std::string name(const std::string& sign) const { return nameOf(sign, m_people); }

  const Job& m_job;
  const Entry& m_entry;
  std::span<const Person> m_people;
  Messages m_out;
};

}  // namespace

Messages describe(const Entry& entry, const Job& job, std::span<const Person> people) {
  return Describer(job, entry, people).all();
}

std::string nameOf(std::string_view sign, std::span<const Person> people) {
  const auto found =
      std::find_if(people.begin(), people.end(), [&](const Person& p) { return p.sign == sign; });
  return found == people.end() ? std::string(sign) : found->name;
}

std::string doersOf(const Entry& entry, std::span<const Person> people) {
  std::vector<std::string> names;
  for (const Doer& doer : entry.by) {
    std::string name = nameOf(doer.person, people);
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(std::move(name));
  }
  return listed(names);
}

int stepNumber(const Job& job, std::string_view step) {
  const auto index = job.stepIndex(step);
  return index ? static_cast<int>(*index) + 1 : 0;
}

std::string timeText(const Moment& moment) {
  const std::string all = rfc3339(moment);  // 2026-03-04T08:00:05.000+01:00
  return all.substr(0, 10) + " " + all.substr(11, 8) + " " + all.substr(23);
}

}  // namespace cw

#include "core/report/exceptions.h"

#include <map>

#include "core/procedure/applicability.h"
#include "core/report/describe.h"
#include "core/report/headline.h"
#include "core/units/format.h"

namespace cw {
namespace {

Message headingOf(ExceptionKind kind) {
  switch (kind) {
    case ExceptionKind::NotDone:
      return "Not done";
    case ExceptionKind::OutOfTolerance:
      return "Outside the tolerance or limits";
    case ExceptionKind::Deviation:
      return "Done otherwise than the sheet says";
    case ExceptionKind::ToolOverride:
      return "Refused tool used";
    case ExceptionKind::ToolStopped:
      return "Wrench stopped in use";
    case ExceptionKind::NotConfirmed:
      return "Rests on a word that is not confirmed";
    case ExceptionKind::LeftBlank:
      return "Left blank";
    case ExceptionKind::SetAside:
      return "Set aside";
    case ExceptionKind::Disagreement:
      return "Second person found otherwise";
    case ExceptionKind::NotIndependent:
      return "Not independent";
    case ExceptionKind::LessThanAsked:
      return "Watched where an independent look was asked for";
    case ExceptionKind::NoIssuedSheet:
      return "No issued sheet";
    case ExceptionKind::OtherModel:
      return "Sheet for another machine";
    case ExceptionKind::NotRegistered:
      return "Machine not in the register";
    case ExceptionKind::WouldNotRun:
      return "Would not run by finger";
    case ExceptionKind::Repair:
      return "Repaired";
    case ExceptionKind::TakenApart:
      return "Taken apart";
    case ExceptionKind::Reopened:
      return "Not done after all, then done";
    case ExceptionKind::Correction:
      return "Corrected";
    case ExceptionKind::AnsweredNo:
      return "Checks answered no";
    case ExceptionKind::ShortGap:
      return "Too fast to be real";
    case ExceptionKind::ClockWentBack:
      return "Clock went back";
    case ExceptionKind::LateEntry:
      return "Entered late";
    case ExceptionKind::RetorqueDue:
      return "Released, retorque due";
  }
  return {};
}

std::string range(int first, int last) {
  return first == last ? std::to_string(first) : std::to_string(first) + "–" + std::to_string(last);
}

/// Entries of one kind that follow each other, said in one line.
struct Run {
  const Entry* first = nullptr;
  const Entry* last = nullptr;
};

class Finder {
 public:
  Finder(const Job& job, std::span<const Person> people, const Wording& wording)
      : m_job(job), m_people(people), m_wording(wording) {}

  std::vector<ExceptionGroup> all() {
    lookForShortfalls();
    for (const Kept& kept : m_job.entries) {
      m_kept = &kept;
      std::visit([this](const auto& body) { look(body); }, kept.body());
      lookForUnconfirmed();
    }
    lookForLateEntries();
    lookForShortGaps();
    lookForRetorque();
    std::vector<ExceptionGroup> out;
    for (auto& [kind, lines] : m_found) out.push_back({kind, m_wording(headingOf(kind)), std::move(lines)});
    return out;
  }

 private:
  // Nothing out of the ordinary.
  void look(const SignedIn&) {}
  void look(const WarningsRead&) {}
  void look(const ActDone&) {}
  void look(const Applied&) {}
  void look(const ConditionConfirmed&) {}
  void look(const PassCounted&) {}
  void look(const CheckPassMade&) {}
  void look(const Confirmed&) {}
  void look(const Paused&) {}
  void look(const Resumed&) {}
  void look(const CalledOff&) {}
  void look(const Finished&) {}  // what is left undone has a heading of its own
  void look(const JobStarted& body) {
    if (body.quick)
      add(ExceptionKind::NoIssuedSheet, "This is a quick joint: no issued sheet stands behind its values.");
    if (!body.guardAllowedBy.empty()) addEntry(ExceptionKind::NoIssuedSheet);
    if (!body.fitAllowedBy.empty()) addEntry(ExceptionKind::OtherModel);
    if (!body.registered && !m_job.isTrial())
      add(ExceptionKind::NotRegistered,
          {"“%1” is not in the shop's register: model and serial are as entered.", {body.machine}});
    if (!body.quick)
      for (Message& doubt : applicability(m_job.sheet, body.model, body.serial).doubts)
        add(ExceptionKind::OtherModel, std::move(doubt));
  }
  void look(const CheckMade& body) { addIf(body.answer == Answer::No, ExceptionKind::AnsweredNo); }
  void look(const Measured&) { addIf(leavesUndone(m_job, m_kept->body()), ExceptionKind::OutOfTolerance); }
  void look(const HandStarted& body) { addIf(!body.stuck.empty(), ExceptionKind::WouldNotRun); }
  void look(const ToolSet& body) { addIf(!body.allowedBy.empty(), ExceptionKind::ToolOverride); }
  void look(const GapsRead& body) { addIf(!body.within, ExceptionKind::OutOfTolerance); }
  void look(const Tightened& body) { addIf(!body.within, ExceptionKind::OutOfTolerance); }
  void look(const Witnessed& body) {
    addIf(!body.agrees, ExceptionKind::Disagreement);
    addIf(body.manner == Manner::Self, ExceptionKind::NotIndependent);
    const Step* step = m_job.sheet.step(body.step.text);
    const bool askedMore = step != nullptr && step->hold && step->hold->witness == Witness::Independent;
    addIf(askedMore && body.manner == Manner::Watched, ExceptionKind::LessThanAsked);
  }
  void look(const SetAside& body) {
    const auto index = m_job.stepIndex(body.step);
    const bool doneLater = index && m_job.steps[*index].state == StepState::Done;
    addEntry(ExceptionKind::SetAside, doneLater ? Message("Done later.") : Message());
  }
  void look(const LeftBlank&) { addEntry(ExceptionKind::LeftBlank); }
  void look(const Deviated&) { addEntry(ExceptionKind::Deviation); }
  void look(const Reopened&) { addEntry(ExceptionKind::Reopened); }
  void look(const ToolStopped&) { addEntry(ExceptionKind::ToolStopped); }
  void look(const Corrected& body) {
    Entry old = m_job.kept(body.of).entry;
    old.body = saidBefore(body.of, m_kept->entry.sequence);
    add(ExceptionKind::Correction, {"%1 It said: %2", {sentencesOf(m_kept->entry), sentencesOf(old)}});
  }
  void look(const TakenApart&) { addEntry(ExceptionKind::TakenApart); }
  void look(const Repaired&) { addEntry(ExceptionKind::Repair); }
  void look(const ClockWentBack&) { addEntry(ExceptionKind::ClockWentBack); }

  /// What entry `of` said until correction `sequence`: its own words, or those of the correction before.
  Body saidBefore(int of, int sequence) const {
    const Body& own = m_job.kept(of).entry.body;
    for (int i = sequence - 1; i > of; --i) {
      const auto* earlier = std::get_if<Corrected>(&m_job.kept(i).entry.body);
      if (earlier == nullptr || earlier->of != of) continue;
      if (auto said = bodyFromJson(kindOf(own), earlier->now, "now", From::Chain)) return *std::move(said);
    }
    return own;
  }

  void lookForShortfalls() {
    if (!m_job.finished || m_job.isTrial()) return;
    for (const Shortfall& each : shortfallsOf(m_job))
      m_found[ExceptionKind::NotDone].push_back({0, m_wording(shortfallText(m_job, each))});
  }
  /// A lead's word that somebody else wrote down, and that the lead has not stood by since.
  void lookForUnconfirmed() {
    if (m_kept->confirmedBy) return;
    for (const std::string& sign : namedIn(m_kept->entry.body).people) {
      const Voucher* word = m_kept->entry.voucher(sign);
      if (word == nullptr || word->here()) continue;
      add(ExceptionKind::NotConfirmed, {word->how == Vouch::Phone ? "%1's word by phone, written down by %2."
                                                                  : "%1's word, written down by %2.",
                                        {word->name, nameOf(m_kept->entry.enteredBy, m_people)}});
    }
  }

  void lookForLateEntries() {
    Run run;
    for (const Kept& kept : m_job.entries) {
      if (kept.entry.done)
        run = {run.first != nullptr ? run.first : &kept.entry, &kept.entry};
      else
        closeLate(run);
    }
    closeLate(run);
  }
  void closeLate(Run& run) {
    if (run.first != nullptr)
      add(ExceptionKind::LateEntry, run.first->sequence,
          {"Entries %1: done from %2, entered from %3.",
           {range(run.first->sequence, run.last->sequence), timeText(*run.first->done),
            timeText(run.first->time)}});
    run = {};
  }

  /// The entry before, if both are pulls of the same pass and nothing but a held key explains the gap.
  bool followsTooFast(const Entry& before, const Entry& entry) const {
    const auto* first = std::get_if<Tightened>(&before.body);
    const auto* second = std::get_if<Tightened>(&entry.body);
    return first != nullptr && second != nullptr && first->step == second->step && !before.done &&
           !entry.done && before.by == entry.by && entry.time.utc - before.time.utc < kLeastBetweenPulls;
  }
  void lookForShortGaps() {
    Run run;
    for (std::size_t i = 1; i < m_job.entries.size(); ++i) {
      const Entry& before = m_job.entries[i - 1].entry;
      const Entry& entry = m_job.entries[i].entry;
      if (followsTooFast(before, entry))
        run = {run.first != nullptr ? run.first : &before, &entry};
      else
        closeGap(run);
    }
    closeGap(run);
  }
  void closeGap(Run& run) {
    if (run.first != nullptr) {
      const std::chrono::duration<double> lasted = run.last->time.utc - run.first->time.utc;
      add(ExceptionKind::ShortGap, run.first->sequence,
          {"Entries %1: %2 positions signed within %3 s.",
           {range(run.first->sequence, run.last->sequence),
            std::to_string(run.last->sequence - run.first->sequence + 1), significant(lasted.count(), 2)}});
    }
    run = {};
  }

  void lookForRetorque() {
    if (!m_job.finished || m_job.start.reason == Reason::RetorqueDue) return;
    for (const Step& step : m_job.sheet.steps) {
      const Joint* joint = m_job.sheet.joint(step.joint);
      if (step.kind != StepKind::Tighten || joint == nullptr || !joint->passes.retorque) continue;
      const double hours = joint->passes.retorque->wait.si() / 3600;
      add(ExceptionKind::RetorqueDue, 0,
          {"“%1” is to be retorqued %2 h or more after tightening, as a job of its own.",
           {joint->name, significant(hours, 3)}});
    }
  }

  std::string sentencesOf(const Entry& entry) const {
    return say(describe(entry, m_job, m_people), m_wording);
  }
  void addIf(bool is, ExceptionKind kind) {
    if (is) addEntry(kind);
  }
  /// The entry's own words, with its step.
  void addEntry(ExceptionKind kind, const Message& after = {}) {
    const int step = stepNumber(m_job, stepOf(m_kept->entry.body));
    Entry holding = m_kept->entry;
    holding.body = m_kept->body();
    std::string words = sentencesOf(holding);
    if (!after.empty()) words += " " + m_wording(after);
    if (m_kept->overtaken) words += " " + m_wording("[overtaken]");
    if (step == 0) return add(kind, {"%1", {std::move(words)}});
    add(kind, {"Step %1: %2", {std::to_string(step), std::move(words)}});
  }
  void add(ExceptionKind kind, Message message) { add(kind, m_kept->entry.sequence, std::move(message)); }
  void add(ExceptionKind kind, int entry, const Message& message) {
    m_found[kind].push_back({entry, m_wording(message)});
  }

  const Job& m_job;
  std::span<const Person> m_people;
  const Wording& m_wording;
  const Kept* m_kept = nullptr;
  std::map<ExceptionKind, std::vector<ExceptionLine>> m_found;
};

}  // namespace

std::vector<ExceptionGroup> exceptionsOf(const Job& job, std::span<const Person> people,
                                         const Wording& wording) {
  return Finder(job, people, wording).all();
}

}  // namespace cw

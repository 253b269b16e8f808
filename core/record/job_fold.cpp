#include <algorithm>
#include <limits>

#include "core/record/fold.h"
#include "core/record/next.h"

namespace cw {
namespace {

constexpr int kNever = std::numeric_limits<int>::max();

bool givesTorque(const Body& body) {
  const auto* deviated = std::get_if<Deviated>(&body);
  return deviated != nullptr && deviated->aim;
}

/// Anything of a pass: the wrench, a count, a pull, a round, gaps, a second person's look.
bool isOfAPass(const Body& body) {
  return std::holds_alternative<ToolSet>(body) || std::holds_alternative<PassCounted>(body) ||
         std::holds_alternative<Tightened>(body) || std::holds_alternative<GapsRead>(body) ||
         std::holds_alternative<CheckPassMade>(body) || std::holds_alternative<Witnessed>(body);
}

/// What looks at positions that were pulled. A second person's look is at the wrench before it pulls, and
/// stands for whatever was pulled with it; what is pulled anew is pulled with a wrench that is set and looked
/// at anew.
bool looksAtPulls(const Body& body) {
  return std::holds_alternative<GapsRead>(body) || std::holds_alternative<CheckPassMade>(body);
}

bool closesWithoutDoing(const Body& body) {
  return std::holds_alternative<SetAside>(body) || std::holds_alternative<LeftBlank>(body) ||
         (std::holds_alternative<Deviated>(body) && !givesTorque(body));
}

/// What an entry does to the job beyond its step.
class JobFold {
 public:
  JobFold(Job& job, const Entry& entry) : m_job(job), m_entry(entry) {}

  void operator()(const JobStarted& body) { m_job.start = body; }
  void operator()(const SignedIn&) {}
  void operator()(const Corrected& body) {
    ++m_job.corrections;
    Kept& old = m_job.entries[static_cast<std::size_t>(body.of - 1)];
    const auto now = bodyFromJson(kindOf(old.entry.body), body.now, "now", From::Chain);
    if (!now || stepMeant(m_job, *now) >= m_job.steps.size()) return;
    const bool undone = leavesUndone(m_job, old.body());
    if (old.correctedBy)
      m_job.entries[static_cast<std::size_t>(*old.correctedBy - 1)].correctedBy = m_entry.sequence;
    old.correctedBy = m_entry.sequence;
    old.now = *now;
    const std::size_t step = stepMeant(m_job, *now);
    m_job.entries.back().turned = leavesUndone(m_job, *now) != undone;
    if (m_job.entries.back().turned) overtakeAfter(step, body.of, *now);
    refold(step);
  }
  void operator()(const Reopened& body) {
    const std::size_t step = stepMeant(m_job, m_entry.body);
    const bool tightens = m_job.sheet.steps[step].kind == StepKind::Tighten;
    int first = kNever;
    overtake(step, [&](const Kept& kept) {
      if (body.position.empty())
        return tightens ? closesWithoutDoing(kept.body())
                        : !std::holds_alternative<WarningsRead>(kept.body()) && !givesTorque(kept.body());
      if (closesWithoutDoing(kept.body())) return true;
      const auto* pulled = std::get_if<Tightened>(&kept.body());
      if (pulled != nullptr && pulled->position == body.position.text) {
        first = std::min(first, kept.entry.sequence);
        return true;
      }
      return kept.entry.sequence > first && looksAtPulls(kept.body());
    });
  }
  void operator()(const Confirmed& body) {
    for (const int of : body.of)
      m_job.entries[static_cast<std::size_t>(of - 1)].confirmedBy = m_entry.sequence;
  }
  void operator()(const Paused& body) {
    m_job.paused = true;
    m_job.parked = body.parked;
    m_job.signedIn.clear();
  }
  void operator()(const Resumed& body) {
    const bool wasParked = m_job.parked;
    m_job.paused = m_job.parked = false;
    const Next now = next(m_job);
    if (now.step >= m_job.steps.size() || m_job.sheet.steps[now.step].kind != StepKind::Tighten) return;
    if (wasParked)
      overtake(now.step, [](const Kept& kept) { return !givesTorque(kept.body()); });
    else if (body.repeatPass)
      repeatPass(now.step);
  }
  void operator()(const TakenApart&) {
    for (std::size_t i = stepMeant(m_job, m_entry.body); i < m_job.steps.size(); ++i)
      overtake(i, [](const Kept& kept) { return !givesTorque(kept.body()); });
  }
  void operator()(const ToolStopped& body) {
    for (std::size_t i = 0; i < m_job.steps.size(); ++i)
      if (m_job.sheet.steps[i].kind == StepKind::Tighten)
        foldOne(m_job.steps[i], m_job, i, m_entry, Body(body));
  }
  void operator()(const CalledOff&) { m_job.calledOff = true; }
  void operator()(const Finished&) { m_job.finished = true; }
  // These do what they do to their step, or nothing.
  void operator()(const WarningsRead&) {}
  void operator()(const ActDone&) {}
  void operator()(const CheckMade&) {}
  void operator()(const Measured&) {}
  void operator()(const Applied&) {}
  void operator()(const HandStarted&) {}
  void operator()(const ConditionConfirmed&) {}
  void operator()(const ToolSet&) {}
  void operator()(const PassCounted&) {}
  void operator()(const GapsRead&) {}
  void operator()(const Tightened&) {}
  void operator()(const CheckPassMade&) {}
  void operator()(const Witnessed&) {}
  void operator()(const SetAside&) {}
  void operator()(const LeftBlank&) {}
  void operator()(const Deviated&) {}
  void operator()(const Repaired&) {}
  void operator()(const ClockWentBack&) {}

 private:
  void refold(std::size_t step) { m_job.steps[step] = foldStep(m_job, step, kNever); }

  template <class Is>
  void overtake(std::size_t step, Is&& is) {
    for (Kept& kept : m_job.entries)
      if (!kept.overtaken && &kept.entry != &m_entry && stepMeant(m_job, kept.body()) == step && is(kept))
        kept.overtaken = true;
    refold(step);
  }
  /// The pass under way begins anew.
  void repeatPass(std::size_t step) {
    const int pass = m_job.steps[step].tightening.pass;
    if (pass > passesOf(m_job, m_job.sheet.steps[step])) return;  // all are done; a round is not begun anew
    overtake(step, [&](const Kept& kept) {
      if (const auto* set = std::get_if<ToolSet>(&kept.body())) return set->pass == pass;
      if (const auto* counted = std::get_if<PassCounted>(&kept.body())) return counted->pass == pass;
      if (const auto* pulled = std::get_if<Tightened>(&kept.body())) return pulled->pass == pass;
      return std::holds_alternative<Witnessed>(kept.body());
    });
  }
  /// A correction made an entry do what it had not done, or not do what it had: what came after and names the
  /// same thing no longer stands.
  void overtakeAfter(std::size_t step, int of, const Body& now) {
    const auto* pulled = std::get_if<Tightened>(&now);
    const bool tightens = m_job.sheet.steps[step].kind == StepKind::Tighten;
    overtake(step, [&](const Kept& kept) {
      if (kept.entry.sequence <= of) return false;
      if (closesWithoutDoing(kept.body())) return true;
      if (!tightens) return !std::holds_alternative<WarningsRead>(kept.body()) && !givesTorque(kept.body());
      const auto* later = std::get_if<Tightened>(&kept.body());
      if (pulled != nullptr && later != nullptr) return later->position == pulled->position;
      if (pulled != nullptr) return looksAtPulls(kept.body());
      if (std::holds_alternative<CheckPassMade>(now))
        return std::holds_alternative<CheckPassMade>(kept.body());
      return isOfAPass(kept.body()) || std::holds_alternative<HandStarted>(kept.body());
    });
  }

  Job& m_job;
  const Entry& m_entry;
};

/// Does it change what a second person looks at? Not what only says that nothing was done.
bool isSeenByAHold(const Body& body) {
  return !std::holds_alternative<WarningsRead>(body) && !std::holds_alternative<SetAside>(body) &&
         !std::holds_alternative<LeftBlank>(body);
}

/// The step whose work is another after the last entry; the number of steps where none is.
std::size_t stepWorked(const Job& job) {
  const Kept& last = job.entries.back();
  if (const auto* corrected = std::get_if<Corrected>(&last.entry.body))
    return last.turned ? stepMeant(job, job.kept(corrected->of).body()) : job.steps.size();
  return isSeenByAHold(last.entry.body) ? stepMeant(job, last.entry.body) : job.steps.size();
}

/// A hold is a look at all steps since the one before it. What is done in one of them afterwards, as a step
/// that was set aside, reopened or corrected may be, nobody has looked at: the hold is open again.
void askForAnotherLook(Job& job) {
  const std::size_t worked = stepWorked(job);
  for (std::size_t i = worked; i < job.steps.size(); ++i) {
    if (job.sheet.steps[i].kind != StepKind::Hold) continue;
    if (i == worked || job.steps[i].state != StepState::Done) return;
    for (Kept& kept : job.entries)
      if (std::holds_alternative<Witnessed>(kept.entry.body) && stepMeant(job, kept.body()) == i)
        kept.overtaken = true;
    job.steps[i] = foldStep(job, i, kNever);
    return;
  }
}

/// A PIN for one entry is for that entry; these say that somebody is at work from now on.
bool opensSessions(const Body& body) {
  return std::holds_alternative<JobStarted>(body) || std::holds_alternative<SignedIn>(body) ||
         std::holds_alternative<Resumed>(body);
}

}  // namespace

void foldIn(Job& job, Kept newest) {
  job.head = newest.hash;
  job.named.add(namedIn(newest.entry));
  job.entries.push_back(std::move(newest));
  const Entry& entry = job.entries.back().entry;
  const std::size_t step = stepMeant(job, entry.body);
  if (step < job.steps.size()) foldOne(job.steps[step], job, step, entry, entry.body);
  std::visit(JobFold(job, entry), entry.body);
  if (entry.version > kTrialVersion) askForAnotherLook(job);
  if (!opensSessions(entry.body)) return;
  if (entry.version <= kTrialVersion) job.signedIn.insert(entry.enteredBy);
  for (const Voucher& voucher : entry.vouchers)
    if (voucher.how == Vouch::Pin &&
        (voucher.person == entry.enteredBy || voucher.person == entry.supervisor))
      job.signedIn.insert(voucher.person);
}

}  // namespace cw

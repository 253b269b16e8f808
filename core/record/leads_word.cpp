#include "core/record/leads_word.h"

#include <set>

#include "core/record/fold.h"
#include "core/record/next.h"

namespace cw {
namespace {

/// Does the step ask for a second look that nobody has given?
bool leavesAHoldOut(const Job& job, std::size_t step, const StepProgress& progress) {
  const Step& asked = job.sheet.steps[step];
  return asked.hold && (asked.kind == StepKind::Hold || !progress.tightening.witnessed);
}

/// What a word is asked for by kind of entry; one overload for each, so that a new kind does not compile
/// without.
struct WordFor {
  const Job& job;
  std::size_t step;
  const StepProgress& progress;
  using Answer = std::optional<Given>;

  Answer operator()(const ToolSet&) const {
    const bool last = progress.tightening.pass >= passesOf(job, job.sheet.steps[step]);
    return last ? Given::Here : Given::HereOrByPhone;
  }
  Answer operator()(const GapsRead&) const { return Given::HereOrByPhone; }
  Answer operator()(const LeftBlank&) const {
    return leavesAHoldOut(job, step, progress) ? Answer(Given::Here) : std::nullopt;
  }
  Answer operator()(const Deviated& body) const {
    const bool holdsOut = !body.aim && leavesAHoldOut(job, step, progress);
    return holdsOut ? Given::Here : Given::HereOrByPhone;
  }
  Answer operator()(const Repaired&) const { return Given::HereOrByPhone; }
  Answer operator()(const Finished&) const {
    return shortfallsOf(job).empty() ? std::nullopt : Answer(Given::HereOrByPhone);
  }
  Answer operator()(const JobStarted&) const { return {}; }
  Answer operator()(const SignedIn&) const { return {}; }
  Answer operator()(const WarningsRead&) const { return {}; }
  Answer operator()(const ActDone&) const { return {}; }
  Answer operator()(const CheckMade&) const { return {}; }
  Answer operator()(const Measured&) const { return {}; }
  Answer operator()(const Applied&) const { return {}; }
  Answer operator()(const HandStarted&) const { return {}; }
  Answer operator()(const ConditionConfirmed&) const { return {}; }
  Answer operator()(const PassCounted&) const { return {}; }
  Answer operator()(const Tightened&) const { return {}; }
  Answer operator()(const CheckPassMade&) const { return {}; }
  Answer operator()(const Witnessed&) const { return {}; }
  Answer operator()(const SetAside&) const { return {}; }
  Answer operator()(const Corrected&) const { return {}; }
  Answer operator()(const Reopened&) const { return {}; }
  Answer operator()(const Confirmed&) const { return {}; }
  Answer operator()(const Paused&) const { return {}; }
  Answer operator()(const Resumed&) const { return {}; }
  Answer operator()(const TakenApart&) const { return {}; }
  Answer operator()(const ToolStopped&) const { return {}; }
  Answer operator()(const ClockWentBack&) const { return {}; }
  Answer operator()(const CalledOff&) const { return {}; }
};

}  // namespace

std::optional<Given> wordFor(const Job& job, std::size_t step, const StepProgress& progress,
                             const Body& body) {
  return std::visit(WordFor{job, step, progress}, body);
}

std::optional<Given> wordFor(const Job& job, const Body& body) {
  static const StepProgress kNone;
  const std::string& named = stepOf(body);
  const std::size_t step = named.empty() ? next(job).step : stepMeant(job, body);
  if (step < job.steps.size()) return wordFor(job, step, job.steps[step], body);
  const bool ofAStep = std::holds_alternative<ToolSet>(body) || std::holds_alternative<LeftBlank>(body) ||
                       std::holds_alternative<Deviated>(body);
  return ofAStep ? std::nullopt : wordFor(job, step, kNone, body);
}

bool restsOnWordOf(const Job& job, int sequence, std::string_view sign) {
  const Entry& entry = job.kept(sequence).entry;
  if (!namedIn(entry.body).people.contains(std::string(sign))) return false;
  const Voucher* word = entry.voucher(sign);
  return word != nullptr && !word->here();
}

std::vector<int> unconfirmedWordsOf(const Job& job, std::string_view sign) {
  std::vector<int> out;
  for (const Kept& kept : job.entries)
    if (!kept.confirmedBy && restsOnWordOf(job, kept.entry.sequence, sign))
      out.push_back(kept.entry.sequence);
  return out;
}

std::vector<std::string> unconfirmedPeople(const Job& job) {
  std::set<std::string> out;
  for (const Kept& kept : job.entries)
    for (const Voucher& voucher : kept.entry.vouchers)
      if (!kept.confirmedBy && restsOnWordOf(job, kept.entry.sequence, voucher.person))
        out.insert(voucher.person);
  return {out.begin(), out.end()};
}

}  // namespace cw

#pragma once
#include "core/record/fold.h"
#include "core/record/leads_word.h"
#include "core/shop/tool.h"

namespace cw {

// What each kind of entry asks of the job; one overload for each, so that a new kind does not compile without.
// Used by `judge` alone, which has looked at order, people and turn before.

class Rules {
 public:
  explicit Rules(const Situation& at) : m_at(at), m_job(at.job), m_entry(at.entry) {}

  Result<void> operator()(const JobStarted& body) const;
  Result<void> operator()(const SignedIn& body) const;
  Result<void> operator()(const WarningsRead& body) const;
  Result<void> operator()(const ActDone& body) const;
  Result<void> operator()(const CheckMade& body) const;
  Result<void> operator()(const Measured& body) const;
  Result<void> operator()(const Applied& body) const;
  Result<void> operator()(const HandStarted& body) const;
  Result<void> operator()(const ConditionConfirmed& body) const;
  Result<void> operator()(const ToolSet& body) const;
  Result<void> operator()(const PassCounted& body) const;
  Result<void> operator()(const Tightened& body) const;
  Result<void> operator()(const GapsRead& body) const;
  Result<void> operator()(const CheckPassMade& body) const;
  Result<void> operator()(const Witnessed& body) const;
  Result<void> operator()(const SetAside& body) const;
  Result<void> operator()(const LeftBlank& body) const;
  Result<void> operator()(const Deviated& body) const;
  Result<void> operator()(const Corrected& body) const;
  Result<void> operator()(const Reopened& body) const;
  Result<void> operator()(const Confirmed& body) const;
  Result<void> operator()(const Paused& body) const;
  Result<void> operator()(const Resumed& body) const;
  Result<void> operator()(const TakenApart& body) const;
  Result<void> operator()(const Repaired& body) const;
  Result<void> operator()(const ToolStopped& body) const;
  Result<void> operator()(const ClockWentBack& body) const;
  Result<void> operator()(const CalledOff& body) const;
  Result<void> operator()(const Finished& body) const;

 private:
  /// The word of `sign`, or the author's own who is a lead, or who works alone where a word by phone would do.
  Result<void> leadsWord(const PersonSign& sign, std::string_view place) const;
  Result<void> sheetFits(const JobStarted& body) const;
  Result<void> quickJoint(const JobStarted& body) const;
  Result<void> earlyTool(const ToolSet& body, const TorqueTool& tool, const JobTorque& torque) const;
  Result<void> finalTool(const ToolSet& body, const TorqueTool& tool, const JobTorque& torque) const;
  Result<void> refusedTool(const ToolSet& body, Result<void> fit) const;
  Result<void> toolInHand(const JobTorque* torque) const;
  Result<void> pack(const Part* part, const std::string& batch, const std::string& expiry) const;
  Result<void> secondPerson(const Witnessed& body) const;
  Result<void> selfCheck(const Witnessed& body) const;
  Result<void> seenAsAsked(const Witnessed& body) const;

  const Situation& m_at;
  const Job& m_job;
  const Entry& m_entry;
};

/// What must be next in the step for a kind that belongs to one stage of it.
Result<void> inTurn(const Body& body, const Situation& at);

/// Does the body speak of steps, positions and entries that are there, and of the right kind? What later code
/// looks up without asking. NotFound or InvalidInput.
Result<void> speaksOfWhatIsThere(const Job& job, const Body& body);

/// The step of that id if it is its turn or was set aside: everything a step's entry must first pass.
Result<std::size_t> stepInTurn(const Job& job, const std::string& stepId);

/// A correction as the chain is to hold it: `body.now` whole, with what follows worked out. The errors of the
/// first entry, judged where that stood.
Result<Corrected> completeCorrection(const Job& job, const Corrected& body, From from);

/// Of a trial version's correction only that it restates an entry of what the sheet has.
Result<void> speaksOfTheSame(const Job& job, const Corrected& body);

inline constexpr int kMostCorrections = 500;

}  // namespace cw

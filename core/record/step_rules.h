#pragma once
#include "core/record/rules.h"

namespace cw {

/// What each kind of entry asks of the job before it may be appended; one overload a kind.
/// Used through `mayAppend` only, which has judged order, people and state before.
class StepRules {
 public:
  StepRules(const Job& job, const Entry& entry, const ShopFloor& floor)
      : m_job(job), m_entry(entry), m_floor(floor) {}

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
  Result<void> operator()(const Paused& body) const;
  Result<void> operator()(const Resumed& body) const;
  Result<void> operator()(const TakenApart& body) const;
  Result<void> operator()(const Repaired& body) const;
  Result<void> operator()(const ClockWentBack& body) const;
  Result<void> operator()(const Finished& body) const;

 private:
  /// The step if `stage` is what comes next in it.
  Result<std::size_t> at(const std::string& step, Stage stage) const;
  Result<void> lead(const std::string& sign, std::string_view place) const;
  Result<void> quickJoint(const JobStarted& body) const;
  Result<void> finalTool(const ToolSet& body, const TorqueTool& tool, const Next& now) const;
  Result<void> secondPerson(const Witnessed& body, std::size_t step) const;

  const Job& m_job;
  const Entry& m_entry;
  const ShopFloor& m_floor;
};

}  // namespace cw

#pragma once
#include "core/record/job.h"

namespace cw {

/// Where an entry of a step is judged and folded: the step, and how far it was just before.
struct Situation {
  const Job& job;
  const Entry& entry;
  std::size_t step;  ///< index into sheet.steps; of a kind that speaks of no step: their number
  const StepProgress& progress;

  const Step& asked() const { return job.sheet.steps[step]; }
  const Joint& joint() const { return *job.sheet.joint(asked().joint); }
};

/// The step a body speaks of; the number of steps where it speaks of none.
std::size_t stepMeant(const Job& job, const Body& body);

/// What an entry that holds, and says `body`, makes of its step.
void foldOne(StepProgress& progress, const Job& job, std::size_t step, const Entry& entry, const Body& body);

/// What the entries of a step that hold, and stand before entry `before`, come to. The one truth about a step:
/// `job.steps` holds it for all of them.
StepProgress foldStep(const Job& job, std::size_t step, int before);

/// Takes an entry into the job: what it makes of its step, and which earlier entries it overtakes. It must have
/// been judged.
void foldIn(Job& job, Kept kept);

}  // namespace cw

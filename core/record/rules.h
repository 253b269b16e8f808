#pragma once
#include <span>

#include "core/record/job.h"
#include "core/shop/person.h"
#include "core/shop/tool.h"

namespace cw {

/// The people and tools that a job's entries are judged against: the shop's, or a record's own list.
struct ShopFloor {
  std::span<const Person> people;
  std::span<const TorqueTool> tools;

  const Person* person(std::string_view sign) const;
  const TorqueTool* tool(std::string_view id) const;
};

/// May this entry be the next of the job, and if not, why not? Pure: the same answer at the bench, on the
/// command line and when a sealed record is verified. OutOfTurn, NotPermitted, NotFound, OutOfRange,
/// AlreadyDone or InvalidInput, with the place (step, position) and what is to be done instead.
/// `today` for the tool's calibration is the entry's own local date.
Result<void> mayAppend(const Job& job, const Entry& entry, const ShopFloor& floor);

/// The step of that id if it is its turn or was set aside: everything a step's entry must first pass.
Result<std::size_t> stepInTurn(const Job& job, const std::string& stepId);

}  // namespace cw

#pragma once
#include <span>
#include <string>

#include "core/record/next.h"
#include "core/report/exceptions.h"

namespace cw {

/// What a record's first line is worked out from.
struct Headline {
  const Job& job;
  bool sealed = false;
  std::span<const ExceptionGroup> exceptions;
};

/// "Complete as the sheet says", only of a job in which every position, check and hold was done as the sheet or
/// a deviation on the first page says; else what is missing, in numbers. Corrections of slips are counted apart
/// from exceptions.
std::string headlineOf(const Headline& of, const Wording& wording);

/// One thing left undone: "7 of 8 positions of “Pump cover”".
Message shortfallText(const Job& job, const Shortfall& shortfall);

}  // namespace cw

#pragma once
#include <chrono>
#include <span>
#include <string>
#include <vector>

#include "core/record/job.h"
#include "core/report/wording.h"
#include "core/shop/person.h"

namespace cw {

/// What a reader of a record must see first, gravest first.
enum class ExceptionKind {
  NotDone,
  OutOfTolerance,
  Deviation,
  ToolOverride,
  ToolStopped,
  NotConfirmed,
  LeftBlank,
  SetAside,
  Disagreement,
  NotIndependent,
  LessThanAsked,
  NoIssuedSheet,
  OtherModel,
  NotRegistered,
  WouldNotRun,
  Repair,
  TakenApart,
  Reopened,
  Correction,
  AnsweredNo,
  ShortGap,
  ClockWentBack,
  LateEntry,
  RetorqueDue,
};

struct ExceptionLine {
  int entry = 0;  ///< sequence of the entry, or of the first of several; 0: none
  std::string text;
};

struct ExceptionGroup {
  ExceptionKind kind = ExceptionKind::Deviation;
  std::string heading;
  std::vector<ExceptionLine> lines;
};

/// Two positions signed faster than this were not tightened one after the other: to carry a wrench to the
/// next fastener and pull it takes longer. Our own choice, no source.
inline constexpr std::chrono::milliseconds kLeastBetweenPulls{2000};

/// Every exception of a job, in groups by kind.
std::vector<ExceptionGroup> exceptionsOf(const Job& job, std::span<const Person> people,
                                         const Wording& wording);

}  // namespace cw

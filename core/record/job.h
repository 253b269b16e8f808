#pragma once
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/procedure/sheet.h"
#include "core/record/entry.h"

namespace cw {

enum class StepState { Open, Done, SetAside, Blank };

/// A torque that holds for this job only, from a Deviated entry.
struct JobTorque {
  StatedTorque low, aim, high;
};

/// How far a tighten step is. `pass` is the one under way, from 1; one past the last when all are done.
struct Tightening {
  bool handStarted = false;
  bool conditionConfirmed = false;
  bool witnessed = false;
  int pass = 1;
  std::optional<ToolSet> set;       ///< the wrench as set for `pass`
  std::vector<std::string> doers;   ///< who set or pulled it since the hand start
  int gapsRead = 0;                 ///< the last pass after which the gaps were found even, or let be
  std::set<std::string> tightened;  ///< positions done on the final pass
  int rounds = 0;                   ///< rounds of the check pass made
  bool settled = false;             ///< the last of them moved nothing
};

struct StepProgress {
  StepState state = StepState::Open;
  bool warningsRead = false;
  bool deviated = false;
  std::string reason;  ///< why it is set aside, blank or deviated
  std::optional<JobTorque> torque;
  Tightening tightening;
};

/// An entry as the fold keeps it: what became of it later.
struct Kept {
  Entry entry;
  Digest hash{};
  bool overtaken = false;          ///< its step was taken apart or its pass repeated afterwards
  std::optional<int> correctedBy;  ///< sequence of the correction that holds now
};

/// One performance of a sheet, folded from its entries; nothing else holds state.
struct Job {
  Id shop, id;
  std::string sheetBytes;  ///< exactly as issued
  Sheet sheet;             ///< read from them
  JobStarted start;
  std::vector<StepProgress> steps;  ///< one for each of sheet.steps
  std::vector<Kept> entries;
  std::set<std::string> signedIn;  ///< since the last start or resume
  bool paused = false;
  bool parked = false;
  bool finished = false;
  Digest head{};  ///< hash of the last entry, or the genesis

  int count() const { return static_cast<int>(entries.size()); }
  const Entry* last() const { return entries.empty() ? nullptr : &entries.back().entry; }
  std::optional<std::size_t> stepIndex(std::string_view stepId) const;
};

/// A job without entries. InvalidInput if the bytes are no sheet.
Result<Job> emptyJob(Id shop, Id job, std::string sheetBytes);

/// Takes one entry in. It must have passed `mayAppend`; nothing is judged here.
void apply(Job& job, Entry entry);

/// Did the last entry leave what it was about to be done still: an answer “no”, a reading outside the limits,
/// uneven gaps, a fastener that would not run or moved again, a second person who found otherwise?
bool leftOpen(const Job& job);

/// What is to be done now.
enum class Stage {
  Start,
  Resume,
  ReadWarnings,
  Act,
  Check,
  Measure,
  Apply,
  Hold,  // a step that is one thing
  HandStart,
  ConfirmCondition,
  SetTool,
  WitnessBeforeFinal,
  CountPass,
  ReadGaps,
  TightenPosition,
  CheckPass,  // within a tighten step
  Finish,
  Nothing
};

struct Next {
  Stage stage = Stage::Nothing;
  std::size_t step = 0;  ///< index into sheet.steps, where a step is meant
  int pass = 0;          ///< from 1
  std::string position;  ///< label, for TightenPosition
  int round = 0;         ///< of the check pass, from 1
  bool operator==(const Next&) const = default;
};

Next next(const Job& job);

/// The same for one step, whether or not it is its turn (a step that was set aside is taken up again so).
Next nextIn(const Job& job, std::size_t step);

/// Labels of a tighten step's joint in tightening order.
const std::vector<std::string>& orderOf(const Job& job, const Step& step);
/// Number of passes of a tighten step, a snug pass and the final one included.
int passesOf(const Job& job, const Step& step);
/// Share of the target in pass 1 … passesOf.
double shareOf(const Job& job, const Step& step, int pass);
/// Rounds that a check pass may take before the program says stop; 0 if the joint has none.
int checkRoundsOf(const Job& job, const Step& step);
/// Widest less narrowest; nothing differs from nothing.
Length differenceOf(const std::vector<StatedLength>& gaps);
/// Do they differ by no more than the sheet allows?
bool even(const std::vector<StatedLength>& gaps, const GapReadings& wanted);
/// low <= value <= high, across units.
bool within(const StatedTorque& value, const JobTorque& torque);
/// The torque that holds at a position: the job's own if a deviation gave one, else the specification's.
JobTorque torqueAt(const Job& job, std::size_t step, const std::string& position);

}  // namespace cw

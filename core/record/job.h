#pragma once
#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "core/procedure/sheet.h"
#include "core/record/entry.h"
#include "core/record/torque.h"

namespace cw {

/// Deviated: closed by a lead's word that it was done otherwise, whatever stands against it.
enum class StepState { Open, Done, SetAside, Blank, Deviated };

/// A wrench as set for the pass under way, and who holds it.
struct InHand {
  PersonSign holder;
  ToolSet set;
};

/// How far a tighten step is. `pass` is the one under way, from 1; one past the last when all are done.
struct Tightening {
  bool handStarted = false;
  std::set<std::string> conditions;  ///< confirmed
  bool witnessed = false;
  int pass = 1;
  std::set<std::string> counted;    ///< positions done in the early pass under way
  std::vector<InHand> inHand;       ///< set for `pass`, the latest last
  int gapsRead = 0;                 ///< the last pass after which the gaps were found even, or let be
  std::set<std::string> tightened;  ///< positions done on the final pass
  std::size_t firstOpen = 0;        ///< place in the order of the first that is not
  int rounds = 0;                   ///< rounds of the check pass made
  bool settled = false;             ///< the last of them moved nothing

  /// The wrench set last; nullptr if none is.
  const ToolSet* set() const { return inHand.empty() ? nullptr : &inHand.back().set; }
  /// The wrench that this person holds, or else the one set last; nullptr if none is set.
  const ToolSet* heldBy(std::string_view person) const;
};

/// What the entries of a step that hold come to.
struct StepProgress {
  StepState state = StepState::Open;
  bool warningsRead = false;
  std::string reason;              ///< why it is set aside, blank or deviated
  std::optional<Absence> absence;  ///< of a step left blank
  std::optional<JobTorque> torque;
  std::set<std::string> hands;  ///< who did, entered or supervised any of it
  Tightening tightening;
};

/// An entry as the fold keeps it: what became of it later.
struct Kept {
  Entry entry;
  Digest hash{};
  bool overtaken = false;            ///< taken apart, repeated, reopened or undone by a correction afterwards
  std::optional<int> correctedBy{};  ///< sequence of the last correction
  std::optional<Body> now{};         ///< what that says
  bool turned = false;               ///< a correction that made done what was not, or the other way round
  std::optional<int> confirmedBy{};  ///< where the lead named in it stood by it

  /// What holds: the entry's body, or what a correction made of it.
  const Body& body() const { return now ? *now : entry.body; }
};

/// Looked up once a job instead of at each entry.
struct StepPlan {
  std::map<std::string, std::size_t, std::less<>> placeInOrder;  ///< of a tighten step's labels
  std::vector<std::string> conditions;                           ///< that its torques assume, each once
};

/// One performance of a sheet, folded from its entries; nothing else holds state.
struct Job {
  Id shop, id;
  std::string sheetBytes;  ///< exactly as issued
  Sheet sheet;             ///< read from them
  std::vector<StepPlan> plans;
  std::map<std::string, std::size_t, std::less<>> stepPlaces;
  JobStarted start;
  std::vector<StepProgress> steps;  ///< one for each of sheet.steps
  std::vector<Kept> entries;
  std::set<std::string> signedIn;  ///< since the last start or resume
  Named named;                     ///< everybody and every tool that an entry names
  int corrections = 0;
  bool paused = false;
  bool parked = false;
  bool finished = false;
  bool calledOff = false;
  Digest head{};  ///< hash of the last entry, or the genesis

  int count() const { return static_cast<int>(entries.size()); }
  const Entry* last() const { return entries.empty() ? nullptr : &entries.back().entry; }
  const Kept& kept(int sequence) const { return entries[static_cast<std::size_t>(sequence - 1)]; }
  std::optional<std::size_t> stepIndex(std::string_view stepId) const;
  /// Takes no more entries.
  bool ended() const { return finished || calledOff; }
  /// Made by a version whose rules are not judged any more.
  bool isTrial() const { return !entries.empty() && entries.front().entry.version <= kTrialVersion; }
};

/// A job without entries. InvalidInput if the bytes are no sheet.
Result<Job> emptyJob(Id shop, Id job, std::string sheetBytes);

/// Labels of a tighten step's joint in tightening order.
const std::vector<std::string>& orderOf(const Job& job, const Step& step);
/// Number of passes of a tighten step, a snug pass and the final one included.
int passesOf(const Job& job, const Step& step);
/// Share of the target in pass 1 … passesOf.
double shareOf(const Job& job, const Step& step, int pass);
/// Rounds that a check pass may take before the program says stop; 0 if the joint has none.
int checkRoundsOf(const Job& job, const Step& step);
/// Is that one of the labels of the step's joint?
bool hasPosition(const Job& job, std::size_t step, std::string_view label);

/// The torque that holds at a position: the job's own if a deviation gave one, else the specification's.
JobTorque torqueAt(const Job& job, std::size_t step, const std::string& position);
/// The same with `progress` for how far the step is.
JobTorque torqueAt(const Job& job, std::size_t step, const StepProgress& progress,
                   const std::string& position);
/// The same as it held when entry `sequence` was made.
JobTorque torqueThen(const Job& job, std::size_t step, const std::string& position, int sequence);
/// What the source gives for the position, whatever a deviation says.
JobTorque torqueBySheet(const Job& job, std::size_t step, const std::string& position);
/// The condition that the torque at a position assumes; empty if the source does not say.
const std::string& conditionAt(const Job& job, std::size_t step, const std::string& position);

/// Of a deviation that gives a torque.
JobTorque torqueOf(const Deviated& deviated);

/// The tighten step that a second person's look at `step` is about: the step itself, or the nearest before
/// it.
std::optional<std::size_t> lookedAt(const Job& job, std::size_t step);

}  // namespace cw

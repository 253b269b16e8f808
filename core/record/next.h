#pragma once
#include "core/record/job.h"

namespace cw {

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
  std::string position{};  ///< label, for TightenPosition, and for SetTool of the final pass once it is under way
  int round = 0;         ///< of the check pass, from 1
  /// For ConfirmCondition, and for SetTool and CountPass of an early pass: the positions meant, in order.
  /// Where the joint has several torques, a pass is done in parts, each with a setting of its own.
  std::vector<std::string> positions{};
  std::string condition{};  ///< for ConfirmCondition
  bool operator==(const Next&) const = default;
};

Next next(const Job& job);

/// The same for one step, whether or not it is its turn (a step that was set aside is taken up again so).
Next nextIn(const Job& job, std::size_t step);
/// The same with `progress` for how far the step is.
Next nextIn(const Job& job, std::size_t step, const StepProgress& progress);

/// Are all of the joint's positions meant?
bool isWholeJoint(const Job& job, const Next& next);

/// The position whose torque a wrench is set to at SetTool: the first of those meant.
const std::string& setFor(const Job& job, const Next& next);

/// May a step be opened again as a whole: one that is closed, unless it is a joint that was tightened, which is
/// reopened position by position?
bool isReopenable(const Job& job, std::size_t step);

/// Does a body leave what it was about to be done still: an answer “no”, a reading outside the limits, uneven
/// gaps, a fastener that would not run or moved again, a second person who found otherwise?
bool leavesUndone(const Job& job, const Body& body);

/// The same of the job's last entry.
bool leftOpen(const Job& job);

/// Are the gaps still to be read after the pass that was just made?
bool gapsDue(const Job& job, std::size_t step, const StepProgress& progress);

/// Something that the sheet asks for and that nothing stands against.
struct Shortfall {
  enum class Kind { Positions, Check, Hold, Step };
  Kind kind = Kind::Step;
  std::size_t step = 0;
  std::size_t done = 0, of = 0;  ///< for Positions
  bool operator==(const Shortfall&) const = default;
};

/// All of it, in the order of the sheet; nothing of a job that is complete, by the sheet or by deviations that
/// replaced a torque or the way a thing was done. A step that does not apply is none, unless it is a check, a
/// hold or a joint.
std::vector<Shortfall> shortfallsOf(const Job& job);

}  // namespace cw

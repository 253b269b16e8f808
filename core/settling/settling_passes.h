#pragma once
#include "core/settling/settling_course.h"

namespace cw {

/// Whether repeating a pass makes the joint even, and how often it takes.
struct EvenPasses {
  bool reached = false;  ///< every bolt is within the asked share of its target
  int repeats = 0;       ///< of the repeated pass; the limit if not reached
  std::vector<Force> loads;
  double worstShort = 0;  ///< what the worst bolt lacks or has too much, as a share of its target
};

/// Tightens, then repeats one pass at full target until every bolt is within `share` of its target.
/// A bolt that ends above its target is never eased, so a small share may not be reached at any number of
/// passes. The nut of every bolt below its target moves, however little is missing; real nuts stick.
/// OutOfRange: `share` outside 0 to 1, `limit` outside 0 to 50; otherwise as settle().
Result<EvenPasses> passesUntilEven(const SettlingModel& model, const TighteningPlan& tightening,
                                   const std::vector<int>& repeatedOrder, double share, int limit);

}  // namespace cw

#pragma once
#include <functional>

#include "core/settling/settling_springs.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// Told after every step: pass and bolt from 1, and whether the nut moved. False stops the tightening.
using AfterStep = std::function<bool(int pass, int bolt, bool moved)>;

/// Tightens fresh springs, which are left as the last step leaves them. A bolt that carries its share or
/// more already is left alone. Errors: all of checkTightening; OutOfRange for a joint that tips;
/// InvalidInput for a gasket that lifts off under bolts that are not snug.
Result<void> tighten(SettlingSprings& springs, const TighteningPlan& tightening, const AfterStep& after);

}  // namespace cw

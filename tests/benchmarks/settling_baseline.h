#pragma once
#include "core/settling/settling_model.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// Loads after the last pass by Newton's method on the contacts, with a fresh dense Cholesky solve in every
/// iteration of every step: the plain way, to be measured against and to agree with.
std::vector<Force> settleByFreshSolves(const SettlingModel& model, const TighteningPlan& tightening);

}  // namespace cw

#pragma once
#include <string_view>

#include "core/settling/settling_joint.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// A joint and how it is tightened, as one file holds them.
struct SettlingCase {
  SettlingJoint joint;
  TighteningPlan tightening;
};

/// Reads a file of format "clampwright.settle", version 1: `part` and `gasket`, or `flexibility_m_per_N` in
/// their place; `bolts`, `target_N` or `targets_N`, `passes`. Every member stands in DEVELOPERS.md, "Layouts,
/// passes and settle files". InvalidInput or OutOfRange naming the member for what is missing, unknown or no
/// number, for fewer than three bolts on a part (one or two do not hold it flat) and for two bolts in one
/// place; the errors of checkFormat, checkJoint and checkTightening.
Result<SettlingCase> readSettlingFile(std::string_view bytes);

}  // namespace cw

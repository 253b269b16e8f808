#pragma once
#include "core/base/finding.h"
#include "core/joint/setting.h"
#include "core/shop/tool.h"

namespace cw {

/// How a tool stands to a setting: the tolerance over the tool's own deviation.
struct ToolFitness {
  double ratio = 0;   ///< half the width of the tolerance over the tool's deviation at this setting
  Findings findings;  ///< Blocking: the tool must not be used; Warning: ratio below 2 : 1
  bool fits() const { return !hasBlocking(findings); }
};

/// Judges a tool by its setting (adapter and prevailing torque included): the setting inside its marked
/// range, and its deviation against the tolerance. The nearer end of the tolerance counts, as an aim need not
/// stand in the middle. All findings are returned: "setting-out-of-range", "deviation-exceeds-tolerance"
/// (ratio below 1: the deviation alone can leave the tolerance) as Blocking, "deviation-ratio-low" (below
/// 2 : 1) as Warning. In date and quarantine are core/shop's business (checkInService).
/// Source: 4 : 1 and 2 : 1 test ratios are common practice, no source.
ToolFitness toolFitness(const TorqueTool& tool, const WrenchSetting& setting);

}  // namespace cw

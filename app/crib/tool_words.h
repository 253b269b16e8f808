#pragma once
#include <QString>
#include <vector>

#include "core/report/document.h"
#include "core/store/tools.h"

namespace cw {

/// "20–150 in·lbf", one line a scale.
QString rangeOf(const TorqueTool& tool);

/// "in date", or why it may not be used on that day.
QString standingOf(const TorqueTool& tool, std::chrono::year_month_day today);

/// The tool's page: what is marked on it, its calibrations, and what happened to it, the latest first.
Document toolDocument(const TorqueTool& tool, const std::vector<ToolEvent>& history,
                      std::chrono::year_month_day today);

}  // namespace cw

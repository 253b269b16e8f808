#include "core/joint/tool_fitness.h"

#include <algorithm>
#include <limits>

#include "core/joint/checks.h"

namespace cw {
namespace {

constexpr double kWarnBelow = 2;

/// Room between the setting and the nearer end of what is allowed, over the tool's deviation.
double deviationRatio(const TorqueTool& tool, const WrenchSetting& setting) {
  const Torque set = setting.setting.value();
  const Torque room = std::min(set - setting.allowed.low, setting.allowed.high - set);
  const Torque deviation = tool.deviation * set;
  return deviation.si() > 0 ? room / deviation : std::numeric_limits<double>::infinity();
}

Finding outOfRange(const TorqueTool& tool, const Error& error) {
  return {Severity::Blocking, "setting-out-of-range", "tool " + tool.id, error.problem, error.expected};
}

Finding deviation(const TorqueTool& tool, double ratio) {
  const std::vector<std::string> numbers{significant(tool.deviation * 100, 3), significant(ratio, 2)};
  Finding finding;
  finding.place = "tool " + tool.id;
  if (ratio < 1) {
    finding.severity = Severity::Blocking;
    finding.code = "deviation-exceeds-tolerance";
    finding.problem = "the tool's deviation of ±%1 % alone can leave the tolerance (%2 : 1)";
    finding.cure = "use a more accurate tool";
  } else {
    finding.severity = Severity::Warning;
    finding.code = "deviation-ratio-low";
    finding.problem = "the tolerance is only %2 times the tool's deviation of ±%1 %";
    finding.cure = "2 : 1 or more is wanted; use a more accurate tool if there is one";
  }
  finding.problem.arguments = numbers;
  return finding;
}

}  // namespace

ToolFitness toolFitness(const TorqueTool& tool, const WrenchSetting& setting) {
  ToolFitness fitness;
  if (const auto range = checkRange(tool, setting.setting); !range)
    fitness.findings.push_back(outOfRange(tool, range.error()));
  fitness.ratio = deviationRatio(tool, setting);
  if (fitness.ratio < kWarnBelow) fitness.findings.push_back(deviation(tool, fitness.ratio));
  return fitness;
}

}  // namespace cw

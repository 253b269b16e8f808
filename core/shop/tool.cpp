#include "core/shop/tool.h"

#include "core/base/clock.h"
#include "core/units/format.h"

namespace cw {
namespace {

tl::unexpected<Error> unfit(const TorqueTool& tool, Message why, Message cure) {
  return fail(ErrorCode::NotPermitted, tool.id, "", std::move(why), std::move(cure));
}

Result<void> checkScale(const TorqueTool& tool, const Scale& scale) {
  const bool oneUnit = scale.low.unit == scale.high.unit && scale.low.unit == scale.graduation.unit;
  if (scale.low.empty() || !oneUnit)
    return fail(ErrorCode::InvalidInput, tool.id + ".scale", "", "the scale mixes units or lacks one",
                "give lowest, highest and graduation in the unit marked on the tool");
  if (scale.low.value() >= scale.high.value() || scale.low.value() < Torque{} ||
      scale.graduation.value() < Torque{})
    return fail(ErrorCode::OutOfRange, tool.id + ".scale", codeText(scale.low),
                {"the scale runs from %1 to %2", {text(scale.low), text(scale.high)}},
                "give a lowest value below the highest, and a graduation of zero or more");
  return {};
}

}  // namespace

const Scale* TorqueTool::scaleIn(const TorqueUnit& unit) const {
  for (const Scale& scale : scales)
    if (scale.low.unit == &unit) return &scale;
  return nullptr;
}

const Calibration* TorqueTool::calibrationOn(std::chrono::year_month_day day) const {
  const Calibration* out = nullptr;
  for (const Calibration& each : calibrations)
    if (std::chrono::sys_days{each.date} <= std::chrono::sys_days{day} &&
        (out == nullptr || std::chrono::sys_days{out->date} <= std::chrono::sys_days{each.date}))
      out = &each;
  return out;
}

Result<void> checkUndoubted(const TorqueTool& tool) {
  if (tool.status == ToolStatus::Quarantined)
    return unfit(tool, "this tool is in quarantine", "take another, or have it calibrated and released");
  if (tool.status == ToolStatus::Retired) return unfit(tool, "this tool is retired", "take another");
  if (tool.dueNow)
    return unfit(tool, {"this tool was dropped or doubted on %1", {isoDate(*tool.dueNow)}},
                 "have it calibrated first");
  return {};
}

Result<void> checkInService(const TorqueTool& tool, std::chrono::year_month_day day) {
  CW_CHECK(checkUndoubted(tool));
  if (tool.calibrations.empty()) return unfit(tool, "this tool was never calibrated", "have it calibrated first");
  const Calibration* held = tool.calibrationOn(day);
  if (held == nullptr)
    return unfit(tool, {"it was first calibrated after %1", {isoDate(day)}},
                 "take one that was calibrated before it was used");
  if (std::chrono::sys_days{day} > std::chrono::sys_days{held->due})
    return unfit(tool, {"its calibration ran out on %1", {isoDate(held->due)}},
                 "take another, or have it calibrated");
  if (tool.cyclesDue > 0 && tool.cycles >= tool.cyclesDue)
    return unfit(
        tool, {"it has done %1 of %2 cycles", {std::to_string(tool.cycles), std::to_string(tool.cyclesDue)}},
        "take another, or have it calibrated");
  return {};
}

Result<void> checkRange(const TorqueTool& tool, const StatedTorque& setting) {
  const Scale* scale = tool.scaleIn(*setting.unit);
  if (scale == nullptr)
    return fail(ErrorCode::NotPermitted, tool.id, codeText(setting),
                {"this tool is not marked in %1", {std::string(setting.unit->words)}},
                "take a tool marked in that unit, or name this tool's own scale");
  if (setting.value() < scale->low.value() || setting.value() > scale->high.value())
    return fail(
        ErrorCode::OutOfRange, tool.id, codeText(setting), {"%1 is outside its range", {text(setting)}},
        {"take a tool that reads it; this one reads %1 to %2", {scale->low.digits, text(scale->high)}});
  return {};
}

Result<void> check(const TorqueTool& tool) {
  if (tool.id.empty())
    return fail(ErrorCode::InvalidInput, "tool.id", "", "the tool has no id", "write what is marked on it");
  if (tool.scales.empty())
    return fail(ErrorCode::InvalidInput, tool.id + ".scale", "", "the tool has no scale",
                "give its range and unit");
  for (const Scale& scale : tool.scales) CW_CHECK(checkScale(tool, scale));
  if (!(tool.deviation > 0 && tool.deviation <= 0.5))
    return fail(ErrorCode::OutOfRange, tool.id + ".deviation", std::to_string(tool.deviation),
                {"a deviation of %1 cannot be", {std::to_string(tool.deviation)}},
                "write a fraction above 0 and up to 0.5");
  return {};
}

}  // namespace cw

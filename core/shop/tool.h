#pragma once
#include <chrono>
#include <optional>
#include <string>
#include <vector>

#include "core/base/result.h"
#include "core/units/stated.h"

namespace cw {

/// ISO 6789-1 types: I indicates a value (dial, beam, electronic), II is set and signals (click, slip).
enum class ToolType { Indicating, Setting };

enum class ToolStatus { InUse, Quarantined, Retired };

/// One marked scale of a tool. A dual-scale tool has two; the bench shows one and names it.
struct Scale {
  StatedTorque low;         ///< lowest marked value
  StatedTorque high;        ///< highest marked value, in the same unit
  StatedTorque graduation;  ///< distance between marks; "0" where the tool is set without a scale
};

/// One point of a calibration, as the certificate states it.
struct CalibrationPoint {
  StatedTorque setting;  ///< what the tool was set to, or read
  StatedTorque found;    ///< torque measured before any adjustment
  StatedTorque left;     ///< torque measured after adjustment; equal to `found` if none was made
};

struct Calibration {
  std::chrono::year_month_day date;
  std::chrono::year_month_day due;
  std::string certificate;  ///< number and laboratory
  double uncertainty = 0;   ///< expanded, as a fraction of reading (0.01 = 1 %), coverage factor 2
  std::vector<CalibrationPoint> points;
};

struct TorqueTool {
  std::string id;    ///< marked on the tool, unique: "T-07"
  std::string kind;  ///< in the shop's words: "click wrench, 3/8 in drive"
  ToolType type = ToolType::Setting;
  std::string isoClass;  ///< letter of ISO 6789-1: "A" … "G"; may be empty
  std::string serial;
  std::vector<Scale> scales;  ///< at least one
  double deviation = 0;       ///< permissible, as a fraction of the setting (0.04 = ±4 %), within (0, 0.5]
  bool leftHand = false;      ///< also calibrated counter-clockwise
  ToolStatus status = ToolStatus::InUse;
  std::optional<std::chrono::year_month_day> dueNow;  ///< dropped or doubted on this day: due at once
  int cyclesDue = 0;                                  ///< due after so many; 0: by date only
  int cycles = 0;                                     ///< since the last calibration
  std::vector<Calibration> calibrations;              ///< oldest first

  const Scale* scaleIn(const TorqueUnit& unit) const;
  const Calibration* lastCalibration() const { return calibrations.empty() ? nullptr : &calibrations.back(); }
  /// The last one made on that day or before; nullptr if there was none.
  const Calibration* calibrationOn(std::chrono::year_month_day day) const;
};

/// Is it a tool that nobody doubts? NotPermitted with the reason: quarantined, retired, dropped.
Result<void> checkUndoubted(const TorqueTool& tool);

/// What a tool is like on a day, before its setting is considered, by the calibration that held on that day.
/// NotPermitted with the reason: those of `checkUndoubted`, not calibrated then, overdue by date or cycles.
Result<void> checkInService(const TorqueTool& tool, std::chrono::year_month_day day);

/// May this setting be made on this tool's scale? OutOfRange with the range if it lies outside it.
Result<void> checkRange(const TorqueTool& tool, const StatedTorque& setting);

/// Every field in its range; InvalidInput or OutOfRange naming the field otherwise.
Result<void> check(const TorqueTool& tool);

/// An adapter ("crowfoot") that changes the lever: `length` from the drive's centre to the fastener's.
struct Adapter {
  std::string id;
  std::string kind;
  StatedLength length;
  StatedAngle angle;  ///< from the wrench's axis: 0° in line, 90° square, 180° toward the handle
};

}  // namespace cw

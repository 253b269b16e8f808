#include "core/fastener/library_rows.h"

namespace cw {
namespace {

/// Both ends of one diameter, or neither.
Result<std::optional<Limits>> optionalLimits(const CsvRecord& record, const LengthUnit& unit,
                                             const std::string& diameter) {
  const std::string least = diameter + "_min", most = diameter + "_max";
  if (record.optionalText(least).empty() && record.optionalText(most).empty()) return std::nullopt;
  CW_TRY(low, record.quantityIn(unit, least));
  CW_TRY(high, record.quantityIn(unit, most));
  if (low >= high)
    return record.refuse(most, "the largest size is not above the smallest", "a larger size",
                         ErrorCode::OutOfRange);
  return Limits{low, high};
}

}  // namespace

Columns columnsOfLimits() {
  return {"thread",    "tolerance_class", "major_min", "major_max", "pitch_min",
          "pitch_max", "minor_min",       "minor_max", "unit"};
}

Result<void> addLimits(Library& library, const CsvRecord& record) {
  CW_TRY(thread, record.text("thread"));
  CW_TRY(toleranceClass, record.text("tolerance_class"));
  CW_TRY(unit, record.threadUnit());
  CW_TRY(major, optionalLimits(record, *unit, "major"));
  CW_TRY(pitch, optionalLimits(record, *unit, "pitch"));
  CW_TRY(minor, optionalLimits(record, *unit, "minor"));
  CW_TRY(provenance, record.provenance());
  if (!pitch) return record.refuse("pitch_min", "the pitch diameter has no limits", "fill them in");
  library.limits.push_back({.thread = thread,
                            .toleranceClass = toleranceClass,
                            .major = major,
                            .pitch = *pitch,
                            .minor = minor,
                            .provenance = std::move(provenance),
                            .note = record.optionalText("note")});
  return {};
}

Cells cellsOf(const SizeLimits& limits) {
  const LengthUnit& unit = limits.thread.starts_with('M') ? kMillimetre : kInch;
  const auto least = [&](const std::optional<Limits>& each) { return each ? stated(each->least, unit) : ""; };
  const auto most = [&](const std::optional<Limits>& each) { return each ? stated(each->most, unit) : ""; };
  Cells cells = {limits.thread,       limits.toleranceClass, least(limits.major),
                 most(limits.major),  least(limits.pitch),   most(limits.pitch),
                 least(limits.minor), most(limits.minor),    std::string(unit.code)};
  appendCommon(cells, limits.provenance, limits.note);
  return cells;
}

}  // namespace cw

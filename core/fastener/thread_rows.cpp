#include "core/fastener/library_rows.h"
#include "core/fastener/profile.h"
#include "core/units/format.h"

namespace cw {
namespace {

struct Pitch {
  Length length;
  ThreadSystem system;
};

Result<Pitch> pitchFrom(const CsvRecord& record, const LengthUnit& unit) {
  const bool metric = &unit == &kMillimetre;
  const std::string_view own = metric ? "pitch" : "threads_per_inch";
  const std::string_view other = metric ? "threads_per_inch" : "pitch";
  if (!record.optionalText(other).empty())
    return record.refuse(other, {"a row in %1 has a value here", {std::string(unit.code)}},
                         {"state the %1 in that row's unit", {std::string(own)}});
  CW_TRY(value, record.number(own));
  if (metric) return Pitch{quantity(value, unit), ThreadSystem::Metric};
  return Pitch{inches(1) / value, ThreadSystem::Unified};
}

}  // namespace

Columns columnsOfThreads() {
  return {"designation", "diameter", "pitch", "threads_per_inch", "stress_area", "unit"};
}

Result<void> addThread(Library& library, const CsvRecord& record) {
  CW_TRY(designation, record.text("designation"));
  CW_TRY(unit, record.unit<LengthTag>("unit"));
  if (unit != &kMillimetre && unit != &kInch)
    return record.refuse("unit", "threads are stated in mm or in", "write mm or in");
  CW_TRY(size, record.number("diameter"));
  CW_TRY(pitch, pitchFrom(record, *unit));
  CW_TRY(area, record.optionalNumber("stress_area"));
  CW_TRY(provenance, record.provenance());

  const Length diameter = quantity(size, *unit);
  if (diameter < 1.3 * pitch.length)
    return record.refuse("diameter", "the pitch is too coarse for this diameter",
                         "a diameter of at least 1.3 times the pitch", ErrorCode::OutOfRange);
  const Area byFormula = stressAreaByFormula(pitch.system, diameter, pitch.length);
  const Area stated = area ? *area * (quantity(1, *unit) * quantity(1, *unit)) : byFormula;
  if (stated < 0.95 * byFormula || stated > 1.05 * byFormula)
    return record.refuse("stress_area", "the stress area does not belong to this diameter and pitch",
                         "within 5 % of the formula's", ErrorCode::OutOfRange);
  library.threads.push_back({.designation = designation,
                             .system = pitch.system,
                             .hand = Hand::Right,
                             .diameter = diameter,
                             .pitch = pitch.length,
                             .pitchDiameter = pitchDiameter(diameter, pitch.length),
                             .minorDiameter = minorDiameter(diameter, pitch.length),
                             .rootDiameter = rootDiameter(pitch.system, diameter, pitch.length),
                             .stressArea = stated,
                             .stressAreaTabulated = area.has_value(),
                             .provenance = std::move(provenance),
                             .note = record.optionalText("note")});
  return {};
}

Cells cellsOf(const Thread& thread) {
  const bool metric = thread.system == ThreadSystem::Metric;
  const LengthUnit& unit = metric ? kMillimetre : kInch;
  const AreaUnit& areaUnit = metric ? kSquareMillimetre : kSquareInch;
  Cells cells = {thread.designation,
                 stated(thread.diameter, unit),
                 metric ? stated(thread.pitch, unit) : "",
                 metric ? "" : significant(inches(1) / thread.pitch, 12),
                 thread.stressAreaTabulated ? stated(thread.stressArea, areaUnit) : "",
                 std::string(unit.code)};
  appendCommon(cells, thread.provenance, thread.note);
  return cells;
}

}  // namespace cw

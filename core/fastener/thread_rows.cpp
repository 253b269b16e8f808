#include "core/fastener/library_rows.h"
#include "core/fastener/profile.h"

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
  if (!area) provenance.source += "; stress area by formula";
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

}  // namespace cw

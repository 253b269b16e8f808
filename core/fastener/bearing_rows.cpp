#include "core/fastener/library_rows.h"

namespace cw {
namespace {

/// Share of the width across flats that bears: the washer face is the flats less up to 10 % (ASME B18.2.1,
/// from memory), its middle is taken.
constexpr double kWasherFaceOfFlats = 0.95;

ThreadSystem systemOf(const LengthUnit& unit) {
  return &unit == &kMillimetre ? ThreadSystem::Metric : ThreadSystem::Unified;
}

const LengthUnit& unitOf(ThreadSystem system) {
  return system == ThreadSystem::Metric ? kMillimetre : kInch;
}

}  // namespace

Columns columnsOfHeads() {
  return {"kind", "diameter", "across_flats", "bearing_diameter", "unit"};
}

Result<void> addHead(Library& library, const CsvRecord& record) {
  CW_TRY(kind, record.text("kind"));
  CW_TRY(unit, record.threadUnit());
  CW_TRY(diameter, record.quantityIn(*unit, "diameter"));
  CW_TRY(flats, record.optionalQuantityIn(*unit, "across_flats"));
  CW_TRY(bearing, record.optionalQuantityIn(*unit, "bearing_diameter"));
  CW_TRY(provenance, record.provenance());
  if (!flats && !bearing)
    return record.refuse("bearing_diameter", "neither the bearing diameter nor the flats are stated",
                         "fill in one of them");
  const Length outer = bearing ? *bearing : kWasherFaceOfFlats * *flats;
  if (outer <= diameter)
    return record.refuse("bearing_diameter", "the bearing face is not larger than the thread",
                         "a bearing diameter above the thread's", ErrorCode::OutOfRange);
  library.heads.push_back({.kind = kind,
                           .system = systemOf(*unit),
                           .diameter = diameter,
                           .acrossFlats = flats,
                           .bearing = outer,
                           .provenance = std::move(provenance),
                           .note = record.optionalText("note")});
  return {};
}

Cells cellsOf(const Head& head) {
  const LengthUnit& unit = unitOf(head.system);
  Cells cells = {head.kind, stated(head.diameter, unit), stated(head.acrossFlats, unit),
                 stated(head.bearing, unit), std::string(unit.code)};
  appendCommon(cells, head.provenance, head.note);
  return cells;
}

Columns columnsOfHoles() {
  return {"diameter", "close", "normal", "loose", "unit"};
}

Result<void> addHole(Library& library, const CsvRecord& record) {
  CW_TRY(unit, record.threadUnit());
  CW_TRY(diameter, record.quantityIn(*unit, "diameter"));
  CW_TRY(close, record.optionalQuantityIn(*unit, "close"));
  CW_TRY(normal, record.quantityIn(*unit, "normal"));
  CW_TRY(loose, record.optionalQuantityIn(*unit, "loose"));
  CW_TRY(provenance, record.provenance());
  if (close.value_or(normal) <= diameter || close.value_or(normal) > normal ||
      loose.value_or(normal) < normal)
    return record.refuse("normal", "the holes do not grow from the bolt's diameter on",
                         "diameter < close < normal < loose", ErrorCode::OutOfRange);
  library.holes.push_back({.system = systemOf(*unit),
                           .diameter = diameter,
                           .close = close,
                           .normal = normal,
                           .loose = loose,
                           .provenance = std::move(provenance),
                           .note = record.optionalText("note")});
  return {};
}

Cells cellsOf(const ClearanceHole& hole) {
  const LengthUnit& unit = unitOf(hole.system);
  Cells cells = {stated(hole.diameter, unit), stated(hole.close, unit), stated(hole.normal, unit),
                 stated(hole.loose, unit), std::string(unit.code)};
  appendCommon(cells, hole.provenance, hole.note);
  return cells;
}

}  // namespace cw

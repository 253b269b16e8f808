#include "core/fastener/library_rows.h"

namespace cw {

Columns columnsOfPrevailingTorques() {
  return {"thread", "fastener", "minimum", "unit"};
}

Result<void> addPrevailingTorque(Library& library, const CsvRecord& record) {
  CW_TRY(thread, record.text("thread"));
  CW_TRY(fastener, record.text("fastener"));
  CW_TRY(unit, record.unit<TorqueTag>("unit"));
  CW_CHECK(record.number("minimum"));
  CW_TRY(digits, record.text("minimum"));
  CW_TRY(provenance, record.provenance());
  library.prevailingTorques.push_back({.thread = thread,
                                       .fastener = fastener,
                                       .minimum = {digits, unit},
                                       .provenance = std::move(provenance),
                                       .note = record.optionalText("note")});
  return {};
}

Cells cellsOf(const PrevailingTorque& torque) {
  Cells cells = {torque.thread, torque.fastener, torque.minimum.digits,
                 std::string(torque.minimum.unit->code)};
  appendCommon(cells, torque.provenance, torque.note);
  return cells;
}

Columns columnsOfToolClasses() {
  return {"type", "class", "description", "deviation_to_10_Nm", "deviation_above_10_Nm", "unit"};
}

Result<void> addToolClass(Library& library, const CsvRecord& record) {
  CW_TRY(type, record.text("type"));
  CW_TRY(letter, record.text("class"));
  CW_TRY(description, record.text("description"));
  CW_TRY(unit, record.text("unit"));
  if (unit != "%") return record.refuse("unit", "deviations are stated in per cent", "write %");
  CW_TRY(below, record.number("deviation_to_10_Nm"));
  CW_TRY(above, record.number("deviation_above_10_Nm"));
  CW_TRY(provenance, record.provenance());
  if (type != "I" && type != "II")
    return record.refuse("type", "the type is not one of ISO 6789-1", "write I (indicates) or II (is set)");
  library.toolClasses.push_back({.type = type,
                                 .letter = letter,
                                 .description = description,
                                 .upToTenNewtonMetres = below / 100,
                                 .aboveTenNewtonMetres = above / 100,
                                 .provenance = std::move(provenance),
                                 .note = record.optionalText("note")});
  return {};
}

Cells cellsOf(const ToolClass& tool) {
  Cells cells = {tool.type,
                 tool.letter,
                 tool.description,
                 significant(tool.upToTenNewtonMetres * 100, 12),
                 significant(tool.aboveTenNewtonMetres * 100, 12),
                 "%"};
  appendCommon(cells, tool.provenance, tool.note);
  return cells;
}

}  // namespace cw

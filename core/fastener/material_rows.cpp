#include "core/fastener/library_rows.h"

namespace cw {

Columns columnsOfMaterials() {
  return {"name", "aliases", "family", "shear_strength", "modulus", "caution", "unit"};
}

Result<void> addMaterial(Library& library, const CsvRecord& record) {
  CW_TRY(name, record.text("name"));
  CW_TRY(family, record.text("family"));
  CW_TRY(unit, record.unit<StressTag>("unit"));
  CW_TRY(shear, record.quantityIn(*unit, "shear_strength"));
  CW_TRY(modulus, record.quantityIn(*unit, "modulus"));
  CW_TRY(provenance, record.provenance());
  if (modulus < 5 * shear)
    return record.refuse("modulus", "the modulus is too small for this strength",
                         "Young's modulus, in the same unit as the strength", ErrorCode::OutOfRange);
  if (family == "plastic" && record.optionalText("caution").empty())
    return record.refuse("caution", "a plastic has no caution", "say why its thread cannot be relied on");
  library.materials.push_back({.name = name,
                               .family = family,
                               .shearStrength = shear,
                               .modulus = modulus,
                               .caution = record.optionalText("caution"),
                               .provenance = std::move(provenance),
                               .aliases = record.words("aliases"),
                               .note = record.optionalText("note")});
  return {};
}

Cells cellsOf(const TappedMaterial& material) {
  Cells cells = {material.name,
                 joinedWords(material.aliases),
                 material.family,
                 stated(material.shearStrength, kMegapascal),
                 stated(material.modulus, kMegapascal),
                 material.caution,
                 std::string(kMegapascal.code)};
  appendCommon(cells, material.provenance, material.note);
  return cells;
}

}  // namespace cw

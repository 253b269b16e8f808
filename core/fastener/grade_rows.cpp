#include "core/fastener/library_rows.h"

namespace cw {
namespace {

Result<std::optional<ThreadSystem>> systemFrom(const CsvRecord& record) {
  CW_TRY(word, record.text("threads"));
  if (word == "metric") return ThreadSystem::Metric;
  if (word == "unified") return ThreadSystem::Unified;
  if (word == "both") return std::nullopt;
  return record.refuse("threads", {"“%1” is no thread system", {shown(word)}},
                       "write metric, unified or both");
}

std::string_view wordFor(const std::optional<ThreadSystem>& system) {
  if (!system) return "both";
  return *system == ThreadSystem::Metric ? "metric" : "unified";
}

bool sameSystem(const LengthUnit& size, const StressUnit& stress) {
  const bool inchStress = &stress == &kKsi || &stress == &kPsi;
  return (&size == &kInch) == inchStress;
}

Result<void> checkOrder(const CsvRecord& record, const Grade& grade) {
  const auto outOfOrder = [&](std::string_view column, Message problem, Message expected) {
    return record.refuse(column, std::move(problem), std::move(expected), ErrorCode::OutOfRange);
  };
  if (grade.from >= grade.upTo)
    return outOfOrder("size_up_to", "the largest size is not above the smallest", "a larger size");
  if (grade.yield > grade.tensile)
    return outOfOrder("yield", "the yield is above the tensile strength", "yield at most tensile");
  if (grade.proof && *grade.proof > grade.yield)
    return outOfOrder("proof", "the proof stress is above the yield", "proof at most yield");
  return {};
}

}  // namespace

Columns columnsOfGrades() {
  return {"name",      "aliases", "threads", "size_from", "size_up_to",
          "size_unit", "proof",   "yield",   "tensile",   "stress_unit"};
}

Result<void> addGrade(Library& library, const CsvRecord& record) {
  CW_TRY(name, record.text("name"));
  CW_TRY(system, systemFrom(record));
  CW_TRY(sizeUnit, record.unit<LengthTag>("size_unit"));
  CW_TRY(stressUnit, record.unit<StressTag>("stress_unit"));
  if (!sameSystem(*sizeUnit, *stressUnit))
    return record.refuse("stress_unit",
                         {"%1 beside sizes in %2 mixes two systems of units",
                          {std::string(stressUnit->code), std::string(sizeUnit->code)}},
                         "mm with MPa, or in with ksi or psi");
  CW_TRY(from, record.optionalNumber("size_from"));
  CW_TRY(upTo, record.number("size_up_to"));
  CW_TRY(proof, record.optionalNumber("proof"));
  CW_TRY(yield, record.number("yield"));
  CW_TRY(tensile, record.number("tensile"));
  CW_TRY(provenance, record.provenance());

  Grade grade{.name = name,
              .from = quantity(from.value_or(0), *sizeUnit),
              .upTo = quantity(upTo, *sizeUnit),
              .proof = {},
              .yield = quantity(yield, *stressUnit),
              .tensile = quantity(tensile, *stressUnit),
              .system = system,
              .provenance = std::move(provenance),
              .aliases = record.words("aliases"),
              .note = record.optionalText("note"),
              .sizeUnit = sizeUnit,
              .stressUnit = stressUnit};
  if (proof) grade.proof = quantity(*proof, *stressUnit);
  CW_CHECK(checkOrder(record, grade));
  library.grades.push_back(std::move(grade));
  return {};
}

Cells cellsOf(const Grade& grade) {
  const LengthUnit& size = *grade.sizeUnit;
  const StressUnit& stress = *grade.stressUnit;
  Cells cells = {grade.name,
                 joinedWords(grade.aliases),
                 std::string(wordFor(grade.system)),
                 grade.from.si() > 0 ? stated(grade.from, size) : "",
                 stated(grade.upTo, size),
                 std::string(size.code),
                 grade.proof ? stated(*grade.proof, stress) : "",
                 stated(grade.yield, stress),
                 stated(grade.tensile, stress),
                 std::string(stress.code)};
  appendCommon(cells, grade.provenance, grade.note);
  return cells;
}

}  // namespace cw

#include "core/fastener/library_rows.h"
#include "core/units/format.h"

namespace cw {
namespace {

struct Factor {
  std::string_view column;
  std::optional<Range> Condition::*member;
  double largest;
};

constexpr Factor kFactors[] = {{"nut_factor", &Condition::nutFactor, 1.0},
                               {"thread_friction", &Condition::threadFriction, 0.5},
                               {"bearing_friction", &Condition::bearingFriction, 0.5}};

/// All three of low, typical and high, or none.
Result<std::optional<Range>> rangeFrom(const CsvRecord& record, const Factor& factor) {
  const std::string name(factor.column);
  const auto blank = [&](const char* end) { return record.optionalText(name + end).empty(); };
  if (blank("_low") && blank("_typical") && blank("_high")) return std::nullopt;
  CW_TRY(low, record.number(name + "_low"));
  CW_TRY(typical, record.number(name + "_typical"));
  CW_TRY(high, record.number(name + "_high"));
  if (low > typical || typical > high)
    return record.refuse(name + "_typical", "low, typical and high are not in rising order",
                         "low ≤ typical ≤ high", ErrorCode::OutOfRange);
  if (high > factor.largest)
    return record.refuse(name + "_high", {"“%1” is more than there is", {shown(significant(high, 6))}},
                         {"at most %1", {significant(factor.largest, 2)}}, ErrorCode::OutOfRange);
  return Range{low, typical, high};
}

}  // namespace

Columns columnsOfConditions() {
  return {"name",
          "aliases",
          "label",
          "nut_factor_low",
          "nut_factor_typical",
          "nut_factor_high",
          "thread_friction_low",
          "thread_friction_typical",
          "thread_friction_high",
          "bearing_friction_low",
          "bearing_friction_typical",
          "bearing_friction_high"};
}

Result<void> addCondition(Library& library, const CsvRecord& record) {
  Condition condition;
  CW_TRY(name, record.text("name"));
  CW_TRY(label, record.text("label"));
  for (const Factor& factor : kFactors) {
    CW_TRY(range, rangeFrom(record, factor));
    condition.*factor.member = range;
  }
  if (!condition.nutFactor && !condition.threadFriction)
    return record.refuse("nut_factor_typical", "the condition has neither nut factor nor thread friction",
                         "fill in one of them");
  if (condition.threadFriction.has_value() != condition.bearingFriction.has_value())
    return record.refuse("bearing_friction_typical", "friction is stated for only one of thread and bearing",
                         "state both or neither");
  CW_TRY(provenance, record.provenance());
  condition.name = name;
  condition.label = label;
  condition.provenance = std::move(provenance);
  condition.aliases = record.words("aliases");
  condition.note = record.optionalText("note");
  library.conditions.push_back(std::move(condition));
  return {};
}

Cells cellsOf(const Condition& condition) {
  Cells cells = {condition.name, joinedWords(condition.aliases), condition.label};
  for (const Factor& factor : kFactors) {
    const auto& range = condition.*factor.member;
    for (const auto end : {&Range::low, &Range::typical, &Range::high})
      cells.push_back(range ? significant((*range).*end, 12) : std::string());
  }
  appendCommon(cells, condition.provenance, condition.note);
  return cells;
}

}  // namespace cw

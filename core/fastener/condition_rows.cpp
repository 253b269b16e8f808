#include <algorithm>

#include "core/fastener/library_rows.h"

namespace cw {
namespace {

struct Factor {
  std::string_view quantity;
  std::optional<Range> Condition::*member;
  double largest;
};

constexpr Factor kFactors[] = {{"nut factor", &Condition::nutFactor, 1.0},
                               {"thread friction", &Condition::threadFriction, 0.5},
                               {"bearing friction", &Condition::bearingFriction, 0.5}};

Result<const Factor*> factorFrom(const CsvRecord& record) {
  CW_TRY(quantity, record.text("quantity"));
  for (const Factor& factor : kFactors)
    if (factor.quantity == quantity) return &factor;
  return record.refuse("quantity", {"“%1” is no quantity of a condition", {shown(quantity)}},
                       "write nut factor, thread friction or bearing friction");
}

Result<Range> rangeFrom(const CsvRecord& record, const Factor& factor) {
  CW_TRY(low, record.number("low"));
  CW_TRY(typical, record.number("typical"));
  CW_TRY(high, record.number("high"));
  if (low > typical || typical > high)
    return record.refuse("typical", "low, typical and high are not in rising order", "low ≤ typical ≤ high",
                         ErrorCode::OutOfRange);
  if (high > factor.largest)
    return record.refuse("high", {"a %1 does not reach that", {std::string(factor.quantity)}},
                         {"at most %1", {factor.largest == 1.0 ? "1" : "0.5"}}, ErrorCode::OutOfRange);
  return Range{low, typical, high};
}

Provenance joined(Provenance a, const Provenance& b) {
  if (a.source.find(b.source) == std::string::npos) a.source += "; " + b.source;
  a.seen = a.seen && b.seen;
  return a;
}

}  // namespace

Result<void> addCondition(Library& library, const CsvRecord& record) {
  CW_TRY(name, record.text("name"));
  CW_TRY(label, record.text("label"));
  CW_TRY(factor, factorFrom(record));
  CW_TRY(range, rangeFrom(record, *factor));
  CW_TRY(provenance, record.provenance());
  provenance.source = std::string(factor->quantity) + ": " + provenance.source;

  const auto known = std::find_if(library.conditions.begin(), library.conditions.end(),
                                  [&](const Condition& each) { return each.name == name; });
  if (known == library.conditions.end()) {
    Condition fresh{.name = name,
                    .label = label,
                    .nutFactor = {},
                    .threadFriction = {},
                    .bearingFriction = {},
                    .provenance = std::move(provenance),
                    .aliases = record.words("aliases"),
                    .note = record.optionalText("note")};
    fresh.*factor->member = range;
    library.conditions.push_back(std::move(fresh));
    return {};
  }
  if (known->label != label)
    return record.refuse("label", "an earlier row of this condition has another label", "the same label");
  if ((*known).*factor->member)
    return record.refuse("quantity", {"the %1 of “%2” is there twice", {std::string(factor->quantity), name}},
                         "one row for each quantity");
  (*known).*factor->member = range;
  known->provenance = joined(known->provenance, provenance);
  return {};
}

}  // namespace cw

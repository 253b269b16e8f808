#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/csv.h"
#include "core/fastener/thread.h"
#include "core/units/format.h"
#include "core/units/parse.h"

namespace cw {

/// One row of a table, read by column name. Every refusal names the line and the column.
class CsvRecord {
 public:
  CsvRecord(const Csv& table, const CsvRow& row) : m_table(table), m_row(row) {}

  /// The cell; InvalidInput if it is blank.
  Result<std::string> text(std::string_view column) const;
  /// The cell, perhaps empty; empty too if the table has no such column.
  const std::string& optionalText(std::string_view column) const;
  /// The cell split at semicolons.
  std::vector<std::string> words(std::string_view column) const;
  /// A number above zero. InvalidInput for anything but plain digits: a unit belongs into its own column.
  Result<double> number(std::string_view column) const;
  Result<std::optional<double>> optionalNumber(std::string_view column) const;
  /// A number in that unit, as a quantity above zero.
  template <class Tag>
  Result<Quantity<Tag>> quantityIn(const Unit<Tag>& unit, std::string_view column) const;
  template <class Tag>
  Result<std::optional<Quantity<Tag>>> optionalQuantityIn(const Unit<Tag>& unit,
                                                          std::string_view column) const;
  /// The unit whose code the cell holds.
  template <class Tag>
  Result<const Unit<Tag>*> unit(std::string_view column) const;
  /// mm or in, from the column `unit`.
  Result<const LengthUnit*> threadUnit() const;
  /// Columns `source`, `known` ("seen" or "memory") and `author`.
  Result<Provenance> provenance() const;
  /// "line 12".
  std::string place() const;
  /// An error about one cell of this row.
  tl::unexpected<Error> refuse(std::string_view column, Message problem, Message expected,
                               ErrorCode code = ErrorCode::InvalidInput) const;

 private:
  const Csv& m_table;
  const CsvRow& m_row;
};

template <class Tag>
Result<const Unit<Tag>*> CsvRecord::unit(std::string_view column) const {
  CW_TRY(code, text(column));
  if (const Unit<Tag>* found = unitWithCode<Tag>(code)) return found;
  std::string known;
  for (const Unit<Tag>* each : unitsOf<Tag>()) known += (known.empty() ? "" : ", ") + std::string(each->code);
  return refuse(column, {"“%1” is no unit here", {shown(code)}}, {"write one of %1", {known}});
}

template <class Tag>
Result<Quantity<Tag>> CsvRecord::quantityIn(const Unit<Tag>& unit, std::string_view column) const {
  CW_TRY(value, number(column));
  return quantity(value, unit);
}

template <class Tag>
Result<std::optional<Quantity<Tag>>> CsvRecord::optionalQuantityIn(const Unit<Tag>& unit,
                                                                   std::string_view column) const {
  CW_TRY(value, optionalNumber(column));
  return value ? std::optional(quantity(*value, unit)) : std::nullopt;
}

// The same cells the other way round.

/// A value in a unit, to twelve significant digits: what `number` reads back as the same value.
template <class Tag>
std::string stated(Quantity<Tag> value, const Unit<Tag>& unit) {
  return significant(in(unit, value), 12);
}
template <class Tag>
std::string stated(const std::optional<Quantity<Tag>>& value, const Unit<Tag>& unit) {
  return value ? stated(*value, unit) : std::string();
}
/// Words with "; " between them.
std::string joinedWords(const std::vector<std::string>& words);
/// Appends the cells of `known`, `source`, `author` and `note`.
void appendCommon(std::vector<std::string>& cells, const Provenance& provenance, const std::string& note);

}  // namespace cw

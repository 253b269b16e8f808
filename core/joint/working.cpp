#include "core/joint/working.h"

#include <algorithm>

namespace cw {
namespace {

std::string withUnit(const std::string& value, const std::string& unit) {
  return unit.empty() ? value : value + " " + unit;
}

template <class Row>
void addOnce(std::vector<Row>& rows, const Row& row) {
  const bool known =
      std::any_of(rows.begin(), rows.end(), [&](const Row& r) { return r.symbol == row.symbol; });
  if (!known) rows.push_back(row);
}

}  // namespace

Working& Working::give(std::string symbol, Message meaning, double value, std::string source) {
  given.push_back(
      {std::move(symbol), std::move(meaning), significant(value, kDigits), "", std::move(source)});
  return *this;
}

Working& Working::step(std::string symbol, std::string rightSide, double value) {
  steps.push_back({std::move(symbol), std::move(rightSide), significant(value, kDigits), ""});
  return *this;
}

Working& Working::include(const Working& other) {
  for (const Given& row : other.given) addOnce(given, row);
  for (const Step& row : other.steps) addOnce(steps, row);
  for (const Message& row : other.validity)
    if (std::find(validity.begin(), validity.end(), row) == validity.end()) validity.push_back(row);
  for (const std::string& row : other.sources)
    if (std::find(sources.begin(), sources.end(), row) == sources.end()) sources.push_back(row);
  for (const Message& row : other.cautions)
    if (std::find(cautions.begin(), cautions.end(), row) == cautions.end()) cautions.push_back(row);
  return *this;
}

std::vector<std::string> lines(const Working& working) {
  std::vector<std::string> out{working.formula};
  for (const auto& row : working.given)
    out.push_back(row.symbol + " = " + withUnit(row.value, row.unit) + "  " + plain(row.meaning) +
                  (row.source.empty() ? "" : " [" + row.source + "]"));
  for (const auto& row : working.steps)
    out.push_back(row.symbol + " = " + row.formula + " = " + withUnit(row.value, row.unit));
  for (const auto& row : working.validity) out.push_back("holds: " + plain(row));
  for (const auto& row : working.sources) out.push_back("source: " + row);
  for (const auto& row : working.cautions) out.push_back("caution: " + plain(row));
  return out;
}

}  // namespace cw

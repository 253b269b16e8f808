#include "core/fastener/csv_record.h"

#include <fmt/format.h>

#include <algorithm>

namespace cw {
namespace {

std::string trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(' ');
  if (first == std::string_view::npos) return {};
  return std::string(text.substr(first, text.find_last_not_of(' ') - first + 1));
}

bool endsWithLetters(const std::string& cell) {
  const unsigned char last = cell.empty() ? '0' : static_cast<unsigned char>(cell.back());
  const bool startsAsNumber = !cell.empty() && cell.front() >= '0' && cell.front() <= '9';
  return startsAsNumber && (last > 0x7f || (last | 0x20) >= 'a');
}

}  // namespace

std::string CsvRecord::place() const {
  return fmt::format("line {}", m_row.line);
}

tl::unexpected<Error> CsvRecord::refuse(std::string_view column, Message problem, Message expected,
                                        ErrorCode code) const {
  return fail(code, fmt::format("{}, {}", place(), column), optionalText(column), std::move(problem),
              std::move(expected));
}

const std::string& CsvRecord::optionalText(std::string_view column) const {
  static const std::string kNone;
  const auto name = std::find(m_table.header.begin(), m_table.header.end(), column);
  return name == m_table.header.end() ? kNone
                                      : m_row.cells[static_cast<std::size_t>(name - m_table.header.begin())];
}

Result<std::string> CsvRecord::text(std::string_view column) const {
  std::string cell = trimmed(optionalText(column));
  if (cell.empty()) return refuse(column, "the cell is empty", {"fill in the %1", {std::string(column)}});
  return cell;
}

std::vector<std::string> CsvRecord::words(std::string_view column) const {
  std::vector<std::string> out;
  std::string_view rest = optionalText(column);
  while (!rest.empty()) {
    const std::size_t end = std::min(rest.find(';'), rest.size());
    if (std::string word = trimmed(rest.substr(0, end)); !word.empty()) out.push_back(std::move(word));
    rest.remove_prefix(std::min(end + 1, rest.size()));
  }
  return out;
}

Result<double> CsvRecord::number(std::string_view column) const {
  CW_TRY(cell, text(column));
  const auto digits = parseNumber(cell, DecimalMark::Point, true);
  if (!digits && endsWithLetters(cell))
    return refuse(column, {"“%1” carries its own unit", {shown(cell)}},
                  "write the number alone; the unit column holds for the whole row");
  if (!digits) return refuse(column, digits.error().problem, digits.error().expected);
  const double value = numberOf(*digits);
  if (value <= 0)
    return refuse(column, {"“%1” is not above zero", {shown(cell)}}, "write a value above zero",
                  ErrorCode::OutOfRange);
  return value;
}

Result<std::optional<double>> CsvRecord::optionalNumber(std::string_view column) const {
  if (trimmed(optionalText(column)).empty()) return std::nullopt;
  CW_TRY(value, number(column));
  return value;
}

Result<Provenance> CsvRecord::provenance() const {
  CW_TRY(source, text("source"));
  CW_TRY(known, text("known"));
  if (known != "seen" && known != "memory")
    return refuse("known", {"“%1” does not say how the value is known", {shown(known)}},
                  "write seen (read in the source) or memory");
  return Provenance{source, known == "seen", optionalText("author")};
}

Result<const LengthUnit*> CsvRecord::threadUnit() const {
  CW_TRY(found, unit<LengthTag>("unit"));
  if (found != &kMillimetre && found != &kInch)
    return refuse("unit", "threads and their parts are stated in mm or in", "write mm or in");
  return found;
}

std::string joinedWords(const std::vector<std::string>& words) {
  return fmt::format("{}", fmt::join(words, "; "));
}

void appendCommon(std::vector<std::string>& cells, const Provenance& provenance, const std::string& note) {
  cells.insert(cells.end(),
               {provenance.seen ? "seen" : "memory", provenance.source, provenance.author, note});
}

}  // namespace cw

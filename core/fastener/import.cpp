#include "core/fastener/import.h"

#include <algorithm>

#include "core/fastener/folded_name.h"
#include "core/fastener/tables_reader.h"

namespace cw {
namespace {

/// What a spreadsheet computes instead of showing it; a number with its sign is none.
bool looksLikeFormula(const std::string& cell) {
  constexpr std::string_view kBeginnings = "=+-@";
  return !cell.empty() && kBeginnings.find(cell.front()) != std::string_view::npos &&
         !parseNumber(cell, DecimalMark::Point, true);
}

bool hasControlCharacter(const std::string& cell) {
  return std::any_of(cell.begin(), cell.end(), [](char c) { return static_cast<unsigned char>(c) < ' '; });
}

/// One table on its way in.
class Import {
 public:
  Import(const Catalogue& shipped, const Csv& csv, RowKind kind, ImportRehearsal& into)
      : m_shipped(shipped), m_csv(csv), m_kind(kind), m_into(into) {
    for (const RowKind each : {RowKind::Thread, kind})
      for (std::size_t row = 0; row < countOf(m_into.library, each); ++row)
        static_cast<void>(m_index.add(m_into.library, each, row));  // they fitted when they came
    for (const std::string& column : columnsOf(kind))
      m_order.push_back(static_cast<std::size_t>(std::find(csv.header.begin(), csv.header.end(), column) -
                                                 csv.header.begin()));
  }

  void take(const CsvRow& row) {
    const CsvRecord record(m_csv, row);
    if (const auto fits = fitIn(row.cells, record); !fits) {
      m_into.refused.push_back(fits.error());
      return;
    }
    std::vector<std::string> cells;
    for (const std::size_t column : m_order) cells.push_back(row.cells[column]);
    m_into.taken.push_back({row.line, csvLine(cells)});
  }

 private:
  Result<void> fitIn(const std::vector<std::string>& cells, const CsvRecord& record) {
    CW_CHECK(checkCells(cells, record));
    CW_CHECK(record.text("author"));
    CW_CHECK(checkThread(record));
    CW_CHECK(addRow(m_into.library, m_kind, record));
    const std::size_t row = countOf(m_into.library, m_kind) - 1;
    auto fits = checkNew(row);
    if (fits) fits = m_index.add(m_into.library, m_kind, row);
    if (fits) return {};
    dropLast(m_into.library, m_kind);
    // The name stands in the first column.
    return record.refuse(columnsOf(m_kind).front(), fits.error().problem, fits.error().expected,
                         fits.error().code);
  }

  Result<void> checkCells(const std::vector<std::string>& cells, const CsvRecord& record) const {
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (hasControlCharacter(cells[i]))
        return record.refuse(m_csv.header[i],
                             {"“%1” holds a line end or a control character", {shown(cells[i])}},
                             "write the cell on one line");
      if (looksLikeFormula(cells[i]))
        return record.refuse(m_csv.header[i], {"“%1” is a formula to a spreadsheet", {shown(cells[i])}},
                             "begin the cell with a letter or a figure");
    }
    return {};
  }

  Result<void> checkThread(const CsvRecord& record) const {
    const std::string& thread = record.optionalText("thread");
    if (thread.empty() || !m_index.find(RowKind::Thread, foldedThread(thread).key).empty()) return {};
    const auto known = m_shipped.thread(thread);
    if (known) return {};
    return record.refuse("thread", known.error().problem, known.error().expected);
  }

  Result<void> checkNew(std::size_t row) const {
    for (const std::string& key : keysOf(m_into.library, m_kind, row))
      if (m_shipped.answers(m_kind, key))
        return fail(ErrorCode::Conflict, "", key,
                    {"the library that came with the program already has “%1”", {shown(key)}},
                    "add it under another name");
    return {};
  }

  const Catalogue& m_shipped;
  const Csv& m_csv;
  RowKind m_kind;
  ImportRehearsal& m_into;
  RowIndex m_index;
  std::vector<std::size_t> m_order;  ///< where each of the kind's columns stands in this file
};

std::size_t lineOf(const Error& error) {
  const std::size_t number = error.place.find_first_of("0123456789");
  return number == std::string::npos ? 0 : std::stoul(error.place.substr(number));
}

}  // namespace

ImportRehearsal rehearseImport(const Catalogue& shipped, std::string_view text, Library own) {
  ImportRehearsal out;
  out.library = std::move(own);
  auto reading = readCsv(text);
  const auto kind = reading ? kindOf(reading->table) : Result<RowKind>(fail(reading.error()));
  if (!kind) {
    out.refused.push_back(kind.error());
    return out;
  }
  out.kind = *kind;
  out.rows = reading->table.rows.size() + reading->refused.size();
  out.refused = std::move(reading->refused);
  Import import(shipped, reading->table, *kind, out);
  for (const CsvRow& row : reading->table.rows) import.take(row);
  std::stable_sort(out.refused.begin(), out.refused.end(),
                   [](const Error& a, const Error& b) { return lineOf(a) < lineOf(b); });
  return out;
}

Result<Catalogue> imported(const Catalogue& shipped, const ImportRehearsal& rehearsal) {
  if (rehearsal.clean()) return shipped.with(rehearsal.library);
  return fail(rehearsal.refused.front());
}

}  // namespace cw

#include "core/base/csv.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "core/base/utf8.h"

namespace cw {
namespace {

std::string lineName(std::size_t line) {
  return fmt::format("line {}", line);
}

/// Walks over the text once; every function leaves the position behind what it read.
class CsvReader {
 public:
  explicit CsvReader(std::string_view text) : m_text(text) {}

  bool atEnd() const { return m_at == m_text.size(); }
  std::size_t at() const { return m_at; }

  /// To the next line, from wherever reading stopped.
  void skipLine() {
    while (!atEnd() && peek() != '\n') ++m_at;
    if (!skip('\n')) return;
    ++m_line;
  }

  void skipPreamble() {
    while (!atEnd() && (peek() == '#' || peek() == '\n' || peek() == '\r')) {
      while (!atEnd() && peek() != '\n') ++m_at;
      if (!atEnd()) ++m_at;
      ++m_line;
    }
  }

  Result<CsvRow> row() {
    CsvRow row{m_line, {}};
    do {
      CW_TRY(cell, this->cell());
      row.cells.push_back(std::move(cell));
    } while (skip(','));
    CW_CHECK(lineEnd());
    return row;
  }

 private:
  char peek() const { return m_text[m_at]; }

  bool skip(char wanted) {
    if (atEnd() || peek() != wanted) return false;
    ++m_at;
    return true;
  }

  Result<std::string> cell() { return skip('"') ? quotedCell() : plainCell(); }

  Result<std::string> plainCell() {
    const std::size_t end = std::min(m_text.find_first_of(",\"\r\n", m_at), m_text.size());
    std::string out(m_text.substr(m_at, end - m_at));
    m_at = end;
    if (!atEnd() && peek() == '"')
      return fail(ErrorCode::InvalidInput, lineName(m_line), out, "a quote stands inside an unquoted cell",
                  "quote the whole cell and double the quotes inside it");
    return out;
  }

  Result<std::string> quotedCell() {
    const std::size_t startLine = m_line;
    std::string out;
    for (; !atEnd(); ++m_at) {
      if (peek() == '"') {
        ++m_at;
        if (atEnd() || peek() != '"') return out;
      } else if (peek() == '\n') {
        ++m_line;
      }
      out += peek();
    }
    return fail(ErrorCode::InvalidInput, lineName(startLine), out, "a quote is opened and never closed",
                "close the quoted cell");
  }

  Result<void> lineEnd() {
    if (atEnd()) return {};
    const bool carriage = skip('\r');
    if (!skip('\n')) {
      if (!carriage)
        return fail(ErrorCode::InvalidInput, lineName(m_line), m_text.substr(m_at, 10),
                    "text follows a closed quote", "put a comma or a line end after it");
      if (!atEnd())
        return fail(ErrorCode::InvalidInput, lineName(m_line), "", "a carriage return stands alone",
                    "end lines with LF or CRLF");
    }
    ++m_line;
    return {};
  }

  std::string_view m_text;
  std::size_t m_at = 0;
  std::size_t m_line = 1;
};

/// `firstLine`: the number of the line that the text begins with.
Result<void> checkBytes(std::string_view text, std::size_t firstLine) {
  const auto lineOf = [&](std::size_t at) {
    return lineName(firstLine + static_cast<std::size_t>(std::count(text.begin(), text.begin() + at, '\n')));
  };
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t length = utf8SequenceLength(text.substr(at));
    if (length == 0)
      return fail(ErrorCode::InvalidInput, lineOf(at), text.substr(at, 1), "the text is not UTF-8",
                  "save the file as CSV UTF-8");
    if (text[at] == '\0')
      return fail(ErrorCode::InvalidInput, lineOf(at), "", "the text holds a NUL byte",
                  "save the file as CSV UTF-8");
    at += length;
  }
  return {};
}

Result<void> checkHeader(const CsvRow& row) {
  const std::string place = lineName(row.line);
  if (row.cells.size() == 1 && row.cells[0].find(';') != std::string::npos)
    return fail(ErrorCode::InvalidInput, place, row.cells[0], "the columns are separated by semicolons",
                "separate them by commas");
  for (auto name = row.cells.begin(); name != row.cells.end(); ++name) {
    if (name->empty())
      return fail(ErrorCode::InvalidInput, place, "", "a column has no name", "name every column");
    if (std::find(row.cells.begin(), name, *name) != name)
      return fail(ErrorCode::InvalidInput, place, *name, {"column “%1” is there twice", {shown(*name)}},
                  "name each column once");
  }
  return {};
}

Result<void> checkWidth(const CsvRow& row, const Csv& table) {
  if (row.cells.size() == table.header.size()) return {};
  return fail(ErrorCode::InvalidInput, lineName(row.line), row.cells.front(),
              {"the row has %1 cells", {fmt::to_string(row.cells.size())}},
              {"write %1, as in the header", {fmt::to_string(table.header.size())}});
}

}  // namespace

Result<CsvReading> readCsv(std::string_view text) {
  if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
  CsvReader reader(text);
  reader.skipPreamble();
  if (reader.atEnd())
    return fail(ErrorCode::InvalidInput, "", "", "the table is empty", "start with a line of column names");
  CW_TRY(header, reader.row());
  CW_CHECK(checkBytes(text.substr(0, reader.at()), 1));
  CW_CHECK(checkHeader(header));
  CsvReading out{{header.cells, {}}, {}};
  while (!reader.atEnd()) {
    const std::size_t start = reader.at();
    auto row = reader.row();
    if (!row) {
      reader.skipLine();
      out.refused.push_back(row.error());
      continue;
    }
    auto fine = checkBytes(text.substr(start, reader.at() - start), row->line);
    if (fine) fine = checkWidth(*row, out.table);
    if (fine)
      out.table.rows.push_back(std::move(*row));
    else
      out.refused.push_back(fine.error());
  }
  return out;
}

Result<Csv> parseCsv(std::string_view text) {
  CW_TRY(reading, readCsv(text));
  if (!reading.refused.empty()) return fail(reading.refused.front());
  return std::move(reading.table);
}

std::string csvLine(const std::vector<std::string>& cells) {
  std::string line;
  for (const std::string& cell : cells) {
    if (&cell != &cells.front()) line += ',';
    if (cell.find_first_of(",\"\r\n") == std::string::npos) {
      line += cell;
      continue;
    }
    line += '"';
    for (const char c : cell) line += c == '"' ? std::string("\"\"") : std::string(1, c);
    line += '"';
  }
  return line + "\n";
}

}  // namespace cw

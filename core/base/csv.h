#pragma once
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"

namespace cw {

struct CsvRow {
  std::size_t line = 0;  ///< where the row starts, from 1
  std::vector<std::string> cells;
};

/// A table with a header. Every row has as many cells as the header has names.
struct Csv {
  std::vector<std::string> header;
  std::vector<CsvRow> rows;
};

/// Reads RFC 4180: comma-separated, quotes doubled inside quotes, line ends LF or CRLF. Before the header
/// (and only there) blank lines and lines starting with '#' are skipped; a byte order mark is skipped too.
/// InvalidInput naming line and cure for: invalid UTF-8, NUL, a quote left open or misplaced, a lone CR,
/// a row with more or fewer cells than the header, an empty or repeated column name, no header at all.
Result<Csv> parseCsv(std::string_view text);

/// A table with the rows that could be read, and why each of the others could not.
struct CsvReading {
  Csv table;
  std::vector<Error> refused;  ///< place "line 12"
};

/// Reads on where parseCsv gives up: only a header that cannot be read is an error. Behind a quote that is
/// never closed nothing more is read.
Result<CsvReading> readCsv(std::string_view text);

/// One line with LF; cells are quoted where they must be. parseCsv reads it back.
std::string csvLine(const std::vector<std::string>& cells);

}  // namespace cw

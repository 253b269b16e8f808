#pragma once
#include <algorithm>
#include <fstream>
#include <sstream>
#include <string>

#include "core/base/csv.h"

namespace cw {

/// A table of tests/data/published; its comment lines name the source.
inline Csv publishedTable(const std::string& name) {
  std::ifstream file(CW_TEST_DATA "/published/" + name, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return parseCsv(text.str()).value();
}

inline const std::string& cell(const Csv& table, const CsvRow& row, const std::string& column) {
  const auto at = std::find(table.header.begin(), table.header.end(), column);
  return row.cells.at(static_cast<std::size_t>(at - table.header.begin()));
}

}  // namespace cw

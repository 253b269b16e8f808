#pragma once
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <iostream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "core/base/csv.h"
#include "core/units/stated.h"

// Published tables as the tests read them (tests/data/published), and the tally that README quotes.
namespace cw::published {

/// One printed value with everything beside it.
struct Row {
  std::map<std::string, std::string> cells;
  const std::string& operator[](const std::string& column) const { return cells.at(column); }
  bool seen() const { return cells.at("known") == "seen"; }
  bool flagged() const { return !cells.at("flag").empty(); }
  double number(const std::string& column = "low") const { return numberOf(cells.at(column)); }
};

inline std::vector<Row> readTable(const std::string& name) {
  std::ifstream file(std::string(CW_TEST_DATA) + "/published/" + name + ".csv");
  std::stringstream text;
  text << file.rdbuf();
  const auto table = parseCsv(text.str());
  EXPECT_TRUE(table.has_value()) << name;
  std::vector<Row> rows;
  if (!table) return rows;
  for (const CsvRow& line : table->rows) {
    Row row;
    for (std::size_t i = 0; i < table->header.size(); ++i) row.cells[table->header[i]] = line.cells[i];
    rows.push_back(std::move(row));
  }
  return rows;
}

/// Half of the last printed digit: how far a rounded value may lie from the exact one.
inline double halfDigit(const std::string& printed) {
  const auto point = printed.find('.');
  const auto decimals = point == std::string::npos ? 0 : printed.size() - point - 1;
  return 0.5 * std::pow(10, -static_cast<double>(decimals)) * (1 + 1e-9);
}

/// What all tallies of a run add up to, printed at its end.
class Total {
 public:
  static Total& ofThisRun() {
    static Total total;
    return total;
  }
  ~Total() {
    std::cout << "[published] in all: " << m_within << " of " << m_all << " within the printed digit ("
              << m_memory << " from memory), " << m_all - m_within << " exceptions\n";
  }
  void add(bool within, bool seen) {
    ++m_all;
    if (within) ++m_within;
    if (!seen) ++m_memory;
  }

 private:
  int m_all = 0;
  int m_within = 0;
  int m_memory = 0;
};

/// Counts what is reproduced, prints the count with its exceptions.
class Tally {
 public:
  explicit Tally(std::string source) : m_source(std::move(source)), m_total(Total::ofThisRun()) {}
  ~Tally() {
    std::cout << "[published] " << m_source << ": " << m_within << " of " << m_all
              << " within the printed digit";
    if (m_memory > 0) std::cout << " (" << m_memory << " from memory)";
    std::cout << "\n" << m_exceptions;
  }

  /// True if `computed` rounds to what is printed.
  bool add(const std::string& what, const std::string& printed, double computed, bool seen = true) {
    return add(what, printed, computed, std::abs(computed - numberOf(printed)) <= halfDigit(printed), seen);
  }

  /// The same for a source that rounds otherwise than its digits say.
  bool add(const std::string& what, const std::string& printed, double computed, bool within, bool seen) {
    ++m_all;
    if (!seen) ++m_memory;
    m_total.add(within, seen);
    if (within) return ++m_within, true;
    std::ostringstream line;
    line << "    " << what << ": printed " << printed << ", computed " << computed << "\n";
    m_exceptions += line.str();
    return false;
  }
  int exceptions() const { return m_all - m_within; }
  int all() const { return m_all; }

 private:
  std::string m_source;
  Total& m_total;
  int m_all = 0;
  int m_within = 0;
  int m_memory = 0;
  std::string m_exceptions;
};

}  // namespace cw::published

// Search as one types in 100 000 rows of a library and in 100 000 jobs, beside bare FTS5 statements through
// SQLite itself on the same file in the same run; what the library costs at start; a table of 100 000 rows
// in.
#include <fmt/format.h>
#include <sqlite3.h>

#include <QCoreApplication>
#include <algorithm>
#include <chrono>
#include <iostream>
#include <map>

#include "core/base/csv.h"
#include "core/store/library_search.h"
#include "core/store/typed_words.h"
#include "tests/support/sample_shop.h"

namespace cw::test {
namespace {

constexpr int kRows = 100000;
constexpr int kMost = 200;
constexpr int kRounds = 5;

template <class Work>
double milliseconds(Work work) {
  const auto start = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double atShare(std::vector<double> values, double share) {
  std::sort(values.begin(), values.end());
  return values[static_cast<std::size_t>(share * static_cast<double>(values.size() - 1))];
}

/// One prepared statement with a search and a number of rows, read to its end.
class Bare {
 public:
  Bare(const std::filesystem::path& file, const char* sql) {
    sqlite3_open_v2(file.c_str(), &m_base, SQLITE_OPEN_READONLY, nullptr);
    if (sqlite3_prepare_v2(m_base, sql, -1, &m_statement, nullptr) != SQLITE_OK)
      throw std::runtime_error(sqlite3_errmsg(m_base));
  }
  ~Bare() {
    sqlite3_finalize(m_statement);
    sqlite3_close(m_base);
  }
  Bare(const Bare&) = delete;
  Bare& operator=(const Bare&) = delete;

  void find(const std::string& search) {
    sqlite3_bind_text(m_statement, 1, search.c_str(), -1, SQLITE_TRANSIENT);
    sqlite3_bind_int(m_statement, 2, kMost);
    std::vector<std::vector<std::string>> rows;
    while (sqlite3_step(m_statement) == SQLITE_ROW) {
      rows.emplace_back();
      for (int column = 0; column < sqlite3_column_count(m_statement); ++column) {
        const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(m_statement, column));
        rows.back().emplace_back(text == nullptr ? "" : text);
      }
    }
    sqlite3_reset(m_statement);
  }

 private:
  sqlite3* m_base = nullptr;
  sqlite3_stmt* m_statement = nullptr;
};

/// What is in the field after each key.
std::vector<std::string> asTyped(const std::vector<std::string>& texts) {
  std::vector<std::string> out;
  for (const std::string& text : texts)
    for (std::size_t length = 1; length <= text.size(); ++length) out.push_back(text.substr(0, length));
  return out;
}

using Find = std::function<void(const std::string&)>;

/// Each in turn for each text, so that all see the same machine.
void compare(const std::vector<std::string>& texts, const std::vector<std::pair<std::string, Find>>& ways) {
  std::map<std::string, std::vector<double>> times;
  for (int round = 0; round < kRounds; ++round)
    for (const std::string& text : texts)
      for (const auto& [name, find] : ways) times[name].push_back(milliseconds([&] { find(text); }));
  const auto& own = times[ways.front().first];
  for (const auto& [name, find] : ways)
    std::cout << fmt::format("  {:<34} p50 {:7.3f} ms  p99 {:7.3f} ms   ours is {:.2f} and {:.2f} times it\n",
                             name, atShare(times[name], 0.5), atShare(times[name], 0.99),
                             atShare(own, 0.5) / atShare(times[name], 0.5),
                             atShare(own, 0.99) / atShare(times[name], 0.99));
}

std::string manyThreads() {
  std::string out = csvLine(columnsOf(RowKind::Thread));
  for (int i = 0; i < kRows; ++i) {
    const double diameter = 3 + 0.1 * (i % 610), pitch = 0.2005 + 0.01 * (i / 610);
    out += fmt::format("M{:.1f}x{:.4f},{:.1f},{:.4f},,,mm,seen,drawing {},Lena,lot {}\n", diameter, pitch,
                       diameter, pitch, i % 977, i % 41);
  }
  return out;
}

void start() {
  std::cout << fmt::format("at start: shipped catalogue {:.2f} ms, ",
                           milliseconds([] { static_cast<void>(shippedCatalogue()); }));
  std::cout << fmt::format("its search index {:.2f} ms, when the library is first looked at\n",
                           milliseconds([] { need(LibrarySearch::of(shippedCatalogue().rows())); }));
}

void fasteners() {
  SampleShop shop;
  const std::string csv = manyThreads();
  ShopLibrary& library = shop->library();
  std::cout << fmt::format("a table of {} rows, {} MB: dry run {:.0f} ms, ", kRows, csv.size() >> 20,
                           milliseconds([&] { need(library.rehearse(csv)); }));
  std::cout << fmt::format("import {:.0f} ms, ", milliseconds([&] {
                             need(library.import(csv, {"lena", shop.clock().now()}));
                           }));
  std::cout << fmt::format("catalogue with them {:.0f} ms\n",
                           milliseconds([&] { need(library.catalogue()); }));

  std::cout << fmt::format("search in {} fastener rows\n", kRows);
  Bare plain(shop.file(),
             "SELECT rowid, name, alias, note, kind FROM library_words WHERE library_words MATCH ? LIMIT ?");
  Bare ranked(
      shop.file(),
      "SELECT rowid, name, alias, note, kind FROM library_words WHERE library_words MATCH ? ORDER BY rank "
      "LIMIT ?");
  compare(
      asTyped({"M12.3x0.4", "m8x1.0005", "lot 7", "threads 40", "8.8", "drawing"}),
      {{"ours", [&](const std::string& text) { need(library.find(text, kMost)); }},
       {"bare FTS5, in the table's order",
        [&](const std::string& text) { plain.find(everyBeginning(text)); }},
       {"bare FTS5, ordered by rank", [&](const std::string& text) { ranked.find(everyBeginning(text)); }}});
}

/// Jobs as the program's own insert leaves them, written by the thousand.
void fillJobs(const std::filesystem::path& file) {
  sqlite3* base = nullptr;
  sqlite3_open(file.c_str(), &base);
  const std::string sql = fmt::format(
      "BEGIN; WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n WHERE i < {}) "
      "INSERT INTO job(id, digest, sheet, revision, title, work_order, machine, model, serial, started) "
      "SELECT printf('01900000-0000-7000-8000-%012d', i), (SELECT digest FROM sheet_text), (SELECT sheet "
      "FROM sheet_revision), '1', "
      "'Pump cover ' || (i % 83), 'WO ' || i, 'P-' || (i % 500), 'Test pump ' || (i % 12), 'S-' || (i * 7 % "
      "9973), "
      "printf('2026-01-01T%02d:%02d:%02dZ', i / 3600 % 24, i / 60 % 60, i % 60) FROM n; COMMIT;",
      kRows);
  char* trouble = nullptr;
  if (sqlite3_exec(base, sql.c_str(), nullptr, nullptr, &trouble) != SQLITE_OK)
    throw std::runtime_error(trouble);
  sqlite3_close(base);
}

void jobs() {
  SampleShop shop;
  fillJobs(shop.file());
  std::cout << fmt::format("search in {} jobs\n", kRows);
  Bare words(shop.file(),
             "SELECT job, work_order, machine, model, serial, title FROM job_words WHERE job_words MATCH ? "
             "ORDER BY rowid DESC LIMIT ?");
  Bare joined(
      shop.file(),
      "SELECT j.* FROM job_words w JOIN job j ON j.id = w.job WHERE job_words MATCH ? ORDER BY w.rowid DESC "
      "LIMIT ?");
  const auto find = [&](const std::string& text) {
    JobQuery query;
    query.words = text;
    query.most = kMost;
    need(shop->findJobs(query));
  };
  compare(asTyped({"WO 4711", "P-77", "pump cover 12", "S-4567", "test pump 3"}),
          {{"ours", find},
           {"bare FTS5", [&](const std::string& text) { words.find(everyBeginning(text)); }},
           {"bare FTS5 joined to the jobs",
            [&](const std::string& text) { joined.find(everyBeginning(text)); }}});
}

}  // namespace
}  // namespace cw::test

int main(int count, char** words) {
  const QCoreApplication application(count, words);
  cw::test::start();
  cw::test::fasteners();
  cw::test::jobs();
  return 0;
}

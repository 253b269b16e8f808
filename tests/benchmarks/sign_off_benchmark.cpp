// What one durable sign-off costs through the whole path (judge, chain, commit with full sync, read back),
// beside the bare SQLite insert and commit with the same sync on the same file system in the same run.
#include <fmt/format.h>
#include <sqlite3.h>
#include <sys/resource.h>

#include <QCoreApplication>
#include <QStorageInfo>
#include <algorithm>
#include <chrono>
#include <iostream>

#include "tests/support/sample_shop.h"

namespace cw::test {
namespace {

constexpr int kEntries = 8000;
constexpr int kWindow = 100;

struct Cost {
  double wall = 0, cpu = 0;  // ms
};

double cpuNow() {
  rusage usage{};
  ::getrusage(RUSAGE_SELF, &usage);
  const auto ms = [](const timeval& t) {
    return 1e3 * static_cast<double>(t.tv_sec) + 1e-3 * static_cast<double>(t.tv_usec);
  };
  return ms(usage.ru_utime) + ms(usage.ru_stime);
}

template <class Work>
Cost measure(Work work) {
  const double cpu = cpuNow();
  const auto wall = std::chrono::steady_clock::now();
  work();
  return {std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - wall).count(),
          cpuNow() - cpu};
}

double median(std::vector<double> values) {
  std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2),
                   values.end());
  return values[values.size() / 2];
}

double meanCpu(const std::vector<Cost>& costs, std::size_t from, std::size_t count) {
  double sum = 0;
  for (std::size_t i = from; i < from + count; ++i) sum += costs[i].cpu;
  return sum / static_cast<double>(count);
}

double medianWall(const std::vector<Cost>& costs, std::size_t from, std::size_t count) {
  std::vector<double> walls;
  for (std::size_t i = from; i < from + count; ++i) walls.push_back(costs[i].wall);
  return median(std::move(walls));
}

/// One row of the same size, alone in its transaction.
class Bare {
 public:
  explicit Bare(const std::filesystem::path& file) {
    sqlite3_open(file.c_str(), &m_base);
    run("PRAGMA journal_mode=wal; PRAGMA synchronous=full;"
        "CREATE TABLE entry(sequence INTEGER PRIMARY KEY, text TEXT NOT NULL) STRICT");
    sqlite3_prepare_v2(m_base, "INSERT INTO entry(text) VALUES (?)", -1, &m_insert, nullptr);
  }
  ~Bare() {
    sqlite3_finalize(m_insert);
    sqlite3_close(m_base);
  }
  Bare(const Bare&) = delete;
  Bare& operator=(const Bare&) = delete;

  void insert(const std::string& text) {
    run("BEGIN IMMEDIATE");
    sqlite3_bind_text(m_insert, 1, text.data(), static_cast<int>(text.size()), SQLITE_TRANSIENT);
    sqlite3_step(m_insert);
    sqlite3_reset(m_insert);
    run("COMMIT");
  }

 private:
  void run(const char* sql) {
    if (sqlite3_exec(m_base, sql, nullptr, nullptr, nullptr) != SQLITE_OK)
      throw std::runtime_error(sqlite3_errmsg(m_base));
  }
  sqlite3* m_base = nullptr;
  sqlite3_stmt* m_insert = nullptr;
};

void report(const char* what, const std::vector<Cost>& costs) {
  const std::size_t last = costs.size() - kWindow;
  std::cout << fmt::format("{:<22} first {}: {:.3f} ms, CPU {:.3f} ms   last {}: {:.3f} ms, CPU {:.3f} ms\n",
                           what, kWindow, medianWall(costs, 0, kWindow), meanCpu(costs, 0, kWindow), kWindow,
                           medianWall(costs, last, kWindow), meanCpu(costs, last, kWindow));
}

void run() {
  SampleShop shop;
  const Id job = shop.startJob();
  auto script = sampleScript("s5");
  const auto pull = std::find_if(script.begin(), script.end(), [](const auto& said) {
    return std::holds_alternative<Tightened>(said.second);
  });
  for (auto said = script.begin(); said != pull; ++said) need(shop.say(job, said->first, said->second));
  // A reading outside the tolerance leaves its position open, so that it can be signed without end.
  Tightened reading = std::get<Tightened>(pull->second);
  reading.known = Known::Read;
  reading.reading = inLbf("74");

  const std::string text(600, 'x');  // as long as the canonical text of such an entry
  Bare bare(shop.folder() / "bare.db");
  std::vector<Cost> ours, theirs;
  for (int i = 0; i < kEntries; ++i) {
    const Draft draft = shop.draft("mira", reading);
    ours.push_back(measure([&] { need(shop->ledger().append(job, draft)); }));
    theirs.push_back(measure([&] { bare.insert(text); }));
  }
  const std::string folder = shop.folder().path().string();
  std::cout << fmt::format("{} sign-offs on {}\n", kEntries,
                           QStorageInfo(QString::fromStdString(folder)).fileSystemType().toStdString());
  report("sign-off, whole path", ours);
  report("bare insert and commit", theirs);
  const double own = meanCpu(ours, 0, ours.size()) - meanCpu(theirs, 0, theirs.size());
  std::cout << fmt::format(
      "own CPU {:.3f} ms; time {:.2f} times the bare commit; last {} against first {}: {:.2f}\n", own,
      medianWall(ours, 0, ours.size()) / medianWall(theirs, 0, theirs.size()), kWindow, kWindow,
      meanCpu(ours, ours.size() - kWindow, kWindow) / meanCpu(ours, 0, kWindow));
}

}  // namespace
}  // namespace cw::test

int main(int count, char** words) {
  const QCoreApplication application(count, words);
  cw::test::run();
  return 0;
}

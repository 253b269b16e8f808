#include <fstream>
#include <random>

#include "core/record/verify.h"
#include "core/store/inspect.h"
#include "tests/support/matchers.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

namespace fs = std::filesystem;
using test::kPin;
using test::need;
using test::SampleShop;
using testing::Contains;
using testing::Field;
using testing::HasSubstr;

constexpr std::size_t kPage = 4096;
constexpr unsigned kDamages = 200;
constexpr int kBackedUp = 8;  ///< each of so many, because it waits for the disk

/// A shop with sealed, finished and open jobs and rows of its own, and what can be asked of a copy of it.
class OverwrittenFile : public testing::Test {
 protected:
  OverwrittenFile() {
    for (int record = 0; record < 3; ++record) m_jobs.push_back(sealed());
    m_jobs.push_back(m_shop.startJob());
    EXPECT_EQ(m_shop.work(m_jobs.back(), "s4"), "");
    need(m_shop->library().import(csvOfThreads(), {"lena", m_shop.clock().now(), "own"}));
    m_shop.close();
    std::ifstream in(m_shop.file(), std::ios::binary);
    m_whole.assign(std::istreambuf_iterator<char>(in), {});
  }

  Id sealed() {
    const Id job = m_shop.startJob();
    EXPECT_EQ(m_shop.work(job), "");
    need(m_shop->records().seal(job, {"mira", std::string(test::kPin)}, m_shop.key(), "test"));
    need(m_shop->records().addAddendum(job, "wim", kPin, "The serial is S-101.", m_shop.key()));
    return job;
  }
  static std::string csvOfThreads() {
    std::string out;
    for (const std::string& column : columnsOf(RowKind::Condition)) out += (out.empty() ? "" : ",") + column;
    return out + "\nown paste,,own paste,0.10,0.14,0.20,,,,,,,seen,drawing 7,Lena,lot 3\n";
  }

  fs::path fileOf(const std::string& bytes) {
    const fs::path out = m_shop.folder() / "damaged.clampwright";
    for (const char* ending : {"", "-wal", "-shm"}) fs::remove(out.string() + ending);
    std::ofstream(out, std::ios::binary) << bytes;
    return out;
  }
  fs::path fileAfter(const std::string& statements) {
    const fs::path out = fileOf(m_whole);
    test::sqlite(out, "PRAGMA writable_schema = 1; PRAGMA ignore_check_constraints = 1;" + statements);
    return out;
  }

  /// Everything that reads, and what it says is a value or an error with a sentence.
  void askEverything(const fs::path& file) {
    const auto found = inspectFile(file);
    if (!found) EXPECT_NE(sentence(found.error()), "");
    const auto shop = Shop::open(file, m_shop.clock());
    if (!shop) return;
    if (m_asked++ % kBackedUp == 0) {
      fs::remove(m_shop.folder() / "copy");
      static_cast<void>((*shop)->backUpTo(m_shop.folder() / "copy"));
    }
    static_cast<void>((*shop)->findJobs({}));
    JobQuery query;
    query.words = "test";
    static_cast<void>((*shop)->findJobs(query));
    static_cast<void>((*shop)->sheets().all());
    static_cast<void>((*shop)->people().all());
    static_cast<void>((*shop)->tools().all());
    static_cast<void>((*shop)->tools().history("T-07"));
    static_cast<void>((*shop)->machines().all());
    static_cast<void>((*shop)->library().catalogue());
    static_cast<void>((*shop)->library().find("own", 10));
    static_cast<void>((*shop)->library().history(1));
    for (const Id& job : m_jobs) {
      static_cast<void>((*shop)->ledger().job(job));
      if (const auto files = (*shop)->records().files(job)) static_cast<void>(readRecord(files->record));
    }
  }

  SampleShop m_shop;
  std::vector<Id> m_jobs;
  std::string m_whole;
  int m_asked = 0;
};

TEST_F(OverwrittenFile, WholePagesAreNeverTheEndOfTheProgram) {
  std::mt19937 random(20260304);
  const std::size_t pages = m_whole.size() / kPage;
  for (unsigned damage = 0; damage < kDamages; ++damage) {
    SCOPED_TRACE(damage);
    std::string bytes = m_whole;
    const std::size_t at = (1 + random() % (pages - 1)) * kPage;
    switch (damage % 4) {
      case 0:  // nothing
        bytes.replace(at, kPage, kPage, '\0');
        break;
      case 1:  // anything
        for (std::size_t i = 0; i < kPage; ++i) bytes[at + i] = static_cast<char>(random());
        break;
      case 2:  // another page
        bytes.replace(at, kPage, m_whole.substr((1 + random() % (pages - 1)) * kPage, kPage));
        break;
      default:  // a few bits
        for (int flips = 0; flips < 8; ++flips)
          bytes[at + random() % kPage] ^= static_cast<char>(1 << random() % 8);
    }
    askEverything(fileOf(bytes));
  }
}

TEST_F(OverwrittenFile, WhatARowMayNotHoldIsAFindingWithTableAndRow) {
  const std::string& job = m_jobs.front().text();
  struct Case {
    const char* statements;
    std::string place;
  };
  const Case cases[] = {
      {"DROP TRIGGER record_no_update; UPDATE record SET digest = 'xyz'", "record " + job},
      {"DROP TRIGGER record_no_update; UPDATE record SET sealed = 'yesterday'", "record " + job + ", sealed"},
      {"DROP TRIGGER record_no_update; UPDATE record SET bytes = x''", "record " + job},
      {"DROP TRIGGER record_no_update; UPDATE record SET count = 3", "record " + job},
      {"DROP TRIGGER job_no_update; UPDATE job SET started = '4 March'", "job " + job + ", started"},
      {"DROP TRIGGER job_no_update; UPDATE job SET sheet = 'the sheet'", "job " + job + ", sheet"},
      {"DROP TRIGGER job_no_update; PRAGMA foreign_keys = 0; UPDATE job SET id = 'a job of thirty-six "
       "letters or so ' WHERE rowid = 1",
       "job a job of"},
      {"DROP TRIGGER sheet_frozen; UPDATE sheet_revision SET sheet = 'a sheet of thirty-six letters or so.'",
       "sheet_revision a sheet of"},
      {"UPDATE tool SET page = '{}' WHERE id = 'T-07'", "tool T-07"},
      {"UPDATE tool SET id = 'T-99' WHERE id = 'T-07'", "tool T-99"},
      {"UPDATE person SET page = 'no page' WHERE sign = 'mira'", "person mira"},
      {"DROP TRIGGER library_revision_no_update; UPDATE library_revision SET kind = 'spoons'",
       "library_revision 1, kind"},
      {"DROP TRIGGER addendum_no_update; UPDATE addendum SET number = 2", "addendum 1"},
      {"DROP TRIGGER entry_no_update; UPDATE entry SET id = 'an entry of thirty-six letters or so' WHERE job "
       "= (SELECT min(id) FROM job) AND sequence = 4",
       "entry 4"},
      {"DROP TRIGGER entry_no_update; UPDATE entry SET kind = 'odd' WHERE sequence = 4", "entry 4"},
      {"DROP TRIGGER entry_no_update; UPDATE entry SET previous = replace(previous, '0', '1') WHERE sequence "
       "= 1",
       "entry 1"}};
  for (const auto& [statements, place] : cases) {
    SCOPED_TRACE(statements);
    const fs::path file = fileAfter(statements);
    EXPECT_THAT(need(inspectFile(file)), Contains(Field(&Finding::place, HasSubstr(place))));
    askEverything(file);
  }
}

TEST_F(OverwrittenFile, AListNamesTheRowThatCannotBeRead) {
  const fs::path file = fileAfter(
      "DROP TRIGGER job_no_update; UPDATE job SET started = '4 March' WHERE rowid = 1;"
      "DROP TRIGGER sheet_frozen;"
      "UPDATE sheet_revision SET sheet = 'a sheet of thirty-six letters or so.';"
      "UPDATE tool SET page = '{}' WHERE id = 'T-07'");
  const auto shop = need(Shop::open(file, m_shop.clock()));
  EXPECT_THAT(shop->findJobs({}), FailsWith(ErrorCode::Corrupt, HasSubstr(m_jobs.front().text())));
  EXPECT_THAT(shop->sheets().all(), FailsWith(ErrorCode::Corrupt, HasSubstr("a sheet of")));
  EXPECT_THAT(shop->tools().all(), FailsWith(ErrorCode::Corrupt, HasSubstr("tool T-07")));
}

}  // namespace
}  // namespace cw

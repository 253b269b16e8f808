#include "core/store/database.h"

#include <sys/wait.h>
#include <unistd.h>

#include <fstream>

#include "core/store/connection.h"
#include "core/store/file_system.h"
#include "core/store/migrations.h"
#include "tests/support/matchers.h"
#include "tests/support/raw_sqlite.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

namespace fs = std::filesystem;
using test::need;
using test::RawSqlite;
using test::SampleShop;
using testing::AllOf;
using testing::HasSubstr;

const Moment kNow = *parseRfc3339("2026-03-04T14:05:06Z");
constexpr std::chrono::milliseconds kNoPatience{0};

std::string contentOf(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), {}};
}

void write(const fs::path& file, std::string_view bytes) {
  std::ofstream(file, std::ios::binary) << bytes;
}

Result<void> opened(const fs::path& file) {
  return Database::open(file, kNow, kNoPatience).map([](Database&&) {});
}

TEST(Database, SetsWhatKeepsEntriesSafe) {
  const TemporaryFolder folder;
  Database database = need(Database::create(folder / "a.clampwright"));
  for (const auto& [pragma, value] : {std::pair("journal_mode", "wal"),
                                      {"synchronous", "2"},
                                      {"foreign_keys", "1"},
                                      {"recursive_triggers", "1"},
                                      {"busy_timeout", "5000"}})
    EXPECT_THAT(database.connection().pragma(pragma), IsOkAnd(std::string(value))) << pragma;
}

TEST(Database, NeverReplacesAFile) {
  const TemporaryFolder folder;
  write(folder / "a", "precious");
  EXPECT_THAT(Database::create(folder / "a").map([](Database&&) {}), FailsWith(ErrorCode::AlreadyDone));
  EXPECT_EQ(contentOf(folder / "a"), "precious");
}

TEST(Database, NeverMakesAFileByOpening) {
  const TemporaryFolder folder;
  EXPECT_THAT(opened(folder / "a"), FailsWith(ErrorCode::Storage, HasSubstr("there is no such file")));
  EXPECT_FALSE(fs::exists(folder / "a"));
  EXPECT_THAT(opened(folder / "no/such/folder"), FailsWith(ErrorCode::Storage));
}

TEST(Database, OpensNamesThatAUriWouldMisread) {
  const TemporaryFolder folder;
  for (const char* name : {"50% off?.db", "a#b.db", "Größe Ø.db", "two  blanks.db", "%41.db"}) {
    need(Database::create(folder / name).map([](Database&&) {}));
    EXPECT_TRUE(fs::exists(folder / name)) << name;
    EXPECT_THAT(opened(folder / name), IsOk()) << name;
  }
}

TEST(Database, RefusesWhatIsNoShopFile) {
  const TemporaryFolder folder;
  write(folder / "empty", "");
  write(folder / "text", std::string(5000, 'x'));
  test::sqlite(folder / "other", "CREATE TABLE t(a); INSERT INTO t VALUES (1);");
  for (const char* name : {"empty", "text", "other"})
    EXPECT_THAT(opened(folder / name), FailsWith(ErrorCode::Corrupt, HasSubstr("this is no shop file")))
        << name;
  EXPECT_EQ(RawSqlite(folder / "other").ask("SELECT a FROM t"), "1");
}

TEST(Database, RefusesAFolderAndADevice) {
  const TemporaryFolder folder;
  EXPECT_THAT(opened(folder.path()), FailsWith(ErrorCode::Storage, HasSubstr("this is a folder")));
  EXPECT_THAT(opened("/dev/null"), FailsWith(ErrorCode::Storage, HasSubstr("no ordinary file")));
}

TEST(Database, LeavesANewerFileAlone) {
  SampleShop shop;
  shop.close();
  test::sqlite(shop.file(), "PRAGMA user_version = 99;");
  const std::string before = contentOf(shop.file());
  EXPECT_THAT(opened(shop.file()), FailsWith(ErrorCode::NewerVersion, HasSubstr("version 99")));
  EXPECT_EQ(contentOf(shop.file()), before);
}

TEST(Database, NoticesEveryTruncation) {
  SampleShop shop;
  shop.close();
  const std::string whole = contentOf(shop.file());
  const std::size_t step = 3 * 4096 + 517;
  for (std::size_t length = 1; length < whole.size(); length += step) {
    write(shop.file(), std::string_view(whole).substr(0, length));
    EXPECT_THAT(opened(shop.file()), FailsWith(ErrorCode::Corrupt)) << length << " bytes of " << whole.size();
  }
  write(shop.file(), whole);
  EXPECT_THAT(opened(shop.file()), IsOk());
}

TEST(Database, NoticesThatALargeFileIsCutShort) {
  SampleShop shop;
  shop.close();
  test::sqlite(shop.file(), "CREATE TABLE filler(x); INSERT INTO filler VALUES (zeroblob(17000000))");
  EXPECT_THAT(opened(shop.file()), IsOk());
  fs::resize_file(shop.file(), fs::file_size(shop.file()) - 4096);
  EXPECT_THAT(opened(shop.file()), FailsWith(ErrorCode::Corrupt));
}

TEST(Database, SaysThatAnotherProgramHoldsTheFile) {
  SampleShop shop(kNoPatience);
  const Id job = shop.startJob();
  RawSqlite other(shop.file());
  ASSERT_EQ(other.run("BEGIN IMMEDIATE"), "");
  EXPECT_THAT(shop.say(job, "mira", WarningsRead{"s1"}),
              FailsWith(ErrorCode::Locked, HasSubstr("another program is using the shop file")));
  ASSERT_EQ(other.run("COMMIT"), "");
  EXPECT_THAT(shop.say(job, "mira", WarningsRead{"s1"}), IsOk());
}

TEST(Database, SaysThatAFileLockedAsAWholeIsLocked) {
  SampleShop shop;
  shop.close();
  RawSqlite other(shop.file());
  ASSERT_EQ(other.run("PRAGMA locking_mode = exclusive; BEGIN EXCLUSIVE; UPDATE shop SET name = 'x'; COMMIT"),
            "");
  EXPECT_THAT(opened(shop.file()), FailsWith(ErrorCode::Locked));
}

/// What an unprivileged process gets as the sentence of `attempt`; root may write anything.
std::string asNobody(const std::function<Result<void>()>& attempt) {
  int ends[2];
  if (::pipe(ends) != 0) return "no pipe";
  const pid_t child = ::fork();
  if (child == 0) {
    std::string words = "cannot change user";
    if (::geteuid() != 0 || (::setgid(65534) == 0 && ::setuid(65534) == 0)) {
      const auto answer = attempt();
      words = answer ? "allowed" : sentence(answer.error());
    }
    const auto written = ::write(ends[1], words.data(), words.size());
    ::_exit(written > 0 ? 0 : 1);
  }
  ::close(ends[1]);
  std::string out;
  char buffer[1024];
  for (ssize_t got; (got = ::read(ends[0], buffer, sizeof buffer)) > 0;)
    out.append(buffer, static_cast<std::size_t>(got));
  ::close(ends[0]);
  ::waitpid(child, nullptr, 0);
  return out;
}

TEST(Database, SaysThatAFileOrItsFolderIsReadOnly) {
  SampleShop shop;
  shop.close();
  const fs::path folder = shop.folder().path();
  const auto mode = [](int bits) { return static_cast<fs::perms>(bits); };
  fs::permissions(folder, mode(0777));
  fs::permissions(shop.file(), mode(0444));
  EXPECT_THAT(asNobody([&] { return opened(shop.file()); }), HasSubstr("the shop file cannot be written"));
  fs::permissions(shop.file(), mode(0666));
  fs::permissions(folder, mode(0555));
  EXPECT_THAT(asNobody([&] { return opened(shop.file()); }),
              HasSubstr("the folder of the shop file cannot be written"));
  EXPECT_THAT(asNobody([&] { return Database::create(folder / "new").map([](Database&&) {}); }),
              HasSubstr("this place cannot be written"));
  fs::permissions(folder, mode(0777));
  fs::permissions(shop.file(), mode(0));
  EXPECT_THAT(asNobody([&] { return opened(shop.file()); }), HasSubstr("the shop file cannot be read"));
}

TEST(Database, LeavesNothingOfAnEntryOnAFullDisk) {
  SampleShop shop;
  const Id job = shop.startJob();
  Connection& connection = shop->database().connection();
  const int used = std::stoi(need(connection.pragma("page_count")));
  int failures = 0;
  bool taken = false;
  // One page more room each time, until it fits.
  for (int pages = used; !taken; ++pages) {
    need(connection.run("PRAGMA max_page_count = " + std::to_string(pages)));
    const int before = (*shop->ledger().job(job))->count();
    std::string much(30'000, 'x');
    const auto said = shop.say(job, "mira", Paused{much, false, "", ""});
    taken = said.has_value();
    if (taken) break;
    ++failures;
    ASSERT_THAT(said, FailsWith(ErrorCode::DiskFull, HasSubstr("no room left")));
    ASSERT_THAT(shop->ledger().refresh(job).map([](const Job* j) { return j->count(); }), IsOkAnd(before));
  }
  EXPECT_GT(failures, 3);
  shop.reopen();
  EXPECT_EQ((*shop->ledger().job(job))->count(), 2);
}

// From statfs(2) and linux/magic.h.
TEST(FileSystem, KnowsWhichTypesOtherMachinesShare) {
  for (const std::uint32_t network : {0x6969U, 0xff534d42U, 0xfe534d42U, 0x517bU, 0x01021997U, 0x65735546U})
    EXPECT_TRUE(isNetworkFileSystem(network)) << std::hex << network;
  for (const std::uint32_t local : {0xef53U, 0x58465342U, 0x9123683eU, 0x01021994U, 0x794c7630U})
    EXPECT_FALSE(isNetworkFileSystem(local)) << std::hex << local;
}

TEST(FileSystem, NeverMovesOntoAnotherFile) {
  const TemporaryFolder folder;
  write(folder / "a", "new");
  write(folder / "b", "precious");
  EXPECT_THAT(moveTo(folder / "a", folder / "b"), FailsWith(ErrorCode::AlreadyDone));
  EXPECT_EQ(contentOf(folder / "b"), "precious");
  EXPECT_THAT(moveTo(folder / "a", folder / "c"), IsOk());
  EXPECT_EQ(contentOf(folder / "c"), "new");
}

}  // namespace
}  // namespace cw

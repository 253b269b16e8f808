// What may be written where, and what is never written onto.
#include <gmock/gmock.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

#include <csignal>
#include <filesystem>
#include <fstream>

#include "core/store/file_io.h"
#include "core/store/found_shop.h"
#include "tests/support/matchers.h"
#include "tests/support/sample_shop.h"

namespace cw {
namespace {

namespace fs = std::filesystem;
using namespace test;
using testing::HasSubstr;

/// While it lives, no file of this process may grow beyond so many bytes: a disk that is full.
class SmallestFiles {
 public:
  explicit SmallestFiles(rlim_t bytes) {
    m_handler = std::signal(SIGXFSZ, SIG_IGN);
    getrlimit(RLIMIT_FSIZE, &m_before);
    const rlimit now{bytes, m_before.rlim_max};
    setrlimit(RLIMIT_FSIZE, &now);
  }
  ~SmallestFiles() {
    setrlimit(RLIMIT_FSIZE, &m_before);
    std::signal(SIGXFSZ, m_handler);
  }
  SmallestFiles(const SmallestFiles&) = delete;
  SmallestFiles& operator=(const SmallestFiles&) = delete;

 private:
  rlimit m_before{};
  void (*m_handler)(int) = nullptr;
};

/// A shop that is open, its key beside it, and somebody who names the wrong file.
class OutputFile : public testing::Test {
 protected:
  void SetUp() override { m_shop = need(foundShop(file("a.shop"), "A", file("a.shop.secret-key"), m_clock)); }

  std::string file(const std::string& name) const { return m_folder.file(name); }
  static std::string bytesOf(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return std::string(std::istreambuf_iterator<char>(in), {});
  }
  void put(const std::string& name, const std::string& text) const { std::ofstream(file(name)) << text; }
  std::size_t filesInFolder() const {
    return static_cast<std::size_t>(
        std::distance(fs::directory_iterator(m_folder.path()), fs::directory_iterator()));
  }

  /// Refused even where replacing is allowed, and not a byte or a file is different afterwards.
  void expectNever(const std::string& path, const std::string& why) {
    const bool wasThere = fs::is_regular_file(path);
    const std::string before = wasThere ? bytesOf(path) : "";
    const std::size_t files = filesInFolder();
    for (const Existing existing : {Existing::Kept, Existing::Replaced})
      EXPECT_THAT(writeFile(path, "new", existing), FailsWith(ErrorCode::InvalidInput, HasSubstr(why)))
          << path;
    EXPECT_EQ(wasThere, fs::is_regular_file(path)) << path;
    if (wasThere) EXPECT_EQ(bytesOf(path), before) << path;
    EXPECT_EQ(filesInFolder(), files) << path;
  }

  TemporaryFolder m_folder;
  SystemClock m_clock;
  std::unique_ptr<Shop> m_shop;
};

TEST_F(OutputFile, TakesAFreeNameAndReplacesOnlyWhereThatIsSaid) {
  EXPECT_THAT(writeFile(file("x"), "one"), IsOk());
  EXPECT_THAT(writeFile(file("x"), "two"), FailsWith(ErrorCode::AlreadyDone, HasSubstr("--force")));
  EXPECT_EQ(bytesOf(file("x")), "one");
  EXPECT_THAT(writeFile(file("x"), "two", Existing::Replaced), IsOk());
  EXPECT_EQ(bytesOf(file("x")), "two");
}

TEST_F(OutputFile, KeepsTheRightsOfAFileThatItReplacesAndHidesAKey) {
  put("x", "one");
  fs::permissions(file("x"), fs::perms(0640));
  EXPECT_THAT(writeFile(file("x"), "two", Existing::Replaced), IsOk());
  EXPECT_EQ(fs::status(file("x")).permissions(), fs::perms(0640));
  EXPECT_THAT(writeFile(file("y"), "two", Existing::Kept, Access::OwnerOnly), IsOk());
  EXPECT_EQ(fs::status(file("y")).permissions(), fs::perms(0600));
}

TEST_F(OutputFile, NeverGoesOntoAShopFileOrItsCompanionsByWhateverName) {
  for (const char* name : {"a.shop", "a.shop-wal", "a.shop-shm"}) {
    ASSERT_TRUE(fs::exists(file(name))) << name;
    fs::create_hard_link(file(name), file("hard"));
    fs::create_symlink(file(name), file("soft"));
    expectNever(file(name), fs::path(name).extension() == ".shop" ? "open" : "belongs to the database");
    expectNever(file("hard"), "open");
    expectNever(file("soft"), "");
    expectNever(m_folder.path().string() + "/./../" + m_folder.path().filename().string() + "/" + name, "");
    fs::remove(file("hard"));
    fs::remove(file("soft"));
  }
  expectNever(file("a.shop-journal"), "belongs to the database");
  EXPECT_TRUE(m_shop->findJobs({}).has_value());
}

TEST_F(OutputFile, NeverGoesOntoADatabaseThatNobodyHasOpen) {
  need(m_shop->backUpTo(m_folder / "copy"));
  m_shop.reset();
  fs::create_hard_link(file("copy"), file("hard"));
  for (const char* name : {"a.shop", "copy", "hard"}) expectNever(file(name), "another database");
  using namespace std::string_literals;
  put("old", "\xd9\xd5\x05\xf9\x20\xa1\x63\xd7 journal"s);
  put("log", "\x37\x7f\x06\x82 log"s);
  for (const char* name : {"old", "log"}) expectNever(file(name), "database");
  expectNever(file("copy-wal"), "belongs to the database");
}

TEST_F(OutputFile, NeverGoesOntoASecretKeyByWhateverName) {
  fs::copy(file("a.shop.secret-key"), file("kept elsewhere"));
  fs::create_hard_link(file("a.shop.secret-key"), file("hard"));
  fs::create_symlink(file("a.shop.secret-key"), file("soft"));
  put("spoilt.secret-key", "garbage");
  for (const char* name : {"a.shop.secret-key", "kept elsewhere", "hard", "soft", "spoilt.secret-key"})
    expectNever(file(name), "secret key");
}

TEST_F(OutputFile, NeverGoesOntoWhatIsNoOrdinaryFile) {
  fs::create_directory(file("folder"));
  fs::create_directory_symlink(file("folder"), file("to a folder"));
  ASSERT_EQ(::mkfifo(file("pipe").c_str(), 0600), 0);
  fs::create_symlink(file("pipe"), file("to a pipe"));
  fs::create_symlink(file("nothing"), file("to nothing"));
  expectNever(file("folder"), "folder");
  expectNever(file("to a folder"), "folder");
  expectNever(file("pipe"), "no ordinary file");
  expectNever(file("to a pipe"), "no ordinary file");
  expectNever(file("to nothing"), "leads nowhere");
  expectNever("/dev/null", "no ordinary file");
  expectNever("", "no file is named");
  EXPECT_FALSE(fs::exists(file("nothing")));
}

TEST_F(OutputFile, GoesThroughALinkToAnOrdinaryFile) {
  put("real", "old");
  fs::create_symlink(file("real"), file("soft"));
  EXPECT_THAT(writeFile(file("soft"), "new"), FailsWith(ErrorCode::AlreadyDone));
  EXPECT_THAT(writeFile(file("soft"), "new", Existing::Replaced), IsOk());
  EXPECT_TRUE(fs::is_symlink(file("soft")));
  EXPECT_EQ(bytesOf(file("real")), "new");
}

TEST_F(OutputFile, ABackupTakesNoNameOfACompanion) {
  EXPECT_THAT(m_shop->backUpTo(m_folder / "a.shop-journal"),
              FailsWith(ErrorCode::InvalidInput, HasSubstr("belongs to the database")));
  EXPECT_FALSE(fs::exists(file("a.shop-journal")));
}

TEST_F(OutputFile, ANewShopAndItsKeyTakeNoNameOfACompanion) {
  for (const char* name : {"b.shop", "b.shop-wal", "b.shop-shm", "b.shop-journal", "./b.shop-wal"})
    EXPECT_THAT(foundShop(file("b.shop"), "B", file(name), m_clock),
                FailsWith(ErrorCode::InvalidInput, HasSubstr("belongs to the database")))
        << name;
  EXPECT_THAT(foundShop(file("a.shop-journal"), "B", file("key"), m_clock),
              FailsWith(ErrorCode::InvalidInput));
  for (const char* name : {"b.shop", "a.shop-journal", "key"}) EXPECT_FALSE(fs::exists(file(name))) << name;
}

TEST_F(OutputFile, SaysWhatIsWrongWithThePathAndLeavesNothing) {
  const std::string path = "/nowhere/at/all/record.pdf";
  EXPECT_THAT(writeFile(path, "new"), FailsWith(ErrorCode::ReadOnly, HasSubstr(path)));
  EXPECT_THAT(writeFile(file("a.shop/x"), "new"), FailsWith(ErrorCode::ReadOnly));
  EXPECT_FALSE(writeFile(file(std::string(300, 'n')), "new").has_value());
}

TEST_F(OutputFile, LeavesTheOldFileWholeAndNothingElseWhenThereIsNoRoom) {
  put("x", "old");
  const std::size_t files = filesInFolder();
  const SmallestFiles limit(4096);
  const std::string large(100'000, 'n');
  EXPECT_THAT(writeFile(file("x"), large, Existing::Replaced),
              FailsWith(ErrorCode::DiskFull, HasSubstr(file("x"))));
  EXPECT_THAT(writeFile(file("y"), large), FailsWith(ErrorCode::DiskFull));
  EXPECT_EQ(bytesOf(file("x")), "old");
  EXPECT_EQ(filesInFolder(), files);
}

}  // namespace
}  // namespace cw

#include "core/store/database.h"

#include "core/store/connection.h"
#include "core/store/copy.h"
#include "core/store/file_system.h"
#include "core/store/identity.h"
#include "core/store/migrations.h"

namespace cw {
namespace {

namespace fs = std::filesystem;

/// "20260304T140506Z", fit for a file name.
std::string stamp(const Moment& now) {
  std::string out;
  for (const char c : rfc3339({now.utc, std::chrono::minutes{0}}).substr(0, 19))
    if (c != '-' && c != ':') out += c;
  return out + "Z";
}

/// The write-ahead log where its shared memory works, else a rollback journal. A file that comes from a local
/// disk still has a log; with the lock held alone it can be opened and changed without shared memory.
Result<void> chooseJournal(Connection& connection, const fs::path& file) {
  CW_TRY(type, fileSystemType(file));
  if (!isNetworkFileSystem(type)) return connection.setPragma("journal_mode", "wal");
  CW_CHECK(connection.setPragma("locking_mode", "exclusive"));
  CW_CHECK(connection.setPragma("journal_mode", "delete"));
  return connection.setPragma("locking_mode", "normal");
}

/// Nobody waits at the start until more than this is read: 16 MB, some 50 ms.
constexpr int kPagesCheckedAtOpening = 4096;

/// Quick, because it is done at each start; `inspect` and `backup` look at everything. In a larger file what
/// is damaged is refused when it is read.
Result<void> checkSound(Connection& connection) {
  CW_TRY(pages, connection.pragmaNumber("page_count"));
  if (pages > kPagesCheckedAtOpening) return {};
  CW_TRY(answer, connection.pragma("quick_check(1)"));
  if (answer == "ok") return {};
  return fail(ErrorCode::Corrupt, connection.file(), "", {"the shop file is damaged: %1", {answer}},
              "put back a backup");
}

Result<void> checkIntegrity(Connection& copy) {
  CW_TRY(faults, integrityFaults(copy));
  if (faults.empty()) return {};
  return fail(ErrorCode::Corrupt, copy.file(), "", {"the copy is damaged: %1", {faults.front()}},
              "put back a backup");
}

void removeAll(const fs::path& file) {
  std::error_code ignored;
  for (const char* ending : {"", "-wal", "-shm", "-journal"}) fs::remove(file.string() + ending, ignored);
}

}  // namespace

Database::Database(fs::path file) : m_file(std::move(file)) {}
Database::~Database() = default;
Database::Database(Database&&) noexcept = default;

Result<Database> Database::create(const fs::path& file, std::chrono::milliseconds patience) {
  CW_CHECK(claim(file));
  Database out(file);
  const auto build = [&]() -> Result<void> {
    CW_CHECK(out.connect(patience));
    CW_CHECK(out.m_connection->setPragma("application_id", std::to_string(kApplicationId)));
    CW_CHECK(out.settle(patience));
    return migrate(*out.m_connection);
  };
  if (auto built = build(); !built) {
    out.m_reader.reset(), out.m_connection.reset();
    removeAll(file);
    return fail(built.error());
  }
  return out;
}

Result<Database> Database::open(const fs::path& file, const Moment& now, std::chrono::milliseconds patience) {
  CW_CHECK(checkWritable(file));
  Database out(file);
  CW_CHECK(out.connect(patience));
  CW_CHECK(checkIdentity(*out.m_connection));
  CW_CHECK(checkSound(*out.m_connection));
  CW_CHECK(out.settle(patience));
  CW_CHECK(out.update(now));
  return out;
}

Result<void> Database::connect(std::chrono::milliseconds patience) {
  CW_TRY(connection, Connection::open(m_file, Connection::Access::Write, patience));
  m_connection = std::move(connection);
  return {};
}

Result<void> Database::settle(std::chrono::milliseconds patience) {
  CW_CHECK(chooseJournal(*m_connection, m_file));
  CW_CHECK(m_connection->setPragma("synchronous", "2"));
  CW_CHECK(m_connection->setPragma("foreign_keys", "1"));
  CW_CHECK(m_connection->setPragma("recursive_triggers", "1"));
  CW_TRY(reader, Connection::open(m_file, Connection::Access::Write, patience));
  m_reader = std::move(reader);
  return m_reader->setPragma("query_only", "1");
}

Result<void> Database::update(const Moment& now) {
  CW_TRY(version, m_connection->pragmaNumber("user_version"));
  if (version == newestVersion()) return {};
  fs::path copy = m_file;
  copy.replace_filename(m_file.stem().string() + "-before-" + std::to_string(newestVersion()) + "-" +
                        stamp(now) + m_file.extension().string());
  const auto copied = copyTo(*m_connection, copy, checkIntegrity);
  // A copy of this second is as good: another program is opening the file too.
  if (!copied && copied.error().code != ErrorCode::AlreadyDone) return fail(copied.error());
  return migrate(*m_connection);
}

}  // namespace cw

#pragma once
#include <chrono>
#include <filesystem>
#include <memory>

#include "core/base/clock.h"
#include "core/base/result.h"

namespace cw {

class Connection;

/// How long to wait for another program that is writing.
inline constexpr std::chrono::milliseconds kPatience{5000};

/// An open shop file: checked, with the settings that keep entries safe, and at the newest schema.
/// It stays on the thread that opened it; a QCoreApplication must exist. It must outlive the repositories.
class Database {
 public:
  /// Makes a new file. AlreadyDone if one is there; after any error there is none.
  static Result<Database> create(const std::filesystem::path& file,
                                 std::chrono::milliseconds patience = kPatience);

  /// Opens a file that is there and never makes one. An older schema is brought up to date, after a verified
  /// copy "NAME-before-2-20260304T140506Z.EXT" was put beside it. Storage (missing, a folder), ReadOnly,
  /// Locked, Corrupt (no shop file, damaged), NewerVersion, DiskFull.
  static Result<Database> open(const std::filesystem::path& file, const Moment& now,
                               std::chrono::milliseconds patience = kPatience);

  ~Database();
  Database(Database&&) noexcept;
  Database& operator=(Database&&) = delete;

  const std::filesystem::path& file() const { return m_file; }

  /// For core/store only. `reader` sees the file and not the first one's cache.
  Connection& connection() { return *m_connection; }
  Connection& reader() { return *m_reader; }

 private:
  explicit Database(std::filesystem::path file);
  Result<void> connect(std::chrono::milliseconds patience);
  Result<void> settle(std::chrono::milliseconds patience);
  Result<void> update(const Moment& now);

  std::filesystem::path m_file;
  std::unique_ptr<Connection> m_connection, m_reader;
};

/// "CLWR": what the header of a shop file says it is.
inline constexpr int kApplicationId = 0x434c5752;

}  // namespace cw

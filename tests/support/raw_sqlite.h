#pragma once
#include <gtest/gtest.h>
#include <sqlite3.h>

#include <filesystem>
#include <string>

namespace cw::test {

/// A connection past all of our own code, as somebody with a database shell has it.
class RawSqlite {
 public:
  explicit RawSqlite(const std::filesystem::path& file) { sqlite3_open(file.c_str(), &m_base); }
  ~RawSqlite() { sqlite3_close(m_base); }
  RawSqlite(const RawSqlite&) = delete;
  RawSqlite& operator=(const RawSqlite&) = delete;

  /// Runs statements; empty, or what SQLite said against it.
  std::string run(const std::string& statements) {
    char* words = nullptr;
    sqlite3_exec(m_base, statements.c_str(), nullptr, nullptr, &words);
    std::string out = words == nullptr ? "" : words;
    sqlite3_free(words);
    return out;
  }
  /// First column of the first row, as text.
  std::string ask(const std::string& question) {
    sqlite3_stmt* statement = nullptr;
    sqlite3_prepare_v2(m_base, question.c_str(), -1, &statement, nullptr);
    std::string out;
    if (sqlite3_step(statement) == SQLITE_ROW && sqlite3_column_type(statement, 0) != SQLITE_NULL)
      out = reinterpret_cast<const char*>(sqlite3_column_text(statement, 0));
    sqlite3_finalize(statement);
    return out;
  }

 private:
  sqlite3* m_base = nullptr;
};

/// Statements that must work.
inline void sqlite(const std::filesystem::path& file, const std::string& statements) {
  ASSERT_EQ(RawSqlite(file).run(statements), "");
}

}  // namespace cw::test

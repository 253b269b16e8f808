#pragma once
#include <sqlite3.h>

#include <filesystem>
#include <functional>
#include <string>

namespace cw::test {

/// Does something just before the n-th statement that a later connection of this process runs on a file, as
/// another program may at any time: what happens between two statements is not left to chance.
class BetweenStatements {
 public:
  explicit BetweenStatements(const std::filesystem::path& file) : m_file(file.string()) {
    sqlite3_auto_extension(reinterpret_cast<void (*)()>(watch));
    s_now = this;
  }
  ~BetweenStatements() {
    s_now = nullptr;
    sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(watch));
  }
  BetweenStatements(const BetweenStatements&) = delete;
  BetweenStatements& operator=(const BetweenStatements&) = delete;

  /// Runs `work`, and `other` before the n-th of its statements that hold `words`, counted from 1. False if
  /// it has fewer.
  bool run(int n, const std::function<void()>& work, std::function<void()> other,
           const std::string& words = "") {
    m_left = n;
    m_words = words;
    m_other = std::move(other);
    work();
    const bool reached = m_left == 0;
    m_left = 0;
    m_other = nullptr;
    return reached;
  }

 private:
  static int watch(sqlite3* base, char**, const void*) {
    return sqlite3_trace_v2(base, SQLITE_TRACE_STMT, begins, nullptr);
  }
  static int begins(unsigned, void*, void* statement, void* text) {
    if (s_now != nullptr &&
        s_now->counts(static_cast<sqlite3_stmt*>(statement), static_cast<const char*>(text)))
      s_now->m_other();
    return 0;
  }
  bool counts(sqlite3_stmt* statement, const char* text) {
    if (m_left == 0 || std::string(text).find(m_words) == std::string::npos) return false;
    const char* file = sqlite3_db_filename(sqlite3_db_handle(statement), "main");
    return file != nullptr && m_file == file && --m_left == 0;
  }

  inline static BetweenStatements* s_now = nullptr;
  std::string m_file, m_words;
  int m_left = 0;
  std::function<void()> m_other;
};

}  // namespace cw::test

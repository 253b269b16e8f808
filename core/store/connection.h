#pragma once
#include <QSqlQuery>
#include <chrono>
#include <cstdint>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <variant>
#include <vector>

#include "core/base/result.h"

namespace cw {

// Inside core/store only: the one place that speaks SQL.

/// Bytes that are not text to SQLite.
struct Blob {
  std::string_view bytes;
};

/// What stands for a `?`. Nothing becomes NULL.
class SqlValue {
 public:
  SqlValue(std::string_view text) : m_value(text) {}
  SqlValue(const std::string& text) : m_value(std::string_view(text)) {}
  SqlValue(const char* text) : m_value(std::string_view(text)) {}
  SqlValue(const std::optional<std::string>& text) {
    if (text) m_value = std::string_view(*text);
  }
  SqlValue(std::int64_t number) : m_value(number) {}
  SqlValue(int number) : m_value(std::int64_t{number}) {}
  SqlValue(bool value) : m_value(std::int64_t{value}) {}
  SqlValue(Blob blob) : m_value(blob) {}

  void bindTo(QSqlQuery& query) const;

 private:
  std::variant<std::monostate, std::int64_t, std::string_view, Blob> m_value;
};

using SqlValues = std::vector<SqlValue>;

/// The rows of an answer, one at a time. Columns count from 0.
class SqlRows {
 public:
  SqlRows(QSqlQuery query, std::string file) : m_query(std::move(query)), m_file(std::move(file)) {}

  /// Moves to the next row; false after the last. An error in between is never taken for the end.
  Result<bool> next();
  std::string text(int column) const;
  std::string bytes(int column) const;
  std::int64_t integer(int column) const;
  bool isNull(int column) const;

 private:
  QSqlQuery m_query;
  std::string m_file;
};

/// One connection to one file, closed with its owner. It stays on the thread that opened it, and a
/// QCoreApplication must exist.
class Connection {
 public:
  enum class Access { Write, Read };

  /// Opens a file that is there; never makes one. `patience`: how long to wait for another program's lock.
  static Result<std::unique_ptr<Connection>> open(const std::filesystem::path& file, Access access,
                                                  std::chrono::milliseconds patience);
  /// An empty database that no file holds.
  static Result<std::unique_ptr<Connection>> inMemory();
  ~Connection();
  Connection(const Connection&) = delete;
  Connection& operator=(const Connection&) = delete;

  Result<SqlRows> query(std::string_view sql, const SqlValues& values = {});
  Result<void> run(std::string_view sql, const SqlValues& values = {});
  /// The same statement once for each list of values, prepared once.
  Result<void> runEach(std::string_view sql, const std::vector<SqlValues>& all);
  /// The one value that a pragma answers with, as text.
  Result<std::string> pragma(std::string_view name);
  /// The same as a number; Corrupt if it is none.
  Result<std::int64_t> pragmaNumber(std::string_view name);
  /// Sets a pragma and reads it back. Storage if it did not take.
  Result<void> setPragma(std::string_view name, std::string_view value);

  const std::string& file() const { return m_file; }

 private:
  Connection(std::string name, std::string file) : m_name(std::move(name)), m_file(std::move(file)) {}
  static Result<std::unique_ptr<Connection>> openNamed(const std::string& source, const std::string& file,
                                                       std::chrono::milliseconds patience);
  friend class Transaction;
  friend class Snapshot;
  std::string m_name;  ///< of Qt's connection; a QSqlDatabase member would outlive removeDatabase
  std::string m_file;
  bool m_inTransaction = false;
};

/// Everything since BEGIN IMMEDIATE happens at `commit`, or not at all.
class Transaction {
 public:
  static Result<Transaction> begin(Connection& connection);
  /// The only success. After an error nothing has happened.
  Result<void> commit();
  ~Transaction();
  Transaction(Transaction&& other) noexcept : m_connection(std::exchange(other.m_connection, nullptr)) {}
  Transaction& operator=(Transaction&&) = delete;

 private:
  explicit Transaction(Connection& connection) : m_connection(&connection) {}
  Connection* m_connection;
};

/// All reads until its end see the file as it was at the first of them, whatever other programs write
/// meanwhile. Within a Transaction, or another Snapshot, it is part of that.
class Snapshot {
 public:
  explicit Snapshot(Connection& connection);
  ~Snapshot();
  Snapshot(const Snapshot&) = delete;
  Snapshot& operator=(const Snapshot&) = delete;
  /// To be asked before anything is read.
  const Result<void>& begun() const { return m_begun; }

 private:
  Connection* m_connection;  ///< nullptr: part of what was begun before
  Result<void> m_begun;
};

namespace sql {
template <class T>
struct Plain {
  using Row = T;
};
template <class T>
struct Plain<Result<T>> {
  using Row = T;
};
template <class Read>
using Row = typename Plain<std::decay_t<std::invoke_result_t<Read, const SqlRows&>>>::Row;
}  // namespace sql

/// Each row through `read`, which gives a Result or a plain value; the first error ends it.
template <class Read>
Result<std::vector<sql::Row<Read>>> collect(Connection& connection, std::string_view statement,
                                            const SqlValues& values, Read read) {
  CW_TRY(rows, connection.query(statement, values));
  std::vector<sql::Row<Read>> out;
  while (true) {
    CW_TRY(more, rows.next());
    if (!more) return out;
    CW_TRY(row, Result<sql::Row<Read>>(read(rows)));
    out.push_back(std::move(row));
  }
}

/// The first row through `read`, or nothing if there is none.
template <class Read>
Result<std::optional<sql::Row<Read>>> first(Connection& connection, std::string_view statement,
                                            const SqlValues& values, Read read) {
  CW_TRY(rows, connection.query(statement, values));
  CW_TRY(found, rows.next());
  if (!found) return std::optional<sql::Row<Read>>();
  CW_TRY(row, Result<sql::Row<Read>>(read(rows)));
  return std::optional(std::move(row));
}

}  // namespace cw

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
  /// Sets a pragma and reads it back. Storage if it did not take.
  Result<void> setPragma(std::string_view name, std::string_view value);

  const std::string& file() const { return m_file; }

 private:
  Connection(std::string name, std::string file) : m_name(std::move(name)), m_file(std::move(file)) {}
  static Result<std::unique_ptr<Connection>> openNamed(const std::string& source, const std::string& file,
                                                       std::chrono::milliseconds patience);
  std::string m_name;  ///< of Qt's connection; a QSqlDatabase member would outlive removeDatabase
  std::string m_file;
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

/// Each row through `read`, which gives a Result or a plain value.
template <class Read>
auto collect(Connection& connection, std::string_view sql, const SqlValues& values, Read read) {
  using Row = std::decay_t<std::invoke_result_t<Read, const SqlRows&>>;
  using Out = Result<std::vector<Row>>;
  auto rows = connection.query(sql, values);
  if (!rows) return Out(fail(rows.error()));
  std::vector<Row> out;
  while (true) {
    const auto more = rows->next();
    if (!more) return Out(fail(more.error()));
    if (!*more) return Out(std::move(out));
    out.push_back(read(*rows));
  }
}

/// The first row through `read`, or nothing if there is none.
template <class Read>
auto first(Connection& connection, std::string_view sql, const SqlValues& values, Read read) {
  using Row = std::decay_t<std::invoke_result_t<Read, const SqlRows&>>;
  using Out = Result<std::optional<Row>>;
  auto rows = connection.query(sql, values);
  if (!rows) return Out(fail(rows.error()));
  const auto found = rows->next();
  if (!found) return Out(fail(found.error()));
  return Out(*found ? std::optional<Row>(read(*rows)) : std::nullopt);
}

}  // namespace cw

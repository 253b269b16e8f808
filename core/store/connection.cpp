#include "core/store/connection.h"

#include <QFile>
#include <QSqlDatabase>
#include <QSqlError>
#include <QUrl>
#include <QVariant>
#include <atomic>
#include <charconv>

#include "core/store/storage_error.h"

namespace cw {
namespace {

std::string nextName() {
  static std::atomic<int> count{0};
  return "clampwright-" + std::to_string(++count);
}

QString sqlText(std::string_view text) {
  return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

}  // namespace

void SqlValue::bindTo(QSqlQuery& query) const {
  if (const auto* number = std::get_if<std::int64_t>(&m_value))
    query.addBindValue(QVariant::fromValue<qlonglong>(*number));
  else if (const auto* text = std::get_if<std::string_view>(&m_value))
    query.addBindValue(text->empty() ? QString(QLatin1String("")) : sqlText(*text));
  else if (const auto* blob = std::get_if<Blob>(&m_value))
    query.addBindValue(QByteArray(blob->bytes.data(), static_cast<qsizetype>(blob->bytes.size())));
  else
    query.addBindValue(QVariant(QMetaType::fromType<QString>()));
}

Result<bool> SqlRows::next() {
  if (m_query.next()) return true;
  if (m_query.lastError().isValid()) return fail(storageError(m_query.lastError(), m_file));
  return false;
}

std::string SqlRows::text(int column) const {
  return m_query.value(column).toString().toStdString();
}

std::string SqlRows::bytes(int column) const {
  return m_query.value(column).toByteArray().toStdString();
}

std::int64_t SqlRows::integer(int column) const {
  return m_query.value(column).toLongLong();
}

bool SqlRows::isNull(int column) const {
  return m_query.isNull(column);
}

Result<std::unique_ptr<Connection>> Connection::openNamed(const std::string& source, const std::string& file,
                                                          std::chrono::milliseconds patience) {
  std::unique_ptr<Connection> out(new Connection(nextName(), file));
  QSqlDatabase base = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), sqlText(out->m_name));
  base.setDatabaseName(sqlText(source));
  base.setConnectOptions(QStringLiteral("QSQLITE_OPEN_URI;QSQLITE_BUSY_TIMEOUT=%1").arg(patience.count()));
  if (!base.open()) return fail(storageError(base.lastError(), file));
  return out;
}

Result<std::unique_ptr<Connection>> Connection::open(const std::filesystem::path& file, Access access,
                                                     std::chrono::milliseconds patience) {
  // A URI, because only its mode keeps SQLite from making a file that is not there.
  const QByteArray where =
      QUrl::fromLocalFile(QFile::decodeName(std::filesystem::absolute(file).c_str())).toEncoded();
  const std::string mode = access == Access::Write ? "?mode=rw" : "?mode=ro";
  return openNamed(where.toStdString() + mode, file.string(), patience);
}

Result<std::unique_ptr<Connection>> Connection::inMemory() {
  return openNamed(":memory:", "memory", std::chrono::milliseconds{0});
}

Connection::~Connection() {
  QSqlDatabase::removeDatabase(sqlText(m_name));
}

Result<SqlRows> Connection::query(std::string_view sql, const SqlValues& values) {
  QSqlQuery query(QSqlDatabase::database(sqlText(m_name), false));
  query.setForwardOnly(true);
  if (!query.prepare(sqlText(sql))) return fail(storageError(query.lastError(), m_file));
  for (const SqlValue& value : values) value.bindTo(query);
  if (!query.exec()) return fail(storageError(query.lastError(), m_file));
  return SqlRows(std::move(query), m_file);
}

Result<void> Connection::run(std::string_view sql, const SqlValues& values) {
  CW_CHECK(query(sql, values));
  return {};
}

Result<void> Connection::runEach(std::string_view sql, const std::vector<SqlValues>& all) {
  QSqlQuery query(QSqlDatabase::database(sqlText(m_name), false));
  if (!query.prepare(sqlText(sql))) return fail(storageError(query.lastError(), m_file));
  for (const SqlValues& values : all) {
    for (const SqlValue& value : values) value.bindTo(query);
    if (!query.exec()) return fail(storageError(query.lastError(), m_file));
  }
  return {};
}

Result<std::string> Connection::pragma(std::string_view name) {
  CW_TRY(value,
         first(*this, "PRAGMA " + std::string(name), {}, [](const SqlRows& row) { return row.text(0); }));
  return value.value_or("");
}

Result<std::int64_t> Connection::pragmaNumber(std::string_view name) {
  CW_TRY(text, pragma(name));
  std::int64_t out = 0;
  const auto [end, wrong] = std::from_chars(text.data(), text.data() + text.size(), out);
  if (wrong == std::errc{} && end == text.data() + text.size() && !text.empty()) return out;
  return fail(ErrorCode::Corrupt, m_file, text, {"%1 is no number", {std::string(name)}},
              "put back a backup");
}

Result<void> Connection::setPragma(std::string_view name, std::string_view value) {
  const std::string pragmaName(name);
  CW_CHECK(run("PRAGMA " + pragmaName + "=" + std::string(value)));
  CW_TRY(now, pragma(name));
  if (now == value) return {};
  return fail(ErrorCode::Storage, m_file, now, {"the setting %1 stays at %2", {pragmaName, now}},
              {"it must be %1 to keep entries safe", {std::string(value)}});
}

Result<Transaction> Transaction::begin(Connection& connection) {
  CW_CHECK(connection.run("BEGIN IMMEDIATE"));
  connection.m_inTransaction = true;
  return Transaction(connection);
}

Result<void> Transaction::commit() {
  CW_CHECK(m_connection->run("COMMIT"));
  m_connection->m_inTransaction = false;
  m_connection = nullptr;
  return {};
}

Transaction::~Transaction() {
  // A full disk has rolled back by itself; then there is nothing left to undo and nothing to report.
  if (m_connection == nullptr) return;
  static_cast<void>(m_connection->run("ROLLBACK"));
  m_connection->m_inTransaction = false;
}

Snapshot::Snapshot(Connection& connection)
    : m_connection(connection.m_inTransaction ? nullptr : &connection) {
  if (m_connection == nullptr) return;
  m_begun = connection.run("BEGIN");
  connection.m_inTransaction = m_begun.has_value();
}

Snapshot::~Snapshot() {
  if (m_connection == nullptr || !m_begun) return;
  static_cast<void>(m_connection->run("COMMIT"));  // nothing was written
  m_connection->m_inTransaction = false;
}

}  // namespace cw

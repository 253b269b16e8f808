#include "core/store/inspect.h"

#include <fmt/format.h>

#include <map>

#include "core/base/digest.h"
#include "core/record/verify.h"
#include "core/store/connection.h"
#include "core/store/copy.h"
#include "core/store/database.h"
#include "core/store/file_system.h"
#include "core/store/identity.h"
#include "core/store/job_rows.h"
#include "core/store/migrations.h"
#include "core/store/row_faults.h"

namespace cw {
namespace {

/// Compares bytes piece by piece from their beginning.
class BytesInOrder {
 public:
  explicit BytesInOrder(std::string_view bytes) : m_rest(bytes) {}
  bool next(std::string_view piece) {
    if (!m_rest.starts_with(piece)) return false;
    m_rest.remove_prefix(piece.size());
    return true;
  }

 private:
  std::string_view m_rest;
};

/// Collects findings; each check goes on after the one before failed.
class Inspection {
 public:
  explicit Inspection(Connection& connection) : m_connection(connection) {}

  Result<Findings> all() {
    CW_CHECK(checkIdentity(m_connection));
    const std::pair<const char*, Result<void> (Inspection::*)()> checks[] = {
        {"damaged", &Inspection::pages}, {"reference", &Inspection::references},
        {"schema", &Inspection::schema}, {"row", &Inspection::rows},
        {"sheet", &Inspection::sheets},  {"chain", &Inspection::jobs}};
    for (const auto& [code, check] : checks)
      if (const auto checked = (this->*check)(); !checked) add(code, checked.error());
    return std::move(m_findings);
  }

 private:
  void add(std::string code, std::string place, Message problem, Message cure = "put back a backup") {
    m_findings.push_back(
        {Severity::Blocking, std::move(code), std::move(place), std::move(problem), std::move(cure)});
  }
  void add(std::string code, const Error& error) {
    add(std::move(code), error.place, error.problem, error.expected);
  }

  Result<void> pages() {
    CW_TRY(faults, integrityFaults(m_connection));
    for (const std::string& fault : faults) add("damaged", m_connection.file(), {"%1", {fault}});
    return {};
  }

  Result<void> references() {
    CW_TRY(rows, collect(m_connection, "PRAGMA foreign_key_check", {}, [](const SqlRows& row) {
             return row.text(0) + (row.isNull(1) ? "" : ", row " + row.text(1)) + " -> " + row.text(2);
           }));
    for (const std::string& row : rows) add("reference", row, "a row names another that is not there");
    return {};
  }

  /// Against a database made afresh at the file's own version.
  Result<void> schema() {
    const Snapshot moment(m_connection);
    CW_CHECK(moment.begun());
    CW_TRY(version, m_connection.pragmaNumber("user_version"));
    CW_TRY(fresh, Connection::inMemory());
    CW_CHECK(migrate(*fresh, static_cast<int>(version)));
    CW_TRY(wanted, schemaOf(*fresh));
    CW_TRY(found, schemaOf(m_connection));
    for (const auto& [name, sql] : wanted)
      if (const auto same = found.find(name); same == found.end())
        add("schema", name, "this table, index or guard is missing");
      else if (same->second != sql)
        add("schema", name, "this table, index or guard was altered");
    for (const auto& [name, sql] : found)
      if (!wanted.contains(name)) add("schema", name, "this is not the program's own", "remove it");
    return {};
  }

  Result<void> sheets() {
    CW_TRY(texts, collect(m_connection, "SELECT digest, bytes FROM sheet_text", {},
                          [](const SqlRows& row) { return std::pair(row.text(0), row.bytes(1)); }));
    for (const auto& [digest, bytes] : texts)
      if (hex(sha256(bytes)) != digest) add("sheet", "sheet " + digest, "its bytes do not have this digest");
    return {};
  }

  Result<void> rows() {
    CW_TRY(faults, rowFaults(m_connection));
    m_findings.insert(m_findings.end(), faults.begin(), faults.end());
    return {};
  }

  Result<void> jobs() {
    CW_TRY(shop, readIdentity(m_connection));
    CW_TRY(all, collect(m_connection,
                        "SELECT id FROM job WHERE id NOT IN (SELECT job FROM disposal)"
                        " UNION SELECT job FROM record",
                        {}, [](const SqlRows& row) { return row.text(0); }));
    for (const std::string& text : all) {
      const auto id = Id::parse(text);
      if (!id) continue;  // a finding of its row
      if (const auto checked = job(shop, *id); !checked) add("chain", checked.error());
    }
    return {};
  }

  /// Entries and record of one job, as of one moment.
  Result<void> job(const ShopIdentity& shop, const Id& id) {
    const Snapshot moment(m_connection);
    CW_CHECK(moment.begun());
    CW_TRY(gone, first(m_connection, "SELECT 1 FROM disposal WHERE job = ?", {id.text()},
                       [](const SqlRows&) { return true; }));
    if (gone) return {};
    CW_TRY(sealed, first(m_connection, "SELECT bytes, digest, head, count FROM record WHERE job = ?",
                         {id.text()}, [](const SqlRows& row) {
                           return SealedRow{row.bytes(0), row.text(1), row.text(2), row.integer(3)};
                         }));
    const bool good = sealed && record(id, *sealed, shop.key);
    if (sealed) CW_CHECK(addenda(id, sealed->bytes, shop.key));
    if (good) {
      CW_TRY(same, holdsTheRowsOf(shop.id, id, sealed->bytes));
      if (same) return {};
    }
    const auto folded = loadJob(m_connection, shop.id, id);
    if (!folded) return fail(folded.error());
    if (folded->entries.empty()) add("chain", "job " + id.text(), "it has no entries");
    if (sealed && hex(folded->head) != sealed->head)
      add("record", "record " + id.text(), "it is not the record of the job's entries");
    return {};
  }

  struct SealedRow {
    std::string bytes, digest, head;
    std::int64_t count = 0;
  };

  /// The record by itself: whole, and as its row says.
  bool record(const Id& job, const SealedRow& row, const PublicKey& key) {
    const std::size_t before = m_findings.size();
    const std::string place = "record " + job.text();
    const Verification verification = verifyRecord(row.bytes, key);
    for (const Finding& problem : verification.problems) add("record", place, {"%1", {sentence(problem)}});
    if (hex(sha256(row.bytes)) != row.digest || verification.head != row.head ||
        verification.count != row.count)
      add("record", place, "its row does not say what the record says");
    return m_findings.size() == before;
  }

  Result<void> addenda(const Id& job, const std::string& record, const PublicKey& key) {
    CW_TRY(numbers, collect(m_connection, "SELECT number FROM addendum WHERE job = ? ORDER BY number",
                            {job.text()}, [](const SqlRows& row) { return row.integer(0); }));
    for (std::size_t i = 0; i < numbers.size(); ++i)
      if (numbers[i] != static_cast<std::int64_t>(i) + 1)
        add("record", fmt::format("record {}, addendum {}", job.text(), i + 1), "this addendum is missing");
    CW_TRY(all, collect(m_connection, "SELECT bytes FROM addendum WHERE job = ? ORDER BY number",
                        {job.text()}, [](const SqlRows& row) { return row.bytes(0); }));
    for (const Finding& problem : verifyAddenda(record, all, key).problems)
      add("record", "record " + job.text(), {"%1", {sentence(problem)}});
    return {};
  }

  /// Are the rows of a job's entries, to the byte, the entries of its record? The record verified, so that
  /// nothing in them is read or hashed a second time; what the record does not hold is compared here.
  Result<bool> holdsTheRowsOf(const Id& shop, const Id& job, std::string_view record) {
    CW_TRY(sheet, first(m_connection, "SELECT digest FROM job WHERE id = ?", {job.text()},
                        [](const SqlRows& row) { return row.text(0); }));
    const auto digest = digestFromHex(sheet.value_or(""));
    if (!digest) return false;
    CW_TRY(rows, entryRows(m_connection, job, 0));
    BytesInOrder expected(record);
    std::string previous = hex(genesis(shop, job, *digest));
    std::int64_t sequence = 0;
    bool same = expected.next(fmt::format("{{\"count\":{},\"entries\":[", rows.size()));
    for (const EntryRow& row : rows) {
      same = same && row.sequence == ++sequence && row.previous == previous &&
             row.text.find(fmt::format("\"id\":\"{}\",\"kind\":\"{}\",\"seq\":{},", row.id, row.kind,
                                       row.sequence)) != std::string::npos &&
             (sequence == 1 || expected.next(",")) && expected.next("{\"entry\":") &&
             expected.next(row.text) && expected.next(",\"hash\":\"") && expected.next(row.hash) &&
             expected.next("\"}");
      if (!same) return false;
      previous = row.hash;
    }
    return same && expected.next("],\"format\":");
  }

  Connection& m_connection;
  Findings m_findings;
};

}  // namespace

Result<Findings> inspect(Connection& connection) {
  return Inspection(connection).all();
}

Result<Findings> inspectFile(const std::filesystem::path& file) {
  CW_CHECK(checkReadable(file));
  CW_TRY(connection, Connection::open(file, Connection::Access::Read, kPatience));
  return inspect(*connection);
}

Result<void> backUp(Connection& connection, const std::filesystem::path& target) {
  return copyTo(connection, target, [&](Connection& copy) -> Result<void> {
    CW_TRY(findings, inspect(copy));
    if (findings.empty()) return {};
    return fail(ErrorCode::Corrupt, connection.file(), "",
                {"it would be a copy of a damaged file: %1", {sentence(findings.front())}},
                "inspect the shop file");
  });
}

}  // namespace cw

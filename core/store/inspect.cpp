#include "core/store/inspect.h"

#include <algorithm>
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

namespace cw {
namespace {

/// Collects findings; each check goes on after the one before failed.
class Inspection {
 public:
  explicit Inspection(Connection& connection) : m_connection(connection) {}

  Result<Findings> all() {
    CW_CHECK(checkIdentity(m_connection));
    const std::pair<const char*, Result<void> (Inspection::*)()> checks[] = {
        {"damaged", &Inspection::pages}, {"reference", &Inspection::references},
        {"schema", &Inspection::schema}, {"sheet", &Inspection::sheets},
        {"chain", &Inspection::chains},  {"record", &Inspection::records}};
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
    CW_TRY(tables, collect(m_connection, "PRAGMA foreign_key_check", {},
                           [](const SqlRows& row) { return row.text(0) + " -> " + row.text(2); }));
    for (const std::string& table : tables) add("reference", table, "a row names another that is not there");
    return {};
  }

  /// Against a database made afresh at the file's own version.
  Result<void> schema() {
    CW_TRY(version, m_connection.pragma("user_version"));
    CW_TRY(fresh, Connection::inMemory());
    CW_CHECK(migrate(*fresh, std::stoi(version)));
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

  Result<void> chains() {
    CW_TRY(shop, readIdentity(m_connection));
    CW_TRY(jobs, collect(m_connection,
                         "SELECT id FROM job WHERE id NOT IN (SELECT job FROM disposal) ORDER BY started", {},
                         [](const SqlRows& row) { return row.text(0); }));
    for (const std::string& text : jobs) {
      CW_TRY(id, Id::parse(text));
      const auto job = loadJob(m_connection, shop.id, id);
      if (!job) add("chain", job.error());
      if (job && job->entries.empty()) add("chain", "job " + text, "it has no entries");
    }
    return {};
  }

  Result<void> records() {
    CW_TRY(shop, readIdentity(m_connection));
    CW_TRY(jobs, collect(m_connection, "SELECT job FROM record ORDER BY sealed", {},
                         [](const SqlRows& row) { return row.text(0); }));
    for (const std::string& job : jobs) CW_CHECK(record(job, shop.key));
    return {};
  }

  Result<void> record(const std::string& job, const PublicKey& key) {
    struct Line {
      std::string bytes, digest, head, lastHash;
    };
    CW_TRY(line, first(m_connection,
                       "SELECT bytes, digest, head, (SELECT hash FROM entry WHERE job = record.job"
                       " ORDER BY sequence DESC LIMIT 1) FROM record WHERE job = ?",
                       {job}, [](const SqlRows& row) {
                         return Line{row.bytes(0), row.text(1), row.text(2), row.text(3)};
                       }));
    const Verification verification = verifyRecord(line->bytes, key);
    for (const Finding& problem : verification.problems)
      add("record", "record " + job, {"%1", {sentence(problem)}});
    if (hex(sha256(line->bytes)) != line->digest || verification.head != line->head ||
        line->head != line->lastHash)
      add("record", "record " + job, "it is not the record of the job's entries");
    CW_TRY(addenda, collect(m_connection, "SELECT bytes FROM addendum WHERE job = ? ORDER BY number", {job},
                            [](const SqlRows& row) { return row.bytes(0); }));
    for (const Finding& problem : verifyAddenda(line->bytes, addenda, key).problems)
      add("record", "record " + job, {"%1", {sentence(problem)}});
    return {};
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

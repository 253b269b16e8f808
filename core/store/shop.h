#pragma once
#include <chrono>
#include <filesystem>
#include <memory>
#include <string>

#include "core/store/database.h"
#include "core/store/job_index.h"
#include "core/store/ledger.h"
#include "core/store/machines.h"
#include "core/store/people.h"
#include "core/store/records.h"
#include "core/store/sheets.h"
#include "core/store/shop_identity.h"
#include "core/store/shop_library.h"
#include "core/store/tools.h"

namespace cw {

struct ShopSettings {
  std::chrono::milliseconds patience = kPatience;
  std::chrono::milliseconds idle = std::chrono::minutes{15};  ///< see Ledger
};

/// An open shop file and everything in it: registers, sheets, jobs and records. One per process and file is
/// enough; several processes may have the same file open.
class Shop {
 public:
  /// Makes the file of a new shop. InvalidInput without a name; the errors of Database::create.
  static Result<std::unique_ptr<Shop>> create(const std::filesystem::path& file, const std::string& name,
                                              const PublicKey& key, Clock& clock,
                                              const ShopSettings& settings = {});
  /// The errors of Database::open.
  static Result<std::unique_ptr<Shop>> open(const std::filesystem::path& file, Clock& clock,
                                            const ShopSettings& settings = {});

  const ShopIdentity& identity() const { return m_identity; }
  const std::filesystem::path& file() const { return m_database.file(); }
  Database& database() { return m_database; }
  People& people() { return m_people; }
  Tools& tools() { return m_tools; }
  Machines& machines() { return m_machines; }
  Sheets& sheets() { return m_sheets; }
  Ledger& ledger() { return m_ledger; }
  Records& records() { return m_records; }
  ShopLibrary& library() { return m_library; }

  /// Jobs and records that fit, the latest first; see findJobs in core/store/job_index.h.
  Result<Listed<JobRow>> findJobs(const JobQuery& query);
  /// A verified copy; see backUp in core/store/inspect.h.
  Result<void> backUpTo(const std::filesystem::path& target);

 private:
  Shop(Database database, ShopIdentity identity, Clock& clock, const ShopSettings& settings);

  Database m_database;
  ShopIdentity m_identity;
  People m_people;
  Tools m_tools;
  Machines m_machines;
  Sheets m_sheets;
  ShopLibrary m_library;
  Ledger m_ledger;
  Records m_records;
};

}  // namespace cw

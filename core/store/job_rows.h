#pragma once
#include <string>

#include "core/base/id.h"
#include "core/record/job.h"
#include "core/store/connection.h"

namespace cw {

/// A job as its rows say, folded anew and its chain checked link by link. NotFound; Corrupt with
/// "job …, entry N" as place for the first bad entry.
Result<Job> loadJob(Connection& connection, const Id& shop, const Id& job);

/// Takes in the entries that the file has beyond `job`. The same errors; Corrupt too if the file has fewer.
Result<void> catchUp(Connection& connection, Job& job);

/// Hash of a job's last entry in the file; empty if it has none.
Result<std::string> headOf(Connection& connection, const Id& job);

/// One row of the table, with the people and tools it names. Inside a transaction.
Result<void> insertEntry(Connection& connection, const Id& job, const Entry& entry, const Digest& previous);

/// What the table holds for an entry's id.
struct StoredEntry {
  Id job;
  int sequence = 0;
  std::string kind, text, hash;
};
Result<std::optional<StoredEntry>> storedEntry(Connection& connection, const Id& entry);

}  // namespace cw

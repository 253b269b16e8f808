#pragma once
#include <cstdint>
#include <string>
#include <vector>

#include "core/base/id.h"
#include "core/record/judge.h"
#include "core/store/connection.h"

namespace cw {

/// A job as its rows say, judged and folded anew and its chain checked link by link. NotFound; Corrupt with
/// "job …, entry N" as place for the first bad entry.
Result<Job> loadJob(Connection& connection, const Id& shop, const Id& job);

/// Takes in the entries that the file has beyond `job`. The same errors; Corrupt too if the file has fewer.
Result<void> catchUp(Connection& connection, Job& job);

/// Hash of a job's last entry in the file; empty if it has none.
Result<std::string> headOf(Connection& connection, const Id& job);

/// One row of the table, with the people and tools it names that `job`, as it was before, does not. Inside a
/// transaction.
Result<void> insertEntry(Connection& connection, const Job& job, const Judged& entry, const Digest& previous);

/// What the table holds for an entry's id.
struct StoredEntry {
  Id job;
  int sequence = 0;
  std::string kind, text, hash;
};
Result<std::optional<StoredEntry>> storedEntry(Connection& connection, const Id& entry);

/// A row of the table of entries, as it stands there.
struct EntryRow {
  std::int64_t sequence = 0;
  std::string id, kind, text, previous, hash;
};
/// The rows of a job behind the first `after`, in their order.
Result<std::vector<EntryRow>> entryRows(Connection& connection, const Id& job, int after);

}  // namespace cw

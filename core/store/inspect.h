#pragma once
#include <filesystem>

#include "core/base/finding.h"
#include "core/base/result.h"

namespace cw {

class Connection;

/// Everything that is wrong with a shop file, read without changing it: pages and references, guards that
/// were removed or altered, sheets against their digests, every job's chain, every record and addendum
/// against the shop's key, every row that holds what its column may not. Empty if all is well; codes
/// "damaged", "reference", "schema", "row", "sheet", "chain", "record". Storage, Locked, NewerVersion, or
/// Corrupt for what is no shop file at all.
Result<Findings> inspectFile(const std::filesystem::path& file);

/// The same for a database that is open.
Result<Findings> inspect(Connection& connection);

/// A copy of the open shop file at `target`, which gets its name only after `inspect` found nothing in it.
/// AlreadyDone if there is such a file; Corrupt with the first finding; DiskFull, ReadOnly, Storage.
Result<void> backUp(Connection& connection, const std::filesystem::path& target);

}  // namespace cw

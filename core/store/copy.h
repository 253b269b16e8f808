#pragma once
#include <filesystem>
#include <functional>

#include "core/store/connection.h"

namespace cw {

/// A whole copy of the open database at `target`, which gets its name only after the copy passed SQLite's
/// integrity check and lies on the disk. AlreadyDone if `target` exists; Corrupt, DiskFull, ReadOnly,
/// Storage. `judge` may look at the copy before it gets its name.
Result<void> copyTo(
    Connection& connection, const std::filesystem::path& target,
    const std::function<Result<void>(Connection&)>& judge = [](Connection&) { return Result<void>(); });

/// Every answer of integrity_check but "ok".
Result<std::vector<std::string>> integrityFaults(Connection& connection);

}  // namespace cw

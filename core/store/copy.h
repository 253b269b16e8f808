#pragma once
#include <filesystem>
#include <functional>

#include "core/store/connection.h"

namespace cw {

/// A whole copy of the open database at `target`, which gets its name only after `judge` had nothing against
/// it and it lies on the disk. AlreadyDone if `target` exists; the errors of `judge`; DiskFull, ReadOnly,
/// Storage.
Result<void> copyTo(Connection& connection, const std::filesystem::path& target,
                    const std::function<Result<void>(Connection&)>& judge);

/// Every answer of integrity_check but "ok".
Result<std::vector<std::string>> integrityFaults(Connection& connection);

}  // namespace cw

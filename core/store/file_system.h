#pragma once
#include <cstdint>
#include <filesystem>

#include "core/base/result.h"

namespace cw {

/// Is this type of file system (f_type of statfs(2)) one whose files another machine may hold open? SQLite's
/// write-ahead log needs memory shared between its users and is unsafe there. User-space file systems count,
/// because what stands behind them cannot be seen.
bool isNetworkFileSystem(std::uint32_t type);

/// The type of the file system that holds `path`. Storage if it cannot be told.
Result<std::uint32_t> fileSystemType(const std::filesystem::path& path);

/// A file that is there, is no folder, and may be read. Storage or ReadOnly naming what is wrong.
Result<void> checkReadable(const std::filesystem::path& file);

/// And may be written together with its folder, where the write-ahead log lies.
Result<void> checkWritable(const std::filesystem::path& file);

/// Makes an empty file. AlreadyDone if there is one of that name; it is never replaced.
Result<void> claim(const std::filesystem::path& file);

/// Brings a file's bytes to the disk.
Result<void> flush(const std::filesystem::path& file);

/// Gives `from` the name `to` and makes that lasting. AlreadyDone if `to` exists.
Result<void> moveTo(const std::filesystem::path& from, const std::filesystem::path& to);

}  // namespace cw

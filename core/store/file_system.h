#pragma once
#include <cstdint>
#include <filesystem>
#include <string_view>

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

/// Makes a file of these bytes, with these rights, and brings it to the disk. AlreadyDone if there is one of
/// that name; after any other error the name is free again.
Result<void> make(const std::filesystem::path& file, std::string_view bytes, std::filesystem::perms rights);

/// Brings a file's bytes to the disk.
Result<void> flush(const std::filesystem::path& file);

/// Gives `from` the name `to` and makes that lasting. AlreadyDone if `to` exists.
Result<void> moveTo(const std::filesystem::path& from, const std::filesystem::path& to);

/// The same, in place of the file that has that name.
Result<void> moveOnto(const std::filesystem::path& from, const std::filesystem::path& to);

/// The error of the last system call, about `file`: AlreadyDone, DiskFull, ReadOnly or Storage.
tl::unexpected<Error> systemError(const std::filesystem::path& file);

}  // namespace cw

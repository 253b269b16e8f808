#pragma once
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace cw {

/// All bytes of a file. NotFound, Storage (a folder, unreadable) or OutOfRange (larger than `most`), with the
/// path as place.
Result<std::string> readFile(const std::string& path, std::int64_t most = 64 << 20);

enum class Access { Everybody, OwnerOnly };

/// Writes the file whole or not at all, flushed to the disk before it takes its name. DiskFull, ReadOnly or
/// Storage with the path as place.
Result<void> writeFile(const std::string& path, std::string_view bytes, Access access = Access::Everybody);

}  // namespace cw

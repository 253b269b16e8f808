#pragma once
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/store/output_place.h"

namespace cw {

/// All bytes of a file. NotFound, Storage (a folder, unreadable) or OutOfRange (larger than `most`), with the
/// path as place.
Result<std::string> readFile(const std::string& path, std::int64_t most = 64 << 20);

enum class Access { Everybody, OwnerOnly };

/// The one way a file is written: whole or not at all, flushed to the disk before it takes its name, and only
/// where outputPlace allows it. A file that is replaced keeps its rights. The errors of outputPlace,
/// DiskFull, ReadOnly or Storage with the path as place.
Result<void> writeFile(const std::string& path, std::string_view bytes, Existing existing = Existing::Kept,
                       Access access = Access::Everybody);

}  // namespace cw

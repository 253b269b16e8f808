#pragma once
#include <filesystem>
#include <optional>
#include <string>

#include "core/base/result.h"

namespace cw {

/// What becomes of a file that stands already where another is to be written.
enum class Existing { Kept, Replaced };

/// Where bytes may go.
struct OutputPlace {
  std::filesystem::path file;                 ///< no link: the ordinary file itself, or a free name
  std::optional<std::filesystem::perms> old;  ///< rights of the file that stands there
};

/// Judges a path before anything is written there. A free name and, where it may be replaced, an ordinary
/// file are good. InvalidInput, whatever was said of replacing, for a folder, a device, a pipe, a link that
/// leads nowhere, a database (so every shop file and backup) and its -wal, -shm and -journal, a secret key
/// file, and any file that this program holds open; all told by the file itself and not by its name, so that
/// no link and no other spelling leads round it. AlreadyDone for a file that is to be kept; ReadOnly;
/// Storage.
Result<OutputPlace> outputPlace(const std::string& path, Existing existing);

}  // namespace cw

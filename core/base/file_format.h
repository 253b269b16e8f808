#pragma once
#include "core/base/json.h"

namespace cw {

/// Is this a file of ours, of this format and at most this version? InvalidInput if "format" or "version" is
/// missing or another; NewerVersion if the version is above.
Result<void> checkFormat(JsonReader& file, std::string_view format, std::int64_t version);

}  // namespace cw

#pragma once
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace cw {

/// RFC 4648, section 4, with padding and without line ends.
std::string toBase64(std::string_view bytes);

/// InvalidInput for anything that toBase64 does not write.
Result<std::string> fromBase64(std::string_view text);

}  // namespace cw

#pragma once
#include <cstddef>
#include <string_view>

namespace cw {

/// Bytes of the well-formed UTF-8 sequence (RFC 3629) at the start of `text`; 0 if there is none.
std::size_t utf8SequenceLength(std::string_view text);

/// True if all of `text` is well-formed UTF-8 (no surrogates, no overlong forms, at most U+10FFFF).
bool isUtf8(std::string_view text);

}  // namespace cw

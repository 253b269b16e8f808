#pragma once
#include <string>
#include <string_view>

namespace cw {

/// The first thing in `text` that no line for people carries, or nothing: a byte of malformed UTF-8, a
/// control character (line ends and tabs too), a zero-width one that joins nothing, or one that turns the
/// direction of text round (U+061C, U+200E/F, U+202A–202E, U+2066–2069). Joiners (U+200C, U+200D) belong to
/// letters.
std::string_view firstUnprintable(std::string_view text);

/// The same text with each of them written out byte by byte: "\x1b".
std::string printable(std::string_view text);

/// The same JSON text with each of them written as JSON does: "\u001b". For text that is valid UTF-8.
std::string printableJson(std::string_view json);

}  // namespace cw

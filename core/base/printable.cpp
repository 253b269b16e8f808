#include "core/base/printable.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/base/utf8.h"

namespace cw {
namespace {

bool isBetween(std::string_view character, std::string_view first, std::string_view last) {
  return character.size() == first.size() && character >= first && character <= last;
}

bool isUnprintable(std::string_view character) {
  if (character.size() == 1) return isBetween(character, {"\0", 1}, "\x1f") || character == "\x7f";
  return isBetween(character, "\u0080", "\u009f") || character == "\u061c" || character == "\u200b" ||
         isBetween(character, "\u200e", "\u200f") || isBetween(character, "\u2028", "\u202e") ||
         isBetween(character, "\u2060", "\u206f") || character == "\ufeff";
}

/// Calls `each(character, isSound)`; a byte that begins no sequence is a character of its own.
template <class Each>
void forEachCharacter(std::string_view text, Each each) {
  while (!text.empty()) {
    const std::size_t length = utf8SequenceLength(text);
    const std::string_view character = text.substr(0, std::max<std::size_t>(length, 1));
    each(character, length > 0 && !isUnprintable(character));
    text.remove_prefix(character.size());
  }
}

/// Of a sequence of one to three bytes: nothing unprintable is longer.
unsigned codePoint(std::string_view character) {
  unsigned out = static_cast<unsigned char>(character[0]) & (character.size() == 1   ? 0xffu
                                                             : character.size() == 2 ? 0x1fu
                                                                                     : 0x0fu);
  for (const char byte : character.substr(1)) out = out << 6 | (static_cast<unsigned char>(byte) & 0x3fu);
  return out;
}

}  // namespace

std::string_view firstUnprintable(std::string_view text) {
  std::string_view found;
  forEachCharacter(text, [&](std::string_view character, bool isSound) {
    if (!isSound && found.empty()) found = character;
  });
  return found;
}

std::string printable(std::string_view text) {
  std::string out;
  forEachCharacter(text, [&](std::string_view character, bool isSound) {
    if (isSound)
      out += character;
    else
      for (const char byte : character) out += fmt::format("\\x{:02x}", static_cast<unsigned char>(byte));
  });
  return out;
}

std::string printableJson(std::string_view json) {
  std::string out;
  forEachCharacter(json, [&](std::string_view character, bool isSound) {
    out += isSound ? std::string(character) : fmt::format("\\u{:04x}", codePoint(character));
  });
  return out;
}

}  // namespace cw

#include "core/base/error.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/base/utf8.h"

namespace cw {
namespace {

constexpr std::size_t kMostCharacters = 60;

/// True for what a sentence must not carry into a terminal: control, zero-width and direction characters.
bool isUnprintable(std::string_view character) {
  if (character.size() == 1) return character[0] < 0x20 || character[0] == 0x7f;
  const bool control = character >= "\u0080" && character <= "\u009f";
  const bool zeroWidth = character >= "\u200b" && character <= "\u200f";
  const bool direction =
      (character >= "\u2028" && character <= "\u202e") || (character >= "\u2060" && character <= "\u206f");
  return control || zeroWidth || direction || character == "\ufeff";
}

std::string escaped(std::string_view bytes) {
  std::string out;
  for (const char byte : bytes) out += fmt::format("\\x{:02x}", static_cast<unsigned char>(byte));
  return out;
}

}  // namespace

std::string sentence(const Error& error) {
  return sentence(error.place, error.problem, error.expected);
}

Error within(std::string outer, Error error) {
  if (error.place.empty()) {
    error.place = std::move(outer);
  } else if (!outer.empty()) {
    error.place = outer + (error.place.front() == '[' ? "" : ".") + error.place;
  }
  return error;
}

int exitCode(ErrorCode code) {
  switch (code) {
    case ErrorCode::Corrupt:
    case ErrorCode::NewerVersion:
    case ErrorCode::Locked:
    case ErrorCode::ReadOnly:
    case ErrorCode::DiskFull:
    case ErrorCode::Storage:
    case ErrorCode::Conflict:
      return 3;
    default:
      return 2;
  }
}

std::string shown(std::string_view value) {
  std::string out;
  for (std::size_t count = 0; !value.empty(); ++count) {
    if (count == kMostCharacters) return out + "…";
    const std::size_t length = utf8SequenceLength(value);
    const std::string_view character = value.substr(0, std::max<std::size_t>(length, 1));
    out += length == 0 || isUnprintable(character) ? escaped(character) : std::string(character);
    value.remove_prefix(character.size());
  }
  return out;
}

}  // namespace cw

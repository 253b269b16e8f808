#include "core/base/error.h"

#include <algorithm>

#include "core/base/printable.h"
#include "core/base/utf8.h"

namespace cw {
namespace {

constexpr std::size_t kMostCharacters = 60;

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
    out += printable(character);
    value.remove_prefix(character.size());
  }
  return out;
}

}  // namespace cw

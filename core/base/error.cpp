#include "core/base/error.h"

#include <fmt/format.h>

#include "core/base/utf8.h"

namespace cw {

std::string sentence(const Error& error) {
  std::string out = error.place.empty() ? std::string() : error.place + ": ";
  out += plain(error.problem);
  if (!error.expected.empty()) out += "; " + plain(error.expected);
  return out + ".";
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
  constexpr std::size_t kMost = 60;
  std::string out;
  std::size_t characters = 0;
  for (std::size_t i = 0; i < value.size() && characters < kMost; ++characters) {
    const std::size_t length = utf8SequenceLength(value.substr(i));
    const auto byte = static_cast<unsigned char>(value[i]);
    if (length == 0 || byte < 0x20 || byte == 0x7f) {
      out += fmt::format("\\x{:02x}", byte);
      ++i;
    } else {
      out += value.substr(i, length);
      i += length;
    }
    if (characters + 1 == kMost && i < value.size()) out += "…";
  }
  return out;
}

}  // namespace cw

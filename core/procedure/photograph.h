#pragma once
#include <string>

#include "core/base/json.h"
#include "core/base/result.h"

namespace cw {

/// A picture of the line in the source, byte for byte, so that whoever holds the sheet can see what was read.
struct Photograph {
  std::string name;   ///< of the file it came from
  std::string bytes;  ///< JPEG or PNG
  bool operator==(const Photograph&) const = default;
};

inline constexpr std::size_t kMostPhotographBytes = 6u << 20;

/// InvalidInput unless the bytes begin as a JPEG or PNG file does; OutOfRange above the limit.
Result<Photograph> photograph(std::string name, std::string bytes);

/// {"bytes": base64, "name", "sha256"}.
Json photographToJson(const Photograph& photograph);

/// The errors of `photograph`; InvalidInput if the digest is not that of the bytes.
Result<Photograph> photographFromJson(const Json& json, const std::string& place);

}  // namespace cw

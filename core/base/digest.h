#pragma once
#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace cw {

using Digest = std::array<std::uint8_t, 32>;

/// SHA-256 (FIPS 180-4) of the bytes.
Digest sha256(std::string_view bytes);

/// Lower-case hexadecimal, two digits a byte.
std::string hex(std::string_view bytes);
std::string hex(const Digest& digest);

/// Bytes from an even number of lower-case hexadecimal digits; InvalidInput otherwise.
Result<std::string> bytesFromHex(std::string_view text);

/// A digest from 64 lower-case hexadecimal digits; InvalidInput otherwise.
Result<Digest> digestFromHex(std::string_view text);

std::string_view bytesOf(const Digest& digest);

}  // namespace cw

#include "core/base/digest.h"

#include <sodium.h>

#include <algorithm>

namespace cw {

Digest sha256(std::string_view bytes) {
  Digest out{};
  crypto_hash_sha256(out.data(), reinterpret_cast<const unsigned char*>(bytes.data()), bytes.size());
  return out;
}

std::string hex(std::string_view bytes) {
  static constexpr char kDigits[] = "0123456789abcdef";
  std::string out;
  out.reserve(bytes.size() * 2);
  for (const char c : bytes) {
    const auto byte = static_cast<unsigned char>(c);
    out += kDigits[byte >> 4];
    out += kDigits[byte & 15];
  }
  return out;
}

std::string hex(const Digest& digest) {
  return hex(bytesOf(digest));
}

Result<std::string> bytesFromHex(std::string_view text) {
  const auto nibble = [](char c) {
    return c >= '0' && c <= '9' ? c - '0' : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
  };
  const bool sound =
      text.size() % 2 == 0 && std::all_of(text.begin(), text.end(), [&](char c) { return nibble(c) >= 0; });
  if (!sound)
    return fail(ErrorCode::InvalidInput, "", text, {"“%1” is not hexadecimal", {shown(text)}},
                "write an even number of the digits 0-9 and a-f");
  std::string out;
  for (std::size_t i = 0; i < text.size(); i += 2)
    out += static_cast<char>(nibble(text[i]) * 16 + nibble(text[i + 1]));
  return out;
}

Result<Digest> digestFromHex(std::string_view text) {
  CW_TRY(bytes, bytesFromHex(text));
  Digest out{};
  if (bytes.size() != out.size())
    return fail(ErrorCode::InvalidInput, "", text, {"“%1” is not a SHA-256 digest", {shown(text)}},
                "write 64 hexadecimal digits");
  std::copy(bytes.begin(), bytes.end(), reinterpret_cast<char*>(out.data()));
  return out;
}

std::string_view bytesOf(const Digest& digest) {
  return {reinterpret_cast<const char*>(digest.data()), digest.size()};
}

}  // namespace cw

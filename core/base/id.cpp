#include "core/base/id.h"

#include <sodium.h>

#include <array>
#include <cstdint>

#include "core/base/digest.h"

namespace cw {

Result<Id> Id::parse(std::string_view text) {
  std::string folded;
  for (const char c : text) folded += c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c;
  bool sound = folded.size() == 36;
  for (std::size_t i = 0; sound && i < folded.size(); ++i) {
    const bool dash = i == 8 || i == 13 || i == 18 || i == 23;
    const char c = folded[i];
    sound = dash ? c == '-' : (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f');
  }
  if (sound) return Id(std::move(folded));
  return fail(ErrorCode::InvalidInput, "", text, {"“%1” is not a UUID", {shown(text)}},
              "write 32 hexadecimal digits in groups of 8-4-4-4-12");
}

Id Id::make(const Moment& now) {
  std::array<std::uint8_t, 16> bytes{};
  randombytes_buf(bytes.data(), bytes.size());
  auto milliseconds = static_cast<std::uint64_t>(now.utc.time_since_epoch().count());
  for (std::size_t i = 6; i-- > 0; milliseconds >>= 8) bytes[i] = static_cast<std::uint8_t>(milliseconds);
  bytes[6] = static_cast<std::uint8_t>((bytes[6] & 0x0F) | 0x70);
  bytes[8] = static_cast<std::uint8_t>((bytes[8] & 0x3F) | 0x80);
  std::string text = hex({reinterpret_cast<const char*>(bytes.data()), bytes.size()});
  for (const std::size_t at : {20U, 16U, 12U, 8U}) text.insert(at, "-");
  return Id(std::move(text));
}

}  // namespace cw

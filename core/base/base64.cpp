#include "core/base/base64.h"

#include <sodium.h>

namespace cw {

std::string toBase64(std::string_view bytes) {
  constexpr int kVariant = sodium_base64_VARIANT_ORIGINAL;
  std::string out(sodium_base64_encoded_len(bytes.size(), kVariant), '\0');
  sodium_bin2base64(out.data(), out.size(), reinterpret_cast<const unsigned char*>(bytes.data()),
                    bytes.size(), kVariant);
  out.pop_back();  // the terminating zero that the length counts
  return out;
}

Result<std::string> fromBase64(std::string_view text) {
  std::string out(text.size() / 4 * 3 + 3, '\0');
  std::size_t size = 0;
  const char* end = nullptr;
  const int failed = sodium_base642bin(reinterpret_cast<unsigned char*>(out.data()), out.size(), text.data(),
                                       text.size(), nullptr, &size, &end, sodium_base64_VARIANT_ORIGINAL);
  if (failed != 0 || end != text.data() + text.size())
    return fail(ErrorCode::InvalidInput, "", text, {"“%1” is not base64", {shown(text)}},
                "write it as RFC 4648 says, with padding and without line ends");
  out.resize(size);
  return out;
}

}  // namespace cw

#include "core/shop/person.h"

#include <sodium.h>

#include <algorithm>

namespace cw {
Result<void> checkSign(std::string_view sign) {
  const bool sound = !sign.empty() && sign.size() <= 24 && std::all_of(sign.begin(), sign.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
  });
  if (sound) return {};
  return fail(ErrorCode::InvalidInput, "sign", sign, {"“%1” cannot be a sign", {shown(sign)}},
              "write 1 to 24 of the letters a to z, digits and -");
}

Result<std::string> hashPin(std::string_view pin, PinStrength strength) {
  const bool digits = std::all_of(pin.begin(), pin.end(), [](char c) { return c >= '0' && c <= '9'; });
  if (!digits || pin.size() < 4 || pin.size() > 12)
    return fail(ErrorCode::InvalidInput, "PIN", "", "this cannot be a PIN", "choose 4 to 12 digits");
  const bool quick = strength == PinStrength::Quick;
  std::array<char, crypto_pwhash_STRBYTES> out{};
  if (sodium_init() < 0 ||
      crypto_pwhash_str(out.data(), pin.data(), pin.size(),
                        quick ? crypto_pwhash_OPSLIMIT_MIN : crypto_pwhash_OPSLIMIT_INTERACTIVE,
                        quick ? crypto_pwhash_MEMLIMIT_MIN : crypto_pwhash_MEMLIMIT_INTERACTIVE) != 0)
    return fail(ErrorCode::Storage, "PIN", "", "there is not enough memory to protect the PIN",
                "close other programs");
  return std::string(out.data());
}

bool pinMatches(const std::string& hash, std::string_view pin) {
  return !hash.empty() && sodium_init() >= 0 &&
         crypto_pwhash_str_verify(hash.c_str(), pin.data(), pin.size()) == 0;
}

}  // namespace cw

#pragma once
#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace cw {

/// The shop's public sealing key (Ed25519).
struct PublicKey {
  std::array<std::uint8_t, 32> bytes{};
  bool operator==(const PublicKey&) const = default;
};

/// The secret half. It lives in a file of its own, never in the shop file or its backups.
struct SecretKey {
  std::array<std::uint8_t, 64> bytes{};
};

using Signature = std::array<std::uint8_t, 64>;

SecretKey makeKey();
PublicKey publicOf(const SecretKey& key);

/// First 16 hexadecimal digits of SHA-256("clampwright.key.v1\n" ‖ public key).
std::string keyId(const PublicKey& key);

/// Ed25519 (RFC 8032) over the bytes, and its check.
Signature sign(std::string_view bytes, const SecretKey& key);
bool verifies(std::string_view bytes, const Signature& signature, const PublicKey& key);

/// {"format":"clampwright.key","id":…,"public":hex,"version":1}
std::string writePublicKey(const PublicKey& key);
Result<PublicKey> readPublicKey(std::string_view text);

/// {"format":"clampwright.secret-key","secret":hex,"version":1}
std::string writeSecretKey(const SecretKey& key);
Result<SecretKey> readSecretKey(std::string_view text);

std::string hex(const Signature& signature);
Result<Signature> signatureFromHex(std::string_view text);

}  // namespace cw

#include "core/record/key.h"

#include <sodium.h>

#include <algorithm>

#include "core/base/digest.h"
#include "core/base/json.h"

namespace cw {
namespace {

template <std::size_t N>
std::string_view view(const std::array<std::uint8_t, N>& bytes) {
  return {reinterpret_cast<const char*>(bytes.data()), N};
}

template <std::size_t N>
Result<std::array<std::uint8_t, N>> bytesOfSize(std::string_view text, const std::string& place) {
  auto bytes = bytesFromHex(text);
  if (!bytes) return fail(within(place, bytes.error()));
  std::array<std::uint8_t, N> out{};
  if (bytes->size() != N)
    return fail(ErrorCode::InvalidInput, place, text, {"this has %1 digits", {std::to_string(text.size())}},
                {"write %1 hexadecimal digits", {std::to_string(2 * N)}});
  std::copy(bytes->begin(), bytes->end(), reinterpret_cast<char*>(out.data()));
  return out;
}

template <std::size_t N>
Result<std::array<std::uint8_t, N>> readKeyFile(std::string_view text, std::string_view format,
                                                std::string_view field) {
  CW_TRY(json, parseJson(text, {4096, 4, 16}));
  CW_TRY(reader, JsonReader::of(json, "key"));
  CW_TRY(found, reader.text("format"));
  if (found != format)
    return fail(ErrorCode::InvalidInput, "key.format", found,
                {"“%1” is not this kind of key", {shown(found)}},
                {"a file of format %1", {std::string(format)}});
  CW_TRY(digits, reader.text(field));
  return bytesOfSize<N>(digits, "key." + std::string(field));
}

}  // namespace

SecretKey makeKey() {
  SecretKey key;
  PublicKey unused;
  crypto_sign_keypair(unused.bytes.data(), key.bytes.data());
  return key;
}

PublicKey publicOf(const SecretKey& key) {
  PublicKey out;
  crypto_sign_ed25519_sk_to_pk(out.bytes.data(), key.bytes.data());
  return out;
}

std::string keyId(const PublicKey& key) {
  return hex(sha256("clampwright.key.v1\n" + std::string(view(key.bytes)))).substr(0, 16);
}

Signature sign(std::string_view bytes, const SecretKey& key) {
  Signature out{};
  crypto_sign_detached(out.data(), nullptr, reinterpret_cast<const unsigned char*>(bytes.data()),
                       bytes.size(), key.bytes.data());
  return out;
}

bool verifies(std::string_view bytes, const Signature& signature, const PublicKey& key) {
  return crypto_sign_verify_detached(signature.data(), reinterpret_cast<const unsigned char*>(bytes.data()),
                                     bytes.size(), key.bytes.data()) == 0;
}

std::string writePublicKey(const PublicKey& key) {
  Json out;
  out.set("format", "clampwright.key")
      .set("version", 1)
      .set("id", keyId(key))
      .set("public", hex(view(key.bytes)));
  return canonical(out) + "\n";
}

Result<PublicKey> readPublicKey(std::string_view text) {
  CW_TRY(bytes, readKeyFile<32>(text, "clampwright.key", "public"));
  return PublicKey{bytes};
}

std::string writeSecretKey(const SecretKey& key) {
  Json out;
  out.set("format", "clampwright.secret-key").set("version", 1).set("secret", hex(view(key.bytes)));
  return canonical(out) + "\n";
}

Result<SecretKey> readSecretKey(std::string_view text) {
  CW_TRY(bytes, readKeyFile<64>(text, "clampwright.secret-key", "secret"));
  return SecretKey{bytes};
}

std::string hex(const Signature& signature) {
  return hex(view(signature));
}

Result<Signature> signatureFromHex(std::string_view text) {
  return bytesOfSize<64>(text, "signature");
}

}  // namespace cw

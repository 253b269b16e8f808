#pragma once
#include <compare>
#include <string>
#include <string_view>

#include "core/base/clock.h"
#include "core/base/result.h"

namespace cw {

/// A UUID in its canonical lower-case text (RFC 9562). Empty only when default-made.
class Id {
 public:
  Id() = default;

  /// Any UUID of RFC 9562 text form; upper case is folded. InvalidInput otherwise.
  static Result<Id> parse(std::string_view text);

  /// A version 7 UUID: 48 bits of Unix milliseconds, then randomness from libsodium.
  static Id make(const Moment& now);

  const std::string& text() const { return m_text; }
  bool empty() const { return m_text.empty(); }
  auto operator<=>(const Id&) const = default;

 private:
  explicit Id(std::string text) : m_text(std::move(text)) {}
  std::string m_text;
};

}  // namespace cw

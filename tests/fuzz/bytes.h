#pragma once
#include <cmath>
#include <cstdint>
#include <cstring>

namespace cw::fuzz {

/// Takes an arbitrary input apart into choices and numbers; past its end come zeros.
class Bytes {
 public:
  Bytes(const std::uint8_t* data, std::size_t size) : m_data(data), m_left(size) {}

  bool empty() const { return m_left == 0; }

  std::uint8_t byte() {
    if (m_left == 0) return 0;
    --m_left;
    return *m_data++;
  }

  std::size_t choice(std::size_t count) { return byte() % count; }

  /// Mostly a number such as people type, from a millionth to a million and either sign; sometimes any double
  /// at all, NaN and infinity included.
  double number() {
    const std::uint8_t kind = byte();
    if (kind >= 240) return anyDouble();
    const double digits = static_cast<double>(byte() * 256 + byte());
    const double value = digits * std::pow(10.0, kind % 12 - 8);
    return kind >= 200 ? -value : value;
  }

  /// From 0 to 1.
  double share() { return static_cast<double>(byte()) / 255; }

 private:
  double anyDouble() {
    std::uint8_t bits[sizeof(double)];
    for (std::uint8_t& bit : bits) bit = byte();
    double value = 0;
    std::memcpy(&value, bits, sizeof value);
    return value;
  }

  const std::uint8_t* m_data;
  std::size_t m_left;
};

}  // namespace cw::fuzz

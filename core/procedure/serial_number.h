#pragma once
#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace cw {

/// A serial number as it is compared: its last group of digits, and what stands round it.
struct SerialNumber {
  std::string before;  ///< folded: lower case, no blanks, hyphens or underscores
  std::string digits;  ///< without leading zeros; "0" for zero
  std::string after;   ///< folded

  bool operator==(const SerialNumber&) const = default;
};

/// Nothing if there are no digits in it.
std::optional<SerialNumber> serialNumber(std::string_view text);

/// By value, however many digits.
std::strong_ordering compareDigits(const std::string& a, const std::string& b);

/// The next number after "PS40-0480", and the one before it: "PS40-0481", "PS40-0479". Nothing before zero.
std::string serialAfter(std::string text);
std::optional<std::string> serialBefore(std::string text);

}  // namespace cw

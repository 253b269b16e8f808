#include "core/procedure/serial_number.h"

#include "core/fastener/folded_name.h"

namespace cw {
namespace {

constexpr std::string_view kDigits = "0123456789";

/// Where the last group of digits begins and ends; both at the end if there is none.
std::pair<std::size_t, std::size_t> lastGroup(std::string_view text) {
  const std::size_t last = text.find_last_of(kDigits);
  if (last == text.npos) return {text.size(), text.size()};
  const std::size_t before = text.find_last_not_of(kDigits, last);
  return {before == text.npos ? 0 : before + 1, last + 1};
}

}  // namespace

std::optional<SerialNumber> serialNumber(std::string_view text) {
  const auto [begin, end] = lastGroup(text);
  if (begin == end) return std::nullopt;
  const std::string_view group = text.substr(begin, end - begin);
  const std::size_t first = std::min(group.find_first_not_of('0'), group.size() - 1);
  return SerialNumber{foldedName(text.substr(0, begin)), std::string(group.substr(first)),
                      foldedName(text.substr(end))};
}

std::strong_ordering compareDigits(const std::string& a, const std::string& b) {
  return a.size() == b.size() ? a.compare(b) <=> 0 : a.size() <=> b.size();
}

std::string serialAfter(std::string text) {
  const auto [begin, end] = lastGroup(text);
  for (std::size_t at = end; at > begin; --at) {
    if (text[at - 1] != '9') {
      ++text[at - 1];
      return text;
    }
    text[at - 1] = '0';
  }
  return text.insert(begin, "1");
}

std::optional<std::string> serialBefore(std::string text) {
  const auto [begin, end] = lastGroup(text);
  for (std::size_t at = end; at > begin; --at) {
    if (text[at - 1] != '0') {
      --text[at - 1];
      return text;
    }
    text[at - 1] = '9';
  }
  return std::nullopt;
}

}  // namespace cw

#include "core/units/typed_text.h"

#include <algorithm>
#include <array>

namespace cw {
namespace {

constexpr auto kBlanks = std::to_array<std::string_view>(
    {" ", "\t", "\u00a0", "\u2002", "\u2003", "\u2007", "\u2008", "\u2009", "\u200a", "\u202f"});
constexpr auto kHyphens =
    std::to_array<std::string_view>({"-", "\u2010", "\u2011", "\u2012", "\u2013", "\u2014", "\u2212"});
constexpr auto kDots = std::to_array<std::string_view>({".", "*", "·", "⋅", "•", "∙", "×"});

template <class Signs>
std::size_t lengthAtStart(const Signs& signs, std::string_view text) {
  const auto found =
      std::find_if(signs.begin(), signs.end(), [&](auto sign) { return text.starts_with(sign); });
  return found == signs.end() ? 0 : found->size();
}

template <class Signs>
std::size_t lengthAtEnd(const Signs& signs, std::string_view text) {
  const auto found =
      std::find_if(signs.begin(), signs.end(), [&](auto sign) { return text.ends_with(sign); });
  return found == signs.end() ? 0 : found->size();
}

std::size_t joinerLength(std::string_view text) {
  return std::max({lengthAtStart(kBlanks, text), hyphenLength(text), lengthAtStart(kDots, text)});
}

char lowered(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

}  // namespace

std::size_t hyphenLength(std::string_view text) {
  return lengthAtStart(kHyphens, text);
}

std::string_view withoutOuterBlanks(std::string_view text) {
  while (const std::size_t length = lengthAtStart(kBlanks, text)) text.remove_prefix(length);
  while (const std::size_t length = lengthAtEnd(kBlanks, text)) text.remove_suffix(length);
  return text;
}

std::string joinedWords(std::string_view text) {
  std::string out;
  bool joined = false;
  while (!text.empty()) {
    if (const std::size_t joiner = joinerLength(text)) {
      joined = !out.empty();
      text.remove_prefix(joiner);
      continue;
    }
    if (joined) out += '-';
    joined = false;
    out += lowered(text.front());
    text.remove_prefix(1);
  }
  return out;
}

}  // namespace cw

#include "core/store/typed_words.h"

#include <algorithm>

namespace cw {
namespace {

bool separates(char c) {
  return static_cast<unsigned char>(c) <= ' ' || c == '\x7f';
}

/// Letters, figures, and whatever is not ASCII.
bool canBeFound(char c) {
  const auto byte = static_cast<unsigned char>(c);
  return byte >= 0x80 || (byte >= '0' && byte <= '9') || ((byte | 0x20) >= 'a' && (byte | 0x20) <= 'z');
}

std::string quoted(std::string_view word) {
  std::string out = "\"";
  for (const char c : word) out += c == '"' ? std::string("\"\"") : std::string(1, c);
  return out + "\"";
}

}  // namespace

std::vector<std::string> quotedWords(std::string_view typed) {
  std::vector<std::string> out;
  for (auto at = typed.begin(); at != typed.end();) {
    at = std::find_if_not(at, typed.end(), separates);
    const auto end = std::find_if(at, typed.end(), separates);
    if (std::any_of(at, end, canBeFound)) out.push_back(quoted({at, end}));
    at = end;
  }
  return out;
}

std::string everyBeginning(std::string_view typed) {
  std::string out;
  for (const std::string& word : quotedWords(typed)) out += word + "* ";
  return out;
}

}  // namespace cw

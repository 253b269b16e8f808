#include "core/fastener/folded_name.h"

namespace cw {
namespace {

bool isDecimalDigit(char c) {
  return c >= '0' && c <= '9';
}

char upper(char c) {
  return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

void replaceAll(std::string& text, std::string_view from, std::string_view to) {
  for (std::size_t at = 0; (at = text.find(from, at)) != std::string::npos; at += to.size())
    text.replace(at, from.size(), to);
}

/// Blanks go, but one between two digits parts a whole number from its fraction.
std::string withoutBlanks(std::string_view text) {
  std::string out;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != ' ') {
      out += text[i];
      continue;
    }
    const std::size_t next = text.find_first_not_of(' ', i);
    if (!out.empty() && isDecimalDigit(out.back()) && next != std::string_view::npos &&
        isDecimalDigit(text[next]))
      out += '-';
    i = next == std::string_view::npos ? text.size() : next - 1;
  }
  return out;
}

/// "1.50" becomes "1.5", "2.0" becomes "2".
std::string withoutTrailingZeros(std::string_view text) {
  std::string out;
  bool decimals = false;
  const auto finishNumber = [&] {
    if (!decimals) return;
    while (out.back() == '0') out.pop_back();
    if (out.back() == '.') out.pop_back();
    decimals = false;
  };
  for (const char c : text) {
    if (!isDecimalDigit(c)) finishNumber();
    if (c == '.' && !out.empty() && isDecimalDigit(out.back())) decimals = true;
    out += c;
  }
  finishNumber();
  return out;
}

bool takeSuffix(std::string& text, std::string_view suffix) {
  if (!text.ends_with(suffix)) return false;
  text.erase(text.size() - suffix.size());
  return true;
}

}  // namespace

std::string foldedName(std::string_view name) {
  std::string out;
  for (const char c : name)
    if (c != ' ' && c != '-' && c != '_') out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return out;
}

FoldedThread foldedThread(std::string_view written) {
  std::string text(written);
  for (char& c : text) c = upper(c);
  replaceAll(text, "×", "X");
  replaceAll(text, "\u2009", " ");
  replaceAll(text, "\u202f", " ");
  replaceAll(text, "\u00a0", " ");
  replaceAll(text, "NO.", "#");
  replaceAll(text, "–", "-");
  text = withoutBlanks(text);
  FoldedThread folded;
  folded.leftHand = takeSuffix(text, "-LH") || takeSuffix(text, "LH");
  folded.key = withoutTrailingZeros(text);
  return folded;
}

}  // namespace cw

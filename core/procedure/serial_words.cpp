#include <algorithm>

#include "core/procedure/serial_number.h"
#include "core/procedure/serials.h"

namespace cw {
namespace {

constexpr std::size_t kLongestSerial = 60;
constexpr std::size_t kLongestWords = 10'000;
constexpr std::string_view kBlank = " ";

using Ranges = std::vector<SerialRange>;

struct Spelling {
  std::string_view written, read;
};

/// Dashes and blanks of typesetters, as they are typed.
std::string plainlyWritten(std::string_view words) {
  constexpr Spelling kSpellings[] = {{"\u2010", "-"}, {"\u2011", "-"}, {"\u2012", "-"},
                                     {"\u2013", "-"}, {"\u2014", "-"}, {"\u00a0", " "},
                                     {"\u202f", " "}, {"\t", " "},     {"\n", " "}};
  std::string out(words);
  for (const auto& [written, read] : kSpellings)
    for (std::size_t at = 0; (at = out.find(written, at)) != out.npos; at += read.size())
      out.replace(at, written.size(), read);
  return out;
}

std::string_view withoutEnds(std::string_view text) {
  const std::size_t first = text.find_first_not_of(kBlank);
  if (first == text.npos) return {};
  return text.substr(first, text.find_last_not_of(kBlank) - first + 1);
}

bool isSerialDigit(char c) {
  return c >= '0' && c <= '9';
}

char lowerCase(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

bool equalWords(std::string_view a, std::string_view inLowerCase) {
  return std::equal(a.begin(), a.end(), inLowerCase.begin(), inLowerCase.end(),
                    [](char one, char other) { return lowerCase(one) == other; });
}

/// Takes the first of these beginnings off; true if there was one.
bool takeBeginning(std::string_view& text, std::initializer_list<std::string_view> beginnings) {
  for (const std::string_view each : beginnings)
    if (text.size() >= each.size() && equalWords(text.substr(0, each.size()), each)) {
      text = withoutEnds(text.substr(each.size()));
      return true;
    }
  return false;
}

bool takeEnd(std::string_view& text, std::initializer_list<std::string_view> ends) {
  for (const std::string_view each : ends)
    if (text.size() > each.size() && equalWords(text.substr(text.size() - each.size()), each)) {
      text = withoutEnds(text.substr(0, text.size() - each.size()));
      return true;
    }
  return false;
}

/// One word that ends in digits.
bool isSerial(std::string_view text) {
  return !text.empty() && text.size() <= kLongestSerial && isSerialDigit(text.back()) &&
         std::all_of(text.begin(), text.end(), [](char c) {
           return isSerialDigit(c) || (lowerCase(c) >= 'a' && lowerCase(c) <= 'z') ||
                  std::string_view("-/._#").find(c) != std::string_view::npos;
         });
}

std::optional<Ranges> one(std::string_view from, std::string_view to) {
  SerialRange range{std::string(from), std::string(to)};
  if (!checkSerialRange(range)) return std::nullopt;
  return Ranges{std::move(range)};
}

/// "PS40-0100 to 0480": the second end goes on where the first has its digits.
std::optional<Ranges> fromTo(std::string_view from, std::string_view to) {
  if (!isSerial(from) || !isSerial(to)) return std::nullopt;
  const std::size_t before = from.find_last_not_of("0123456789");
  if (before != from.npos && std::all_of(to.begin(), to.end(), isSerialDigit))
    return one(from, std::string(from.substr(0, before + 1)) + std::string(to));
  return one(from, to);
}

/// "12-0100" may be a range or a number with a hyphen in it.
bool isUnclear(std::string_view from, std::string_view to) {
  return to.front() == '0' && from.front() != '0' && from.size() != to.size();
}

/// A hyphen without blanks makes a range where the same stands before both numbers.
std::optional<Ranges> hyphenated(std::string_view text) {
  for (std::size_t at = text.find('-'); at != text.npos; at = text.find('-', at + 1)) {
    const std::string_view from = text.substr(0, at), to = text.substr(at + 1);
    if (!isSerial(from) || !isSerial(to) || serialNumber(from)->before != serialNumber(to)->before) continue;
    return isUnclear(from, to) ? std::nullopt : one(from, to);
  }
  return one(text, text);
}

std::optional<Ranges> span(std::string_view text) {
  std::string low(text);
  std::transform(low.begin(), low.end(), low.begin(), lowerCase);
  for (const std::string_view word : {" up to ", " through ", " thru ", " until ", " to ", " - ", ".."})
    if (const std::size_t at = low.find(word); at != low.npos)
      return fromTo(withoutEnds(text.substr(0, at)), withoutEnds(text.substr(at + word.size())));
  return isSerial(text) ? hyphenated(text) : std::nullopt;
}

std::optional<Ranges> openBelow(std::string_view to) {
  return isSerial(to) ? one("", to) : std::nullopt;
}

std::optional<Ranges> openAbove(std::string_view from) {
  return isSerial(from) ? one(from, "") : std::nullopt;
}

std::optional<Ranges> bothBetween(std::string_view text) {
  const std::size_t at = text.find(" and ");
  return at == text.npos ? std::nullopt
                         : fromTo(withoutEnds(text.substr(0, at)), withoutEnds(text.substr(at + 5)));
}

std::optional<Ranges> allBefore(std::string_view text) {
  if (!isSerial(text)) return std::nullopt;
  const auto last = serialBefore(std::string(text));
  return last ? one("", *last) : std::nullopt;
}

std::optional<Ranges> item(std::string_view text) {
  text = withoutEnds(text);
  while (takeBeginning(text, {"serial numbers ", "serial number ", "serials ", "serial ", "s/n ", "sn ",
                              "nos. ", "no. ", "numbers ", "number "})) {
  }
  for (const std::string_view all :
       {"all", "any", "every", "all serials", "all serial numbers", "all numbers"})
    if (equalWords(text, all)) return Ranges{SerialRange{}};
  if (takeBeginning(text, {"up to and including ", "up to ", "until ", "through ", "to "}))
    return openBelow(text);
  if (takeBeginning(text, {"after ", "above ", "over "}))
    return isSerial(text) ? openAbove(serialAfter(std::string(text))) : std::nullopt;
  if (takeBeginning(text, {"before ", "below ", "under "})) return allBefore(text);
  if (takeBeginning(text, {"between "})) return bothBetween(text);
  const bool from = takeBeginning(text, {"from ", "since ", "starting at ", "starting with "});
  if (takeEnd(text, {" and up", " and upwards", " and above", " and over", " and later", " and on",
                     " onwards", " onward", " upwards", " on", " up"}))
    return openAbove(text);
  return from && isSerial(text) ? openAbove(text) : span(text);
}

/// "1,000 to 2,000" is no list: groups of three behind commas without blanks stand in it, and they either
/// differ in length from what they follow or are the ends of a range.
bool hasThousands(std::string_view text) {
  const bool isRange = text.find(" to ") != text.npos || text.find('-') != text.npos;
  for (std::size_t at = text.find(','); at != text.npos; at = text.find(',', at + 1)) {
    std::size_t left = at, right = at + 1;
    while (left > 0 && isSerialDigit(text[left - 1])) --left;
    while (right < text.size() && isSerialDigit(text[right])) ++right;
    const std::size_t length = at - left;
    if (right - at == 4 && length > 0 && length <= 3 && (isRange || length < 3)) return true;
  }
  return false;
}

bool addRanges(Ranges& out, const std::optional<Ranges>& more) {
  if (more) out.insert(out.end(), more->begin(), more->end());
  return more.has_value();
}

/// An item, or two items with "and" between them.
std::optional<Ranges> items(std::string_view text) {
  if (auto whole = item(text)) return whole;
  const std::size_t at = text.rfind(" and ");
  if (at == text.npos) return std::nullopt;
  Ranges out;
  if (!addRanges(out, items(text.substr(0, at))) || !addRanges(out, item(text.substr(at + 5))))
    return std::nullopt;
  return out;
}

}  // namespace

std::optional<std::vector<SerialRange>> serialRangesIn(std::string_view words) {
  if (words.size() > kLongestWords) return std::nullopt;
  const std::string text = plainlyWritten(words);
  if (hasThousands(text)) return std::nullopt;
  Ranges out;
  std::string_view rest = text;
  for (bool more = true; more;) {
    const std::size_t end = std::min(rest.find_first_of(",;"), rest.size());
    std::string_view each = withoutEnds(rest.substr(0, end));
    more = end < rest.size();
    rest.remove_prefix(std::min(end + 1, rest.size()));
    if (!out.empty()) takeBeginning(each, {"and "});
    if (!addRanges(out, items(each))) return std::nullopt;
  }
  return out;
}

}  // namespace cw

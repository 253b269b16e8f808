#include "core/procedure/numbers_in_text.h"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/units/spelling.h"

namespace cw {
namespace {

using std::string_view;

constexpr std::array<string_view, 5> kRangeWords{"-", "–", "to", "and", "±"};
constexpr std::array<string_view, 20> kFunctionWords{"and",   "or",  "to",   "then", "on",    "at", "with",
                                                     "by",    "for", "from", "when", "until", "if", "before",
                                                     "after", "is",  "are",  "plus", "of",    "as"};
constexpr std::array<string_view, 21> kNumberedThings{
    "step",  "position", "pass",    "figure",   "page",    "table",  "item",
    "bolt",  "stud",     "screw",   "nut",      "no",      "number", "class",
    "grade", "round",    "section", "appendix", "chapter", "column", "row"};

template <class List>
bool isAmong(const List& list, string_view word) {
  return std::find(list.begin(), list.end(), word) != list.end();
}

bool isNumeral(char c) {
  return c >= '0' && c <= '9';
}
bool isGap(char c) {
  return c == ' ' || c == '\t' || c == '\n';
}
bool isLetter(char c) {
  return std::isalpha(static_cast<unsigned char>(c)) != 0;
}

std::string lower(string_view word) {
  std::string out(word);
  for (char& c : out) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  return out;
}

string_view withoutMarks(string_view word) {
  while (!word.empty() && string_view(".,;:!?()").find(word.back()) != string_view::npos)
    word.remove_suffix(1);
  while (!word.empty() && word.front() == '(') word.remove_prefix(1);
  return word;
}

/// A number and where it stands.
struct Found {
  std::size_t begin;
  std::size_t end;
};

std::size_t numberEnd(string_view text, std::size_t begin) {
  std::size_t end = begin;
  while (end < text.size() && (isNumeral(text[end]) || text[end] == '.' || text[end] == ',')) ++end;
  while (!isNumeral(text[end - 1])) --end;
  return end;
}

/// "1/4-20", "3x1": a digit, then something that makes it a name.
bool isName(string_view text, std::size_t end) {
  if (end >= text.size()) return false;
  const bool joins = text[end] == '/' || text[end] == 'x' || text[end] == '#';
  return joins && end + 1 < text.size() && isNumeral(text[end + 1]);
}

std::vector<Found> findNumbers(string_view text) {
  std::vector<Found> out;
  for (std::size_t at = 0; at < text.size();) {
    const bool starts = isNumeral(text[at]);
    const std::size_t end = starts ? numberEnd(text, at) : at;
    if (starts && !isName(text, end)) {
      out.push_back({at, end});
      at = end;
    } else if (starts || isLetter(text[at]) || text[at] == '#') {
      while (at < text.size() && !isGap(text[at])) ++at;
    } else {
      ++at;
    }
  }
  return out;
}

/// The first `count` words of a text, as they stand.
string_view leadingWords(string_view text, int count) {
  std::size_t at = 0;
  for (int word = 0; word < count; ++word) {
    while (at < text.size() && isGap(text[at])) ++at;
    while (at < text.size() && !isGap(text[at])) ++at;
  }
  return text.substr(0, at);
}

/// How a unit may be spelled at the start of `rest`: up to three words, longest first.
template <class Tag>
const Unit<Tag>* unitAt(string_view rest) {
  for (int count = 3; count > 0; --count) {
    std::string words(withoutMarks(leadingWords(rest, count)));
    std::erase(words, '.');
    for (const string_view spelling : {withoutMarks(leadingWords(rest, count)), string_view(words)})
      if (const Unit<Tag>* unit = unitSpelled<Tag>(spelling)) return unit;
  }
  return nullptr;
}

template <class... Tags>
bool hasUnitOf(string_view rest) {
  return ((unitAt<Tags>(rest) != nullptr) || ...);
}

bool isQuantity(string_view rest) {
  const auto first = rest.find_first_not_of(" \u2009\u202f");
  if (first != string_view::npos && (rest[first] == '%' || rest.substr(first).starts_with("°"))) return true;
  return hasUnitOf<ForceTag, LengthTag, AreaTag, StressTag, AngleTag, TemperatureTag, MassTag, VolumeTag,
                   DurationTag>(rest);
}

string_view wordBefore(string_view text, std::size_t at) {
  while (at > 0 && isGap(text[at - 1])) --at;
  std::size_t begin = at;
  while (begin > 0 && !isGap(text[begin - 1])) --begin;
  return withoutMarks(text.substr(begin, at - begin));
}

bool countsThings(string_view text, const Found& number, string_view rest) {
  if (isAmong(kNumberedThings, lower(wordBefore(text, number.begin)))) return true;
  const string_view next = leadingWords(rest, 1);
  const auto first = next.find_first_not_of(" \t\n");
  if (first == string_view::npos || !isLetter(next[first])) return false;
  return !isAmong(kFunctionWords, lower(withoutMarks(next.substr(first))));
}

NumberInText judged(string_view text, const Found& number) {
  const string_view rest = text.substr(number.end);
  NumberInText out{std::string(text.substr(number.begin, number.end - number.begin)), Counts::Nothing, {}};
  if (const TorqueUnit* unit = unitAt<TorqueTag>(rest)) {
    out.counts = Counts::Torques;
    out.torque = StatedTorque{out.digits, unit};
  } else if (isQuantity(rest)) {
    out.counts = Counts::Quantity;
  } else if (countsThings(text, number, rest)) {
    out.counts = Counts::Things;
  }
  return out;
}

bool joinsRange(string_view between) {
  const auto first = between.find_first_not_of(' ');
  if (first == string_view::npos) return false;
  return isAmong(kRangeWords, between.substr(first, between.find_last_not_of(' ') - first + 1));
}

}  // namespace

std::vector<NumberInText> numbersIn(string_view text) {
  const std::vector<Found> found = findNumbers(text);
  std::vector<NumberInText> out(found.size());
  for (std::size_t i = found.size(); i-- > 0;) {
    out[i] = judged(text, found[i]);
    const bool bare = out[i].counts == Counts::Nothing && i + 1 < found.size();
    if (!bare || !joinsRange(text.substr(found[i].end, found[i + 1].begin - found[i].end))) continue;
    out[i].counts = out[i + 1].counts;
    if (out[i + 1].torque) out[i].torque = StatedTorque{out[i].digits, out[i + 1].torque->unit};
  }
  return out;
}

}  // namespace cw

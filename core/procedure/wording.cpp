#include "core/procedure/wording.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace cw {
namespace {

using std::string_view;

/// Always an instruction at the start of a sentence.
constexpr std::array<string_view, 62> kVerbs{
    "adjust",    "align",       "apply",   "assemble", "attach",  "bleed",     "bolt",     "centre",
    "check",     "clean",       "close",   "compare",  "connect", "count",     "degrease", "disconnect",
    "discard",   "disassemble", "engage",  "ensure",   "examine", "fasten",    "fit",      "hold",
    "inspect",   "insert",      "install", "isolate",  "keep",    "lay",       "loosen",   "lower",
    "lubricate", "make",        "measure", "open",     "place",   "position",  "press",    "pull",
    "push",      "put",         "raise",   "read",     "record",  "reinstall", "release",  "remove",
    "repeat",    "replace",     "rinse",   "rotate",   "screw",   "set",       "show",     "slide",
    "tighten",   "torque",      "unscrew", "use",      "verify",  "wipe"};

/// A thing as often as an instruction: an instruction only where a determiner follows ("Grease the …").
constexpr std::array<string_view, 24> kVerbsOrNouns{
    "coat", "cover", "drain", "dry",   "fill", "grease",  "heat",   "lift", "lock", "mark",   "oil",  "pump",
    "run",  "seal",  "seat",  "start", "stop", "support", "switch", "tap",  "test", "thread", "turn", "wait"};

constexpr std::array<string_view, 18> kDeterminers{"the",  "a",     "an",  "each",  "every", "all",
                                                   "both", "any",   "no",  "one",   "it",    "them",
                                                   "this", "these", "out", "until", "up",    "down"};

constexpr std::array<string_view, 12> kVagueWords{"approximately", "approx",      "roughly",      "securely",
                                                  "properly",      "adequately",  "adequate",     "suitable",
                                                  "suitably",      "appropriate", "sufficiently", "snugly"};

constexpr std::array<string_view, 6> kVaguePhrases{"as required",  "as necessary", "if required",
                                                   "if necessary", "as needed",    "if needed"};

template <class List>
bool holds(const List& list, string_view word) {
  return std::find(list.begin(), list.end(), word) != list.end();
}

bool isBlank(char c) {
  return c == ' ' || c == '\t' || c == '\n';
}

/// The words in lower case; a semicolon stands as a word of its own, other marks fall away.
std::vector<std::string> wordsOf(string_view text) {
  std::vector<std::string> out;
  std::string word;
  const auto finish = [&] {
    while (!word.empty() && string_view(".,:!?()\"").find(word.back()) != string_view::npos) word.pop_back();
    if (!word.empty()) out.push_back(std::move(word));
    word.clear();
  };
  for (const char c : text) {
    if (isBlank(c) || c == ';') finish();
    if (c == ';') out.emplace_back(";");
    if (!isBlank(c) && c != ';' && c != '(' && c != '"')
      word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  finish();
  return out;
}

bool tellsToAct(const std::vector<std::string>& words, std::size_t at) {
  if (at >= words.size()) return false;
  if (holds(kVerbs, words[at])) return true;
  return holds(kVerbsOrNouns, words[at]) && at + 1 < words.size() && holds(kDeterminers, words[at + 1]);
}

/// "Check that the faces are clean and dry": what follows describes and does not tell.
bool asksForAState(const std::vector<std::string>& words) {
  return words.size() > 1 && (words[1] == "that" || words[1] == "whether" || words[1] == "if");
}

bool leadsToAnother(const std::string& word) {
  return word == "and" || word == "then" || word == "or" || word == ";";
}

bool isNumber(const std::string& word) {
  return !word.empty() && word[0] >= '0' && word[0] <= '9';
}

}  // namespace

std::vector<std::string> sentences(string_view text) {
  std::vector<std::string> out;
  std::string sentence;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool mark = text[i] == '.' || text[i] == '!' || text[i] == '?';
    const bool atEnd = i + 1 == text.size();
    const bool newOne = i + 2 < text.size() && isBlank(text[i + 1]) &&
                        std::isupper(static_cast<unsigned char>(text[i + 2])) != 0;
    if (mark && (atEnd || newOne)) {
      out.push_back(std::move(sentence));
      sentence.clear();
    } else if (!(sentence.empty() && isBlank(text[i]))) {
      sentence += text[i];
    }
  }
  if (!sentence.empty()) out.push_back(std::move(sentence));
  return out;
}

std::size_t wordCount(string_view sentence) {
  const auto words = wordsOf(sentence);
  return words.size() - static_cast<std::size_t>(std::count(words.begin(), words.end(), ";"));
}

std::vector<std::string> actions(string_view sentence) {
  const auto words = wordsOf(sentence);
  std::vector<std::string> out;
  if (tellsToAct(words, 0)) out.push_back(words[0]);
  if (asksForAState(words)) return out;
  for (std::size_t i = 1; i + 1 < words.size(); ++i)
    if (leadsToAnother(words[i]) && tellsToAct(words, i + 1)) out.push_back(words[i + 1]);
  return out;
}

std::vector<std::string> vagueWords(string_view sentence) {
  const auto words = wordsOf(sentence);
  std::vector<std::string> out;
  for (std::size_t i = 0; i < words.size(); ++i) {
    const std::string pair = i + 1 < words.size() ? words[i] + " " + words[i + 1] : "";
    if (holds(kVagueWords, words[i])) out.push_back(words[i]);
    if (holds(kVaguePhrases, pair)) out.push_back(pair);
    if ((words[i] == "about" || words[i] == "around") && i + 1 < words.size() && isNumber(words[i + 1]))
      out.push_back(pair);
  }
  return out;
}

}  // namespace cw

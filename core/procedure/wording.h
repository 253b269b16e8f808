#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace cw {

// What a reviewer can tell about English wording without understanding it: rules of thumb that name the words
// which made them speak, so that the author can judge. Sources: ASD-STE100 (one instruction a sentence, at
// most 20 words), DOE-STD-1029-92 and PPA AP-907-005 (no action inside a caution), as quoted in trade texts.
// The lists of verbs and vague words are ours.

inline constexpr std::size_t kMostWords = 20;

/// The sentences of a text without their end marks. A point inside a number or an abbreviation ("0.5 mm",
/// "in. lbs.") ends none: a sentence ends where blank and capital letter follow.
std::vector<std::string> sentences(std::string_view text);

std::size_t wordCount(std::string_view sentence);

/// The verbs by which a sentence tells somebody to act: its first word, and after "and", "then", "or" or a
/// semicolon. None in "Do not …" and "Never …"; one in "Check that … is clean and dry".
std::vector<std::string> actions(std::string_view sentence);

/// Words that leave the amount to the reader: "approximately", "about 5", "as required".
std::vector<std::string> vagueWords(std::string_view sentence);

}  // namespace cw

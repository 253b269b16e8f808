#pragma once
#include <cstddef>
#include <string>
#include <string_view>

namespace cw {

/// Bytes of the hyphen, dash or minus sign at the start of `text`, ASCII or Unicode; 0 if there is none.
std::size_t hyphenLength(std::string_view text);

/// `text` without spaces, tabs, no-break, thin and figure spaces at either end.
std::string_view withoutOuterBlanks(std::string_view text);

/// Words in lower case with one '-' for whatever blanks, hyphens and dots join them: "In.·Lbs." gives
/// "in-lbs". Only ASCII letters change case; other bytes, well-formed or not, stay as they are.
std::string joinedWords(std::string_view text);

}  // namespace cw

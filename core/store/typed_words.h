#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace cw {

/// What somebody typed into a search, as the quoted words of an FTS5 expression: nothing in them is an
/// operator. Marks that stand alone are left out, so that "M8 *" finds what "M8" finds.
std::vector<std::string> quotedWords(std::string_view typed);

/// Each word as the beginning of a word, all of which a row must hold: "m8" "pas" -> "m8"* "pas"*. Empty if
/// nothing was typed that can be searched for.
std::string everyBeginning(std::string_view typed);

}  // namespace cw

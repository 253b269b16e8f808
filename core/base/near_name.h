#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace cw {

/// Names out of `known` that somebody may have meant by `written`, nearest first, at most `most`:
/// within a third of its length in insertions, deletions, replacements or swaps of neighbours, or starting
/// with it; letter case and blanks do not count. Equal distances keep the order of `known`.
std::vector<std::string> nearNames(std::string_view written, const std::vector<std::string_view>& known,
                                   std::size_t most = 3);

/// "did you mean A, B or C"; empty if there are none.
std::string didYouMean(const std::vector<std::string>& names);

/// "A, B and C" with the given last joiner.
std::string listed(const std::vector<std::string>& names, std::string_view joiner = "and");

}  // namespace cw

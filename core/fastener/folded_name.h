#pragma once
#include <string>
#include <string_view>

namespace cw {

/// A name as it is compared: lower case, no blanks, hyphens or underscores. "A2-70" and "a2 70" are one.
std::string foldedName(std::string_view name);

struct FoldedThread {
  std::string key;        ///< "M8X1", "3/8-16UNC", "#10-32"
  bool leftHand = false;  ///< "-LH" or "LH" stood behind it
};

/// A thread as it is compared: upper case, × as X, no blanks (but "1 1/8" as "1-1/8"), "No. 10" as "#10",
/// decimals without trailing zeros ("M8x1.0" as "M8X1").
FoldedThread foldedThread(std::string_view written);

}  // namespace cw

#pragma once
#include <string>

namespace cw {

/// Where a tabulated fact was taken from, and how sure we are that it says so.
struct Provenance {
  std::string source;    ///< standard, edition, table; never empty
  bool seen = false;     ///< true: read in the source's text; false: from memory, check your edition
  std::string author{};  ///< who added the row in this shop; empty for a row that came with the program
  bool operator==(const Provenance&) const = default;
};

}  // namespace cw

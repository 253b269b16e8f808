#pragma once
#include <cstdint>
#include <string>

namespace cw::test {

/// How one walk went.
struct Walked {
  std::string fault;  ///< what did not hold; empty if all did
  std::string story;  ///< the entries up to there, one a line
  int tried = 0, taken = 0, forged = 0;
  bool complete = false;
};

/// Works a drawn sheet in a drawn shop: `tries` entries of all sorts, then sensibly to the end.
Walked walk(std::uint64_t seed, int tries);

}  // namespace cw::test

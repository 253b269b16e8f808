#pragma once
#include <QString>
#include <set>
#include <vector>

namespace cw {

/// What a way out asks for, beside a shop lead's word, which the rules say.
enum class Asks { Step, Entry, Pulled, Closed, Words, Position, What, WaitsFor, Machine, Reason };

/// One thing that may be stated when work does not go as the sheet says.
struct Way {
  QString key, name, explanation;
  std::set<Asks> asks;
};

/// All of them, in the order in which they are offered.
const std::vector<Way>& waysOut();

}  // namespace cw

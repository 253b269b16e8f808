#pragma once
#include <set>
#include <string>
#include <vector>

#include "core/record/draft.h"
#include "tests/rules_walk/floor.h"

namespace cw::test {

/// What somebody tries to enter, and who gives a PIN for it.
struct Move {
  Draft draft;
  std::set<std::string> withPin;
};

Move moveOf(std::string sign, Body body);

/// What somebody who follows `next` would enter, the best first; after it what is left where that is refused:
/// another wrench, a lead's word, a deviation, taking apart. One of them must be accepted.
std::vector<Move> sensibleMoves(const Job& job, const Floor& floor);

/// Anything that somebody could type: any kind, step, position, tool, person, number and text.
Move wildMove(const Job& job, const Floor& floor, Dice& dice);

/// A sensible move with something of it spoilt.
Move spoilt(Move move, const Job& job, const Floor& floor, Dice& dice);

}  // namespace cw::test

#pragma once
#include "core/record/shop_floor.h"
#include "tests/rules_walk/dice.h"

namespace cw::test {

/// People and tools of an invented shop, which do not stay as they are while a job is worked.
struct Floor {
  std::vector<Person> people;
  std::vector<TorqueTool> tools;
  bool alone = false;

  ShopFloor now() const { return {people, tools}; }
};

/// All of them fit for work; alone: one person, who may be no lead.
Floor drawnFloor(Dice& dice);

/// Somebody learns, is promoted, leaves or comes back; a tool is dropped, quarantined, calibrated, overdue.
void change(Floor& floor, Dice& dice);

}  // namespace cw::test

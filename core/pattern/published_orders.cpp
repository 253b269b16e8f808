#include "core/pattern/published_orders.h"

#include <algorithm>
#include <initializer_list>

namespace cw {
namespace {

struct Exception {
  OrderRule rule;
  std::size_t count;
  std::initializer_list<std::size_t> order;  ///< as printed, from 1
};

// To add one: a row here, its source below, and a row in tests/data/published/sequences.json.
const Exception kExceptions[] = {
    // ASME PCC-1 (2000), rotational order table, from memory: the last two sets stand the other way round
    // than any symmetric rule puts them.
    {OrderRule::Star, 32, {1, 17, 9,  25, 5, 21, 13, 29, 3, 19, 11, 27, 7, 23, 15, 31,
                           2, 18, 10, 26, 6, 22, 14, 30, 8, 24, 16, 32, 4, 20, 12, 28}},
    // The same table, groups of 4 neighbours, from memory: 40, 44, 52 and 56 bolts, here as groups.
    {OrderRule::StarGrouped, 40, {1, 6, 4, 9, 2, 7, 5, 10, 3, 8}},
    {OrderRule::StarGrouped, 44, {1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6}},
    {OrderRule::StarGrouped, 52, {1, 8, 4, 11, 2, 9, 5, 12, 6, 13, 7, 3, 10}},
    {OrderRule::StarGrouped, 56, {1, 8, 4, 11, 6, 13, 3, 10, 7, 14, 5, 12, 2, 9}},
    // US Army TM 5-3805-298-23-2, WP 0176, and TB 9-3950-253-13&P, WP 0061; seen.
    {OrderRule::ArmyCircle, 12, {1, 7, 4, 10, 2, 8, 6, 12, 5, 11, 9, 3}},
    // Four-bolt clamp, upper left, lower right, lower left, upper right: bicycle shop maintenance page
    // (2016), seen.
    {OrderRule::Wheel, 4, {1, 3, 4, 2}},
    // Opposite pairs in the manner of a five-stud wheel: common practice, no source; several are in use.
    {OrderRule::Wheel, 10, {1, 6, 3, 8, 5, 10, 2, 7, 4, 9}},
};

bool isAmong(std::size_t count, std::initializer_list<std::size_t> counts) {
  return std::find(counts.begin(), counts.end(), count) != counts.end();
}

Provenance starSource(std::size_t count) {
  if (isAmong(count, {8, 12, 16}))
    return {
        "ASME PCC-1 (2000), rotational order table; read in a gasket maker's work sheet or a maintenance "
        "manual",
        true};
  if (publishedGroupSize(count) > 1)
    return {"ASME PCC-1 (2000), rotational order table, groups of neighbours", false};
  if (isAmong(count, {4, 20, 24, 28, 32})) return {"ASME PCC-1 (2000), rotational order table", false};
  return {"no published order for this count: the star continued by its rule", false};
}

Provenance wheelSource(std::size_t count) {
  switch (count) {
    case 4:
      return {"bicycle shop maintenance page, four-bolt clamp (2016)", true};
    case 5:
      return {"wheel assembly chart, figure labels", true};
    case 8:
      return {"maintenance manual, 8-bolt circle", true};
    default:
      return {"common practice, no source", false};
  }
}

}  // namespace

std::optional<std::vector<std::size_t>> publishedException(OrderRule rule, std::size_t count) {
  for (const Exception& printed : kExceptions) {
    if (printed.rule != rule || printed.count != count) continue;
    std::vector<std::size_t> seats(printed.order);
    for (std::size_t& seat : seats) --seat;
    return seats;
  }
  return std::nullopt;
}

Provenance publishedSource(OrderRule rule, std::size_t count) {
  switch (rule) {
    case OrderRule::Star:
      return starSource(count);
    case OrderRule::StarGrouped:
      if (publishedGroupSize(count) > 1) return starSource(count);
      return {"no published order for this count: the star over groups of neighbours", false};
    case OrderRule::StarLater:
      if (count % 4 == 0 && count >= 4 && count <= 76)
        return {"ASME PCC-1 (2010, 2013, 2019), legacy cross-pattern table", false};
      return {"no published order for this count: the later star continued by its rule", false};
    case OrderRule::Quadrant:
      if (count % 4 != 0) return {"no published order for this count: quadrants of unequal size", false};
      return {"ASME PCC-1 (2010, 2013), appendix F, quadrant pattern", false};
    case OrderRule::CircularAfterFour:
      return {"ASME PCC-1 (2010, 2013), appendix F, circular pattern with four-bolt start", false};
    case OrderRule::ArmyCircle:
      return {"US Army TM 5-3805-298-23-2, WP 0176; TB 9-3950-253-13&P, WP 0061", true};
    case OrderRule::Wheel:
      return wheelSource(count);
    case OrderRule::WheelPairs:
      return count <= 5 ? wheelSource(count) : Provenance{"common practice, no source", false};
    case OrderRule::Circular:
      return {"one after the other around the part", false};
    case OrderRule::CentreOut:
    case OrderRule::Balanced:
      break;
  }
  return {"no published order for this layout: made by balance", false};
}

std::size_t publishedGroupSize(std::size_t count) {
  if (count == 36) return 3;
  return isAmong(count, {40, 44, 48, 52, 56}) ? 4 : 1;
}

}  // namespace cw

#include "core/record/shop_floor.h"

#include <algorithm>

namespace cw {

const Person* ShopFloor::person(std::string_view sign) const {
  const auto found =
      std::find_if(people.begin(), people.end(), [&](const Person& p) { return p.sign == sign; });
  return found == people.end() ? nullptr : &*found;
}

const TorqueTool* ShopFloor::tool(std::string_view id) const {
  const auto found =
      std::find_if(tools.begin(), tools.end(), [&](const TorqueTool& t) { return t.id == id; });
  return found == tools.end() ? nullptr : &*found;
}

}  // namespace cw

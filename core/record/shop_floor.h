#pragma once
#include <span>
#include <string_view>

#include "core/shop/person.h"
#include "core/shop/tool.h"

namespace cw {

/// The people and tools of the shop as they stand now: what an entry is made from. What it is judged by stands
/// in the entry itself.
struct ShopFloor {
  std::span<const Person> people;
  std::span<const TorqueTool> tools;

  /// nullptr if there is none.
  const Person* person(std::string_view sign) const;
  const TorqueTool* tool(std::string_view id) const;
};

}  // namespace cw

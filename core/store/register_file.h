#pragma once
#include <string_view>

#include "core/store/shop.h"

namespace cw {

/// How many of each were added.
struct RegisterCounts {
  int people = 0, tools = 0, machines = 0;
};

/// Adds people (each with a PIN), tools and machines from one JSON file:
/// {"format":"clampwright.register","version":1,"people":[{"sign","name","roles","pin"}],"tools":[…],
/// "machines":[{"id","model","serial","hours"}]}. All of it or nothing: InvalidInput naming the place,
/// AlreadyDone for a sign or id that is taken, NotPermitted by somebody who does not lead the shop; in a shop
/// without people by anybody.
Result<RegisterCounts> addRegister(Shop& shop, std::string_view bytes, const Deed& deed,
                                   PinStrength strength = PinStrength::Interactive);

}  // namespace cw

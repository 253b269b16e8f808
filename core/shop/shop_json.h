#pragma once
#include "core/base/json.h"
#include "core/shop/person.h"
#include "core/shop/tool.h"

namespace cw {

/// {"name","roles":[…],"sign"} and "apprentice"/"active" where they are not the usual; never the PIN's hash.
Json personToJson(const Person& person);
Result<Person> personFromJson(const Json& json, const std::string& place);

/// Every field of a tool with its calibrations; fractions as decimal text ("0.04").
Json toolToJson(const TorqueTool& tool);
/// InvalidInput or OutOfRange naming the field. The result has passed `check`.
Result<TorqueTool> toolFromJson(const Json& json, const std::string& place);

}  // namespace cw

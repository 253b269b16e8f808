#pragma once
#include "core/base/json.h"
#include "core/pattern/passes.h"

namespace cw {

/// {"by_hand":true,"shares_percent":["30","70","100"],"check":{"limit":6}}: a plan as it stands in a sheet.
/// `check`, `retorque`, `gaps` and `snug_percent` are there where the author wants them.
Json toJson(const PassPlan& plan);

/// Reads that form. InvalidInput or OutOfRange naming the field; also what `reviewPasses` finds blocking.
/// Members that it does not know are left to the reader's `rest`; in the objects below they are refused.
Result<PassPlan> readPasses(JsonReader& reader);

}  // namespace cw

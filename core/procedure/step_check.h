#pragma once
#include "core/base/result.h"
#include "core/procedure/sheet.h"

namespace cw {

/// Each kind of step has the fields it needs, no field that another kind uses, and refers to what is there.
/// InvalidInput or OutOfRange with the field as place.
Result<void> checkStep(const Sheet& sheet, const Step& step);

}  // namespace cw

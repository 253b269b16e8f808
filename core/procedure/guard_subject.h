#pragma once
#include "core/fastener/catalogue.h"
#include "core/joint/guard.h"
#include "core/procedure/sheet.h"

namespace cw {

/// What the guard needs to know of a fastener that is tightened to a specification. The catalogue's errors
/// for a thread, grade, condition or material that it does not hold.
Result<GuardSubject> guardSubject(const Fastener& fastener, const Specification& specification,
                                  const Catalogue& catalogue);

}  // namespace cw

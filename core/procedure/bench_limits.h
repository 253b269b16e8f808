#pragma once
#include "core/base/finding.h"
#include "core/base/result.h"
#include "core/procedure/sheet.h"

namespace cw {

/// What a sheet asks for and the bench does not do, so that nobody reads off a record what nobody did:
/// "method-not-done" for a turn by an angle. Blocking. (README.md, "Cautions and limits", lists the rest: it
/// has no field in a sheet, or its field is refused by name in the review.)
Findings beyondTheBench(const Sheet& sheet);

/// The first of them as NotPermitted: such a sheet starts no job and goes on no paper, issued or not.
Result<void> checkBenchCan(const Sheet& sheet);

}  // namespace cw

#pragma once
#include <string>

#include "core/base/finding.h"
#include "core/store/shop.h"

namespace cw {

/// A sheet held against this shop's people and tools; `approver`: sign of who is to issue it, empty if
/// nobody is asked yet. Errors of Tools and People.
Result<Findings> reviewAgainst(Shop& shop, const Sheet& sheet, const std::string& approver);

/// Sheets::issue for a revision whose review lets it: NotPermitted with the first blocking finding else.
Result<void> issueReviewed(Shop& shop, const Id& sheet, const std::string& revision, const Deed& deed);

}  // namespace cw

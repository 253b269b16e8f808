#pragma once
#include <vector>

#include "app/common/workspace.h"
#include "core/base/finding.h"
#include "core/report/document.h"

namespace cw {

/// One revision of the list, read for showing.
struct KeptSheet {
  SheetRow row;
  Sheet sheet;
  Findings findings;  ///< of its review against this shop's people and tools
  std::vector<SheetEvent> history;
};

/// Reads and reviews it.
Result<KeptSheet> keptSheet(Shop& shop, const SheetRow& row);

/// "draft", "issued" … in the user's language.
QString statusText(SheetStatus status);

/// The revision to read, with its standing and its review first.
Document documentOf(const KeptSheet& kept);

}  // namespace cw

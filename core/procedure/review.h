#pragma once
#include <optional>
#include <span>
#include <string>

#include "core/base/finding.h"
#include "core/fastener/catalogue.h"
#include "core/procedure/sheet.h"
#include "core/shop/tool.h"

namespace cw {

/// What a sheet is held against.
struct ReviewContext {
  const Catalogue& catalogue;
  std::optional<std::span<const TorqueTool>> crib;  ///< none: no shop is open, so tools are not judged
  std::string approver;                             ///< sign of who will issue it; empty: not known yet
  bool onePersonShop = false;                       ///< one active person: nobody else can approve or watch
};

/// Everything that is wrong with a sheet that `readSheet` took, each with place, severity and cure. A
/// Blocking finding stops issue. The order is that of the rules, then of the sheet.
Findings review(const Sheet& sheet, const ReviewContext& context);

}  // namespace cw

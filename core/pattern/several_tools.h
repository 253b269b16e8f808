#pragma once
#include <optional>
#include <vector>

#include "core/pattern/order.h"

namespace cw {

/// What each tool tightens at the same time: the position of tool 1, tool 2 …; nothing for one that waits.
using ToolStep = std::vector<std::optional<std::size_t>>;

inline constexpr std::size_t kMostTools = 4;

/// The order shared among tools that work at the same time and never cross: each keeps to its own stretch
/// of the part. Around a part the stretches are arcs and all tools make the same moves, so that they stay
/// evenly apart; on a long part each works its length in the given order. ASME PCC-1 (2010), appendix F:
/// two tools at 180°, four at 90°, the pattern inside the half or quarter as for one (from memory).
/// Errors of `places`; OutOfRange for other than 1 to 4 tools or more tools than positions; InvalidInput
/// for an order with gaps or repeats.
Result<std::vector<ToolStep>> shareAmongTools(const Layout& layout, const Order& order, std::size_t tools);

}  // namespace cw

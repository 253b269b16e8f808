#pragma once
#include <vector>

#include "core/record/draft.h"

namespace cw {

/// One scale of one tool for the pass that is to be set now.
struct ToolOffer {
  std::string tool;
  const TorqueUnit* unit = nullptr;
  Result<ToolSet> set;  ///< what setting it would state, or why it is refused

  bool fits() const { return set.has_value(); }
};

/// Every tool of the floor that is not retired, on each of its scales, for the stage SetTool of `now`: those
/// that fit first, the nearest range before the wider. A refused one carries the reason that the rules give.
std::vector<ToolOffer> toolOffers(const Job& job, const Next& now, const ShopFloor& floor,
                                  const std::string& sign, const Moment& moment);

}  // namespace cw

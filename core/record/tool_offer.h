#pragma once
#include <vector>

#include "core/record/draft.h"
#include "core/record/next.h"

namespace cw {

/// Who works, and who supervises them if they are an apprentice; both by their signs.
struct Worker {
  std::string sign, supervisor{};
};

/// One scale of one tool for the pass that is to be set now.
struct ToolOffer {
  std::string tool;
  const TorqueUnit* unit = nullptr;
  Result<ToolSet> set;               ///< what setting it would state, or why it is refused
  std::optional<ToolSet> allowed{};  ///< what it would state with a lead's word and reason, if that can help

  bool fits() const { return set.has_value(); }
};

/// Every tool of the floor that is not retired, on each of its scales, for the stage SetTool of `now`: those
/// that fit first, the nearest range before the wider. A refused one carries the reason that the rules give.
std::vector<ToolOffer> toolOffers(const Job& job, const Next& now, const ShopFloor& floor,
                                  const Worker& worker, const Moment& moment);

}  // namespace cw

#pragma once
#include <vector>

#include "core/base/finding.h"
#include "core/pattern/order.h"

namespace cw {

/// Loosening in rounds: the share of the clamp load that each leaves.
struct LooseningPlan {
  std::vector<double> shares = {0.7, 0.4, 0.0};  ///< falling, the last 0
  bool operator==(const LooseningPlan&) const = default;
};

/// The order of loosening unless the sheet gives another: that of tightening in reverse.
/// Source: a diesel engine's cylinder head specification (seen).
Order looseningOrder(const Order& tightening);

/// Where the default shares come from.
Provenance sourceOfLooseningShares();

/// Shares out of range, not falling, not ending at 0 (Blocking); everything in one round (Warning: the
/// last fasteners take up the load of the others).
Findings reviewLoosening(const LooseningPlan& plan);

}  // namespace cw

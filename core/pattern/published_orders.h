#pragma once
#include <cstddef>
#include <optional>
#include <vector>

#include "core/base/provenance.h"
#include "core/pattern/order.h"

namespace cw {

/// Orders in print that no rule gives: seats of a circle (groups of neighbours where the publication
/// groups them), counted from 0 going round. Nothing where the rule gives what is printed.
std::optional<std::vector<std::size_t>> publishedException(OrderRule rule, std::size_t count);

/// The publication that prints this rule's order for a circle of `count`, or the words that none does.
Provenance publishedSource(OrderRule rule, std::size_t count);

/// The size of the groups in which the first published star tightens so many bolts: 3 for 36, 4 for 40,
/// 44, 48, 52 and 56, else 1. ASME PCC-1 (2000), from memory.
std::size_t publishedGroupSize(std::size_t count);

}  // namespace cw

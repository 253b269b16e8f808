#pragma once
#include <string>
#include <vector>

#include "core/joint/settling_joint.h"

namespace cw {

/// Passes if the joint can be computed; otherwise the first thing wrong with it, in one sentence.
///
/// InvalidInput: an order that misses or repeats a bolt, a flexibility that is not symmetric or not
/// positive definite, numbers that are not finite, shapes that do not go together. OutOfRange: sizes outside
/// 0.1 mm to 100 m, a thickness above 10 m, stiffnesses, moduli and targets that are not above 0, a Poisson
/// ratio outside 0 to 0.49, shares outside 0 to 2, a gasket that reaches beyond the part, a head that does
/// not rest on it or on another head, fewer than 1 or more than kMostSettlingBolts bolts, more than 100
/// passes.
Result<void> checkSettling(const SettlingJoint& joint);

/// InvalidInput unless `order` holds every bolt from 1 to `bolts` exactly once.
Result<void> checkOrder(const std::string& place, const std::vector<int>& order, int bolts);

}  // namespace cw

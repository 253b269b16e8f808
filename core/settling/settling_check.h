#pragma once
#include "core/settling/settling_joint.h"

namespace cw {

/// Passes if the joint can be computed; otherwise the first thing wrong with it, in one sentence.
///
/// InvalidInput: a flexibility that is not symmetric or not positive definite, numbers that are not finite,
/// shapes that do not go together. OutOfRange: sizes outside 0.1 mm to 100 m, a thickness above 10 m,
/// stiffnesses and moduli that are not above 0, a Poisson ratio outside 0 to 0.49, a gasket that reaches
/// beyond the part, a head that does not rest wholly on it or overlaps another, fewer than 1 or more than
/// kMostSettlingBolts bolts.
Result<void> checkJoint(const SettlingJoint& joint);

}  // namespace cw

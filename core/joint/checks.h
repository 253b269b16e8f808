#pragma once
#include <cmath>
#include <string>

#include "core/base/result.h"
#include "core/fastener/grade.h"
#include "core/fastener/thread.h"
#include "core/units/format.h"

namespace cw {

// The engine's questions about its input. Each refusal names the place, the value and what would be right.

/// A finite number. InvalidInput otherwise.
Result<void> checkFinite(const std::string& place, double value);

/// Friction coefficient within (0, 0.5]: steel threads have shown 0.04 to about 0.4 (VDI 2230 part 1,
/// friction classes A to E). OutOfRange otherwise.
Result<void> checkFriction(const std::string& place, double value);

/// Nut factor within (0, 1]: tabulated means run from 0.07 to 0.53. OutOfRange otherwise.
Result<void> checkNutFactor(const std::string& place, double value);

/// Relative deviation within [0, 1), as a fraction (0.04 is 4 %). OutOfRange otherwise.
Result<void> checkDeviation(const std::string& place, double value);

/// A share within (0, most], as a fraction. OutOfRange otherwise.
Result<void> checkShare(const std::string& place, double value, double most);

/// d3 < d2 < d, positive pitch and stress area, the latter within the circle of d. OutOfRange naming the
/// thread otherwise.
Result<void> checkThread(const Thread& thread);

/// Grade with positive strengths that covers the thread's size. OutOfRange otherwise: a strength of another
/// size is never used (8.8 changes at 16 mm, SAE 5 at 1 in). OutOfRange for a metric thread with a grade
/// of inch fasteners, and the other way round.
Result<void> checkGrade(const Grade& grade, const Thread& thread);

/// A clamp load that some bolt of this size could bear: at most 2 GPa on the stress area. Class 16.8, the
/// strongest sold, breaks at 1.6 GPa (common practice, no source). OutOfRange otherwise.
Result<void> checkBearable(const std::string& place, const std::string& stated, Force load,
                           const Thread& thread);

/// Finite and above zero; InvalidInput for NaN or infinity, OutOfRange for zero or less.
template <class Tag>
Result<void> checkPositive(const std::string& place, Quantity<Tag> value, const Unit<Tag>& unit) {
  CW_CHECK(checkFinite(place, value.si()));
  if (value.si() > 0) return {};
  return fail(ErrorCode::OutOfRange, place, text(value, unit), {"%1 is not above zero", {text(value, unit)}},
              "give a value above zero");
}

/// Finite and not negative; errors as above.
template <class Tag>
Result<void> checkNotNegative(const std::string& place, Quantity<Tag> value, const Unit<Tag>& unit) {
  CW_CHECK(checkFinite(place, value.si()));
  if (value.si() >= 0) return {};
  return fail(ErrorCode::OutOfRange, place, text(value, unit), {"%1 is negative", {text(value, unit)}},
              "give zero or more");
}

}  // namespace cw

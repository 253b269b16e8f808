#pragma once
#include <gmock/gmock.h>

#include <cmath>
#include <ostream>
#include <type_traits>

#include "core/base/result.h"
#include "core/units/stated.h"

namespace cw {

// What GoogleTest prints in place of bytes.
inline void PrintTo(const Error& error, std::ostream* out) {
  *out << "error: " << sentence(error);
}
template <class Tag>
void PrintTo(const Quantity<Tag>& quantity, std::ostream* out) {
  *out << quantity.si() << " (SI)";
}
template <class Tag>
void PrintTo(const Stated<Tag>& stated, std::ostream* out) {
  *out << stated.digits << ' ' << (stated.unit == nullptr ? "(no unit)" : stated.unit->code);
}
template <class T>
void PrintTo(const Result<T>& result, std::ostream* out) {
  if (!result) {
    PrintTo(result.error(), out);
  } else if constexpr (std::is_void_v<T>) {
    *out << "done";
  } else {
    *out << testing::PrintToString(*result);
  }
}

/// A Result that holds a value: ASSERT_THAT(parse<TorqueTag>("5 N.m"), IsOk()).
MATCHER(IsOk, negation ? "is refused" : "is not refused") {
  return arg.has_value();
}

/// A Result that holds a value matching `inner`.
MATCHER_P(IsOkAnd, inner,
          "is not refused and " +
              testing::DescribeMatcher<typename std::decay_t<arg_type>::value_type>(inner)) {
  return arg.has_value() && testing::ExplainMatchResult(inner, *arg, result_listener);
}

/// A Result refused with this code.
MATCHER_P(FailsWith, code, negation ? "does not fail with that code" : "fails with that code") {
  return !arg.has_value() && arg.error().code == code;
}

/// A Result refused with this code in a sentence that matches.
MATCHER_P2(FailsWith, code, words,
           "fails with that code, and the sentence " + testing::DescribeMatcher<std::string>(words)) {
  return !arg.has_value() && arg.error().code == code &&
         testing::ExplainMatchResult(words, sentence(arg.error()), result_listener);
}

/// A quantity at most `tolerance`, of the same kind, away from `expected`:
/// EXPECT_THAT(torque, IsNear(newtonMetres(34), newtonMetres(0.1))).
MATCHER_P2(IsNear, expected, tolerance,
           (negation ? "is not within " : "is within ") + testing::PrintToString(tolerance) + " of " +
               testing::PrintToString(expected)) {
  static_assert(std::is_same_v<expected_type, tolerance_type>);
  const arg_type difference = arg - expected;
  *result_listener << "off by " << testing::PrintToString(difference);
  return std::abs(difference.si()) <= tolerance.si();
}

}  // namespace cw

#pragma once
#include <tl/expected.hpp>
#include <utility>

#include "core/base/error.h"

namespace cw {

/// A value, or the one Error that explains why there is none. The only error path in core.
template <class T>
using Result = tl::expected<T, Error>;

inline tl::unexpected<Error> fail(ErrorCode code, std::string place, std::string_view value, Message problem,
                                  Message expected = {}) {
  return tl::make_unexpected(
      Error{code, std::move(place), shown(value), std::move(problem), std::move(expected)});
}

inline tl::unexpected<Error> fail(Error error) {
  return tl::make_unexpected(std::move(error));
}

}  // namespace cw

/// Binds `name` to the value of a Result expression, or returns its error from the calling function.
#define CW_TRY(name, ...)                                                \
  auto name##Result = (__VA_ARGS__);                                     \
  if (!name##Result) return ::cw::fail(std::move(name##Result).error()); \
  auto& name = *name##Result

/// Returns the error of a Result<void> (or of any Result whose value is not wanted).
#define CW_CHECK(...)                                                                          \
  do {                                                                                         \
    if (auto checked = (__VA_ARGS__); !checked) return ::cw::fail(std::move(checked).error()); \
  } while (false)

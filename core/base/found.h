#pragma once
#include <optional>

#include "core/base/result.h"

namespace cw {

/// What was looked for, or nothing where it is not there. Any other error says nothing of that, and stays
/// one.
template <class T>
Result<std::optional<T>> ifFound(Result<T> looked) {
  if (looked) return std::optional<T>(*std::move(looked));
  if (looked.error().code == ErrorCode::NotFound) return std::optional<T>();
  return fail(std::move(looked).error());
}

}  // namespace cw

#pragma once
#include <stdexcept>
#include <type_traits>
#include <utility>

#include "core/base/result.h"

namespace cw::test {

/// The value of what a test needs before it can begin; without it the test fails with the error's sentence.
template <class T>
T need(Result<T> result) {
  if (!result) throw std::runtime_error(sentence(result.error()));
  if constexpr (!std::is_void_v<T>) return *std::move(result);
}

}  // namespace cw::test

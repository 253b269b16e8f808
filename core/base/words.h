#pragma once
#include <algorithm>
#include <array>
#include <string>
#include <string_view>
#include <utility>

#include "core/base/result.h"

namespace cw {

/// The file word of each value of an enum: specialise with
/// `static constexpr std::array<std::pair<E, std::string_view>, n> kAll{{ {E::First, "first"}, … }};`.
template <class E>
struct Words;

/// "retorque-due" for Reason::RetorqueDue; empty for a value that is none of the enum's.
template <class E>
constexpr std::string_view wordOf(E value) {
  for (const auto& [known, word] : Words<E>::kAll)
    if (known == value) return word;
  return {};
}

/// The value of that word. InvalidInput at `place`, naming all words, for any other.
template <class E>
Result<E> fromWord(std::string_view written, const std::string& place = {}) {
  std::string known;
  for (const auto& [value, word] : Words<E>::kAll) {
    if (word == written) return value;
    known += (known.empty() ? "" : ", ") + std::string(word);
  }
  return fail(ErrorCode::InvalidInput, place, written, {"“%1” is not known here", {shown(written)}},
              {"write one of %1", {known}});
}

}  // namespace cw

#pragma once
#include "core/base/error.h"
#include "core/base/utf8.h"
#include "tests/fuzz/fuzz.h"

namespace cw::fuzz {

/// What every refusal promises, whatever was read.
inline void checkRefusal(const Error& error) {
  const std::string words = sentence(error);
  require(!words.empty() && words.size() < 1000, "a refusal is one short sentence");
  require(isUtf8(words), "a refusal is UTF-8");
  for (const char c : words) require(c < 0 || c >= 0x20, "a refusal holds no control characters");
}

}  // namespace cw::fuzz

#pragma once
#include <string>

#include "core/record/next.h"

namespace cw::test {

/// What comes next, in one word.
inline std::string inWords(const Next& next) {
  return std::to_string(static_cast<int>(next.stage)) + "/" + std::to_string(next.step) + "/" +
         std::to_string(next.pass) + "/" + next.position + "/" + std::to_string(next.round);
}

}  // namespace cw::test

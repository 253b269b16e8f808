#pragma once
#include <string>

#include "core/base/clock.h"

namespace cw {

/// Who did something to the shop's books, when, and what they say of it.
struct Deed {
  std::string by;  ///< sign of a person
  Moment at;
  std::string remark{};
};

}  // namespace cw

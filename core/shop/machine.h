#pragma once
#include <string>

#include "core/base/id.h"

namespace cw {

/// The customer's unit.
struct Machine {
  std::string id;     ///< how the shop calls it, unique: "P-12"
  std::string model;  ///< make and model as on its plate
  std::string serial;
  std::string hours;  ///< as read, with unit: "412 h"; may be empty
};

}  // namespace cw

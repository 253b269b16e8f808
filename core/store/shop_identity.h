#pragma once
#include <string>

#include "core/base/id.h"
#include "core/record/key.h"

namespace cw {

/// Which shop a file belongs to.
struct ShopIdentity {
  Id id;
  std::string name;
  PublicKey key;
};

}  // namespace cw

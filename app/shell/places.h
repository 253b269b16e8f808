#pragma once
#include <vector>

#include "app/common/place.h"

namespace cw {

/// The places that exist, in the rail's order.
const std::vector<Place>& places();

}  // namespace cw

#pragma once
#include <span>
#include <vector>

#include "core/base/message.h"
#include "core/pattern/order.h"

namespace cw {

/// The rule in one sentence: "opposite, then a quarter turn, then opposite …".
Message inWords(OrderRule rule);

/// The walk from position to position as the part is seen, one message each: "start at 1", "opposite: 7",
/// "a quarter turn clockwise: 4", "beside 1, clockwise: 2", "between 2 and 4: 3". `order` counts positions
/// from 1; numbers that are none are passed over.
std::vector<Message> explainOrder(const std::vector<Position>& positions, std::span<const std::size_t> order);

}  // namespace cw

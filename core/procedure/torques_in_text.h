#pragma once
#include <string_view>
#include <vector>

#include "core/base/message.h"
#include "core/units/stated.h"

namespace cw {

/// The torques that a text speaks of, said in the unit of the wrench in hand: "9 N·m is 79.66 in·lbf". None
/// where the text speaks in that unit itself.
std::vector<Message> torquesInUnit(std::string_view text, const TorqueUnit& unit);

}  // namespace cw

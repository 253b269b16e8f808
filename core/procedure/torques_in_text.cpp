#include "core/procedure/torques_in_text.h"

#include <algorithm>

#include "core/procedure/numbers_in_text.h"
#include "core/units/format.h"

namespace cw {
namespace {

constexpr int kDigitsSaid = 4;

}  // namespace

std::vector<Message> torquesInUnit(std::string_view text, const TorqueUnit& unit) {
  std::vector<StatedTorque> torques;
  for (const NumberInText& number : numbersIn(text))
    if (number.torque) torques.push_back(*number.torque);
  const auto isInUnit = [&](const StatedTorque& torque) { return torque.unit == &unit; };
  if (std::any_of(torques.begin(), torques.end(), isInUnit)) return {};
  std::vector<Message> out;
  for (const StatedTorque& torque : torques)
    out.push_back({"%1 is %2", {cw::text(torque), cw::text(torque.value(), unit, kDigitsSaid)}});
  return out;
}

}  // namespace cw

#include "core/procedure/printed_torque.h"

#include <algorithm>
#include <array>
#include <cctype>

#include "core/procedure/numbers_in_text.h"
#include "core/units/format.h"

namespace cw {
namespace {

bool says(const std::string& printed, std::initializer_list<std::string_view> words) {
  std::string lower = printed;
  std::transform(lower.begin(), lower.end(), lower.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return std::any_of(words.begin(), words.end(),
                     [&](std::string_view word) { return lower.find(word) != std::string::npos; });
}

StatedTorque computed(double number, const TorqueUnit* unit) {
  return {significant(number, 4), unit};
}

PrintedTorque single(const StatedTorque& torque) {
  PrintedTorque out;
  out.reading = Reading::Value;
  out.low = computed(torque.number() * (1 - kAssumedTolerance), torque.unit);
  out.aim = torque;
  out.high = computed(torque.number() * (1 + kAssumedTolerance), torque.unit);
  out.why = "The source states no tolerance; " + significant(kAssumedTolerance * 100, 2) +
            " % either way is assumed.";
  return out;
}

PrintedTorque limit(const StatedTorque& torque, bool most) {
  PrintedTorque out;
  out.reading = most ? Reading::Maximum : Reading::Words;
  (most ? out.high : out.low) = torque;
  out.why = most ? "The source states a highest torque only." : "The source states a lowest torque only.";
  return out;
}

PrintedTorque between(const StatedTorque& low, const StatedTorque& aim, const StatedTorque& high,
                      Reading reading) {
  PrintedTorque out;
  out.reading = reading;
  out.low = low, out.aim = aim, out.high = high;
  out.toleranceStated = true;
  return out;
}

}  // namespace

PrintedTorque readPrinted(const std::string& printed) {
  std::vector<StatedTorque> torques;
  for (const NumberInText& number : numbersIn(printed))
    if (number.torque) torques.push_back(*number.torque);
  if (torques.size() == 1) {
    if (says(printed, {"max", "not over", "not more", "exceed", "up to", "at most"}))
      return limit(torques[0], true);
    if (says(printed, {"min", "at least", "not less"})) return limit(torques[0], false);
    return single(torques[0]);
  }
  if (torques.size() != 2 || torques[0].unit != torques[1].unit) return {};
  const TorqueUnit* unit = torques[0].unit;
  const double first = torques[0].number(), second = torques[1].number();
  if (says(printed, {"±"}) && second < first)
    return between(computed(first - second, unit), torques[0], computed(first + second, unit),
                   Reading::Value);
  if (first < second)
    return between(torques[0], computed((first + second) / 2, unit), torques[1], Reading::Range);
  return {};
}

}  // namespace cw

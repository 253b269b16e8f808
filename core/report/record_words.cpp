#include "core/report/record_words.h"

#include "core/units/format.h"

namespace cw {

std::string numberList(const std::vector<int>& numbers) {
  std::vector<std::string> out;
  for (const int number : numbers) out.push_back(std::to_string(number));
  return listed(out);
}

std::string torqueText(const StatedTorque& torque) {
  return torque.empty() ? std::string() : text(torque);
}

std::string rangeText(const StatedTorque& low, const StatedTorque& high) {
  if (low.empty() || high.empty()) return {};
  if (low.unit != high.unit) return text(low) + "–" + text(high);
  return low == high ? text(low) : low.digits + "–" + text(high);
}

Message deference() {
  return "The record says what was done; it does not certify the machine. The maker's manual, local codes "
         "and "
         "licensed practice take precedence.";
}

}  // namespace cw

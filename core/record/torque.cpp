#include "core/record/torque.h"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace cw {
namespace {

// Half a unit in the last place of a double's decimal text is no breach of a stated limit.
constexpr double kSlack = 1e-9;

std::string_view trimmed(std::string_view text) {
  while (!text.empty() && text.front() == ' ') text.remove_prefix(1);
  while (!text.empty() && text.back() == ' ') text.remove_suffix(1);
  return text;
}

}  // namespace

bool within(const StatedTorque& value, const JobTorque& torque) {
  if (value.empty() || torque.low.empty() || torque.high.empty()) return false;
  const double slack = kSlack * torque.high.value().si();
  return value.value().si() >= torque.low.value().si() - slack &&
         value.value().si() <= torque.high.value().si() + slack;
}

bool sameTorque(const StatedTorque& a, const StatedTorque& b) {
  if (a.empty() || b.empty()) return a.empty() == b.empty();
  const double left = a.value().si(), right = b.value().si();
  return std::abs(left - right) <= kSlack * std::max(std::abs(left), std::abs(right));
}

bool sameMark(std::string_view a, std::string_view b) {
  a = trimmed(a), b = trimmed(b);
  const auto same = [](char left, char right) {
    return std::tolower(static_cast<unsigned char>(left)) == std::tolower(static_cast<unsigned char>(right));
  };
  return std::equal(a.begin(), a.end(), b.begin(), b.end(), same);
}

Length differenceOf(const std::vector<StatedLength>& gaps) {
  if (gaps.empty()) return {};
  const auto [narrowest, widest] = std::minmax_element(
      gaps.begin(), gaps.end(), [](const auto& a, const auto& b) { return a.value() < b.value(); });
  return widest->value() - narrowest->value();
}

bool even(const std::vector<StatedLength>& gaps, const GapReadings& wanted) {
  return differenceOf(gaps).si() <= wanted.mostDifference.value().si() * (1 + kSlack);
}

bool withinLimits(const Step& step, const std::string& value) {
  const double number = numberOf(value);
  return (step.low.empty() || number >= numberOf(step.low)) &&
         (step.high.empty() || number <= numberOf(step.high));
}

}  // namespace cw

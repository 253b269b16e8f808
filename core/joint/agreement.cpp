#include "core/joint/agreement.h"

#include <cmath>

#include "core/joint/checks.h"

namespace cw {
namespace {

constexpr double kGenerous = 0.05;

/// Half of the last printed place, as a torque.
Torque halfPlace(const StatedTorque& stated) {
  const auto point = stated.digits.find('.');
  const auto decimals = point == std::string::npos ? 0 : stated.digits.size() - point - 1;
  return quantity(0.5 * std::pow(10, -static_cast<double>(decimals)), *stated.unit);
}

bool sameWithinDigits(const StatedTorque& first, const StatedTorque& second) {
  const Torque apart = first.value() - second.value();
  return std::abs(apart.si()) <= (halfPlace(first) + halfPlace(second)).si() * (1 + 1e-9);
}

Agreement compare(const StatedTorque& first, const StatedTorque& second) {
  if (sameWithinDigits(first, second)) return Agreement::Agrees;
  return std::abs(std::log(second.value() / first.value())) <= kGenerous ? Agreement::Rounded
                                                                         : Agreement::Disagrees;
}

StatedTorque inUnitOf(const StatedTorque& stated, const StatedTorque& other) {
  return {significant(in(*other.unit, stated.value()), 3), other.unit};
}

Result<void> check(const StatedTorque& first, const StatedTorque& second) {
  if (first.empty() || second.empty())
    return fail(ErrorCode::InvalidInput, "columns", "", "one of the two torques is missing", "give both");
  CW_CHECK(checkPositive("first column", first.value(), *first.unit));
  CW_CHECK(checkPositive("second column", second.value(), *second.unit));
  if (first.unit != second.unit) return {};
  return fail(ErrorCode::InvalidInput, "columns", text(second),
              {"both columns are in %1", {std::string(first.unit->symbol)}},
              "give the two units that are printed");
}

}  // namespace

Result<ColumnsAgreement> columnsAgree(const StatedTorque& first, const StatedTorque& second) {
  CW_CHECK(check(first, second));
  ColumnsAgreement found;
  found.agreement = compare(first, second);
  found.ratio = second.value() / first.value();
  if (found.agreement != Agreement::Disagrees) return found;
  found.exchanged = compare({first.digits, second.unit}, {second.digits, first.unit}) != Agreement::Disagrees;
  found.firstShouldBe = inUnitOf(second, first);
  found.secondShouldBe = inUnitOf(first, second);
  return found;
}

Message explain(const ColumnsAgreement& found, const StatedTorque& first, const StatedTorque& second) {
  switch (found.agreement) {
    case Agreement::Agrees:
      return {"%1 and %2 are the same torque.", {text(first), text(second)}};
    case Agreement::Rounded:
      return {"%1 and %2 are the same torque, rounded by %3 %.",
              {text(first), text(second), significant(std::abs(found.ratio - 1) * 100, 2)}};
    case Agreement::Disagrees:
      break;
  }
  if (found.exchanged)
    return {"%1 and %2 agree only if their units change places.", {text(first), text(second)}};
  return {"%1 and %2 are not the same torque: %1 would be %3, and %2 would be %4.",
          {text(first), text(second), text(*found.secondShouldBe), text(*found.firstShouldBe)}};
}

}  // namespace cw

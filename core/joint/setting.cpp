#include "core/joint/setting.h"

#include "core/joint/checks.h"

namespace cw {
namespace {

Result<void> check(const TorqueTarget& target) {
  CW_CHECK(checkPositive("torque", target.aim, kNewtonMetre));
  CW_CHECK(checkNotNegative("tolerance, low", target.tolerance.low, kNewtonMetre));
  CW_CHECK(checkPositive("tolerance, high", target.tolerance.high, kNewtonMetre));
  if (target.tolerance.low <= target.aim && target.aim <= target.tolerance.high) return {};
  return fail(ErrorCode::OutOfRange, "torque", text(target.aim, kNewtonMetre, 4),
              {"%1 lies outside its own tolerance", {text(target.aim, kNewtonMetre, 4)}},
              "give a tolerance that holds the torque aimed at");
}

Result<Torque> atWrench(Torque aim, const TorqueTarget& target) {
  return withPrevailing(aim, target.prevailing, target.rule);
}

/// Setting over torque at the fastener.
Result<double> leverRatio(Torque atFastener, const std::optional<Lever>& lever) {
  if (!lever) return 1.0;
  CW_TRY(setting, settingFor(atFastener, *lever));
  return setting.value / atFastener;
}

}  // namespace

Result<Worked<WrenchSetting>> wrenchSetting(const TorqueTarget& target, const std::optional<Lever>& lever,
                                            const StatedTorque& graduation) {
  CW_CHECK(check(target));
  CW_TRY(applied, atWrench(target.aim, target));
  const Torque added = applied - target.aim;  // the same at both ends of the tolerance
  CW_TRY(ratio, leverRatio(applied, lever));

  WrenchSetting result;
  result.exact = applied * ratio;
  result.allowed = {(target.tolerance.low + added) * ratio, (target.tolerance.high + added) * ratio};
  CW_TRY(mark, roundedToGraduation(result.exact, result.allowed, graduation));
  result.setting = mark;
  result.applied = mark.value() / ratio;

  Working working;
  working.formula = "TW = (T + Tp)·L/(L + E·cos θ), to the nearest mark inside the tolerance";
  working.give("T", "torque aimed at", target.aim, kNewtonMetre, "the specification");
  working.give("Tp", {"prevailing torque that is added, rule %1", {std::string(wordOf(target.rule))}}, added,
               kNewtonMetre, "measured or stated");
  working.step("Ta", "T+Tp", applied, kNewtonMetre);
  working.give("T_min", "tolerance, low", target.tolerance.low, kNewtonMetre, "the specification");
  working.give("T_max", "tolerance, high", target.tolerance.high, kNewtonMetre, "the specification");
  if (lever) {
    Working levers = settingFor(applied, *lever)->working;
    levers.given.pop_back();  // T: here the torque with the prevailing part, a step of its own
    levers.steps.pop_back();
    working.include(levers);
  }
  const std::string through = lever ? "·L/Leff" : "";
  working.step("TW", "Ta" + through, result.exact, kNewtonMetre);
  working.step("TW_min", "(T_min+Tp)" + through, result.allowed.low, kNewtonMetre);
  working.step("TW_max", "(T_max+Tp)" + through, result.allowed.high, kNewtonMetre);
  working.validity.push_back({"set to %1", {text(mark)}});
  return Worked<WrenchSetting>{std::move(result), std::move(working)};
}

}  // namespace cw

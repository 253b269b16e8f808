#include "core/joint/recondition.h"

#include <algorithm>
#include <cmath>

#include "core/joint/checks.h"

namespace cw {
namespace {

bool has(const Condition& condition, Basis basis) {
  return basis == Basis::NutFactor ? condition.nutFactor.has_value()
                                   : condition.threadFriction || condition.bearingFriction;
}

Result<Basis> sharedBasis(const Condition& from, const Condition& to) {
  for (Basis basis : {Basis::NutFactor, Basis::LongForm})
    if (has(from, basis) && has(to, basis)) return basis;
  return fail(ErrorCode::InvalidInput, "condition", to.name,
              {"“%1” and “%2” share neither nut factor nor friction", {from.name, to.name}},
              "choose conditions that state the same");
}

Result<void> checkChange(const std::optional<Condition>& from, const Condition& to) {
  if (!from)
    return fail(ErrorCode::InvalidInput, "condition", "",
                "the specification does not state the condition its torque is for",
                "ask its source; without it no torque for another condition follows");
  if (from->name != to.name) return {};
  return fail(ErrorCode::OutOfTurn, "condition", to.name,
              {"“%1” is the condition the torque is specified for", {to.name}},
              "use the torque as specified");
}

}  // namespace

Result<Worked<Reconditioned>> recondition(Torque tightening, const std::optional<Condition>& from,
                                          const Condition& to, const Thread& thread,
                                          const std::optional<BearingFace>& face,
                                          std::optional<Basis> basis) {
  CW_CHECK(checkChange(from, to));
  CW_TRY(shared, basis ? Result<Basis>(*basis) : sharedBasis(*from, to));
  CW_TRY(before, resistanceOf(*from, thread, face, shared));
  CW_TRY(after, resistanceOf(to, thread, face, shared));
  CW_CHECK(checkPositive("torque", tightening, kNewtonMetre));
  const Force load = tightening / before.typical.arm;
  CW_CHECK(checkBearable("torque", text(tightening, kNewtonMetre, 4), load, thread));

  const Torque typical = load * after.typical.arm;
  const double up = std::hypot(after.high.arm / after.typical.arm - 1, before.typical.arm / before.low.arm - 1);
  const double down =
      std::hypot(1 - after.low.arm / after.typical.arm, 1 - before.typical.arm / before.high.arm);
  const RequiredTorque torque{typical * std::max(0.0, 1 - down), typical, typical * (1 + up)};

  Working working = workingOf(before, thread, "1");
  working.include(workingOf(after, thread, "2"));
  working.formula = shared == Basis::NutFactor
                        ? "T2 = T1·K2/K1 at equal clamp load, a = K·d"
                        : "T2 = T1·a2/a1 at equal clamp load, a = (d2/2)·tan(φ+ρ′) + µb·Db/2";
  working.give("T1", "torque as specified", tightening, kNewtonMetre, "the specification");
  working.step("F", "1000·T1/a1", load, kNewton);
  working.step("T2", "F·a2/1000", torque.typical, kNewtonMetre);
  working.step("up", "√((a2_hi/a2-1)²+(a1/a1_lo-1)²)", up);
  working.step("down", "√((1-a2_lo/a2)²+(1-a1/a1_hi)²)", down);
  working.step("T2_hi", "T2·(1+up)", torque.high, kNewtonMetre);
  working.step("T2_lo", "T2·max(0,1-down)", torque.low, kNewtonMetre);
  working.cautions.push_back({"first choice: bring the parts into the stated condition, “%1”", {from->name}});
  working.cautions.push_back(
      "using this torque is a deviation from the specification and needs someone's permission");
  return Worked<Reconditioned>{{torque, load, shared}, std::move(working)};
}

}  // namespace cw

#include "core/joint/checks.h"
#include "core/report/figures.h"

namespace cw {
namespace {

constexpr const char* kFactorSource = "NIST SP 811:2008, B.8, exact";

std::string factorSymbol(const TorqueUnit& unit) {
  return "u[" + std::string(unit.symbol) + "]";
}

void giveFactor(Working& working, const TorqueUnit& unit) {
  working.give(factorSymbol(unit), {"one %1 in N·m", {std::string(unit.symbol)}},
               in(kNewtonMetre, quantity(1, unit)), kFactorSource);
}

}  // namespace

Result<Outcome> convertedTorque(const StatedTorque& torque) {
  CW_CHECK(checkPositive("torque", torque.value(), *torque.unit));
  Outcome outcome;
  Working& working = outcome.working;
  working.formula = "T in another unit = T·u/u′, u and u′ the two units in N·m";
  working.give("T", "torque as stated", torque.value(), *torque.unit, "stated");
  giveFactor(working, *torque.unit);
  for (const TorqueUnit* unit : unitsOf<TorqueTag>()) {
    if (unit->code == torque.unit->code) continue;
    giveFactor(working, *unit);
    working.step("T[" + std::string(unit->symbol) + "]",
                 "T·" + factorSymbol(*torque.unit) + "/" + factorSymbol(*unit), torque.value(), *unit);
  }
  FigureAnswer answer = torqueAnswer("The same torque", torque);
  for (const TorqueUnit* unit : {&kNewtonCentimetre, &kKilogramMetre, &kKilogramCentimetre, &kOunceInch})
    if (unit->code != torque.unit->code) answer.further.push_back(text(torque.value(), *unit, 4));
  outcome.answers = {std::move(answer)};
  return outcome;
}

}  // namespace cw

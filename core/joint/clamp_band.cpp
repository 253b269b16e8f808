#include "core/joint/clamp_band.h"

#include <algorithm>
#include <cmath>

#include "core/joint/checks.h"

namespace cw {
namespace {

Working bandWorking(const ResistanceRange& resistance, const Thread& thread, double toolDeviation) {
  Working working = workingOf(resistance, thread);
  working.give("δ", "deviation of the torque tool", toolDeviation, "stated");
  working.sources.push_back("independent deviations add by root of squares");
  return working;
}

}  // namespace

Result<Worked<ClampBand>> clampFromTorque(Torque tightening, const ResistanceRange& resistance,
                                          double toolDeviation, const Thread& thread) {
  CW_CHECK(checkNotNegative("torque", tightening, kNewtonMetre));
  CW_CHECK(checkDeviation("tool deviation", toolDeviation));
  const Force typical = tightening / resistance.typical.arm;
  CW_CHECK(checkBearable("torque", text(tightening, kNewtonMetre, 4), typical, thread));
  const double up = std::hypot(toolDeviation, resistance.typical.arm / resistance.low.arm - 1);
  const double down = std::hypot(toolDeviation, 1 - resistance.typical.arm / resistance.high.arm);
  const ClampBand band{typical * std::max(0.0, 1 - down), typical, typical * (1 + up)};

  Working working = bandWorking(resistance, thread, toolDeviation);
  working.give("T", "torque that tightens", tightening, kNewtonMetre, "stated");
  working.step("F", "1000·T/a", band.typical, kNewton);
  working.step("up", "√(δ²+(a/a_lo-1)²)", up);
  working.step("down", "√(δ²+(1-a/a_hi)²)", down);
  working.step("F_hi", "F·(1+up)", band.high, kNewton);
  working.step("F_lo", "F·max(0,1-down)", band.low, kNewton);
  return Worked<ClampBand>{band, std::move(working)};
}

Result<Worked<RequiredTorque>> torqueFromClamp(Force load, const ResistanceRange& resistance,
                                               double toolDeviation, const Thread& thread) {
  CW_CHECK(checkNotNegative("clamp load", load, kKilonewton));
  CW_CHECK(checkDeviation("tool deviation", toolDeviation));
  CW_CHECK(checkBearable("clamp load", text(load, kKilonewton, 4), load, thread));
  const Torque typical = load * resistance.typical.arm;
  const double up = std::hypot(toolDeviation, resistance.high.arm / resistance.typical.arm - 1);
  const double down = std::hypot(toolDeviation, 1 - resistance.low.arm / resistance.typical.arm);
  const RequiredTorque band{typical * std::max(0.0, 1 - down), typical, typical * (1 + up)};

  Working working = bandWorking(resistance, thread, toolDeviation);
  working.give("F", "clamp load", load, kNewton, "stated");
  working.step("T", "F·a/1000", band.typical, kNewtonMetre);
  working.step("up", "√(δ²+(a_hi/a-1)²)", up);
  working.step("down", "√(δ²+(1-a_lo/a)²)", down);
  working.step("T_hi", "T·(1+up)", band.high, kNewtonMetre);
  working.step("T_lo", "T·max(0,1-down)", band.low, kNewtonMetre);
  return Worked<RequiredTorque>{band, std::move(working)};
}

Result<double> tighteningFactor(double scatter) {
  CW_CHECK(checkDeviation("scatter", scatter));
  return (1 + scatter) / (1 - scatter);
}

Result<double> scatterOf(double tighteningFactor) {
  CW_CHECK(checkFinite("tightening factor", tighteningFactor));
  if (tighteningFactor >= 1) return (tighteningFactor - 1) / (tighteningFactor + 1);
  const std::string given = significant(tighteningFactor, 4);
  return fail(ErrorCode::OutOfRange, "tightening factor", given, {"%1 is below 1", {given}},
              "greatest over least clamp load is 1 or more");
}

}  // namespace cw

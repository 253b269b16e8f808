#include "core/joint/capacity.h"

#include <algorithm>

#include "core/joint/checks.h"
#include "core/joint/utilisation.h"

namespace cw {
namespace {

constexpr double kMostAboveTypical = 1.5;

Force loadAtYield(const Resistance& resistance, const Thread& thread, const Grade& grade) {
  return grade.yield * thread.stressArea / twistFactor(thread, resistance.friction.thread);
}

Result<void> check(const FastenerCase& fastener) {
  CW_CHECK(checkThread(fastener.thread));
  if (fastener.grade) return checkGrade(*fastener.grade, fastener.thread);
  return fail(ErrorCode::InvalidInput, "grade", "", "the strength grade is not stated", "name the grade");
}

/// The steps to the yield torque at one friction; `mark` tells typical and highest apart.
void yieldSteps(Working& working, const std::string& mark, const Resistance& resistance, const Thread& thread,
                const Grade& grade) {
  const double slope = wedgeSlope(thread.pitchDiameter, thread.pitch, resistance.friction.thread);
  const Force load = loadAtYield(resistance, thread, grade);
  const std::string tan = "µ" + mark + "/cos(30°)";
  working.give("µ" + mark, "thread friction", resistance.friction.thread, "as the condition amounts to");
  working.step("v" + mark, "(tanφ+" + tan + ")/(1-tanφ·" + tan + ")", slope);
  working.step("q" + mark, "√(1+3·(1.5·d2/d0·v" + mark + ")²)",
               twistFactor(thread, resistance.friction.thread));
  working.step("Fy" + mark, "Ry·As/q" + mark, load, kNewton);
  working.step("Ty" + mark, "Fy" + mark + "·a" + mark + "/1000", load * resistance.arm, kNewtonMetre);
}

void giveStrength(Working& working, const Thread& thread, const Grade& grade) {
  working.give("P", "pitch", thread.pitch, kMillimetre, thread.provenance.source);
  working.give("d2", "pitch diameter", thread.pitchDiameter, kMillimetre, thread.provenance.source);
  working.give("d3", "root diameter", thread.rootDiameter, kMillimetre, thread.provenance.source);
  working.give("As", "stress area", thread.stressArea, kSquareMillimetre, thread.provenance.source);
  working.give("Ry", "yield strength", grade.yield, kMegapascal, grade.name + ", " + grade.provenance.source);
  working.step("tanφ", "P/(π·d2)", thread.pitch / (kPi * thread.pitchDiameter));
  working.step("d0", "(d2+d3)/2", (thread.pitchDiameter + thread.rootDiameter) / 2, kMillimetre);
}

Result<void> stripSteps(Working& working, const FastenerCase& fastener, const ResistanceRange& range) {
  CW_TRY(strips, stripping(fastener.thread, *fastener.grade, *fastener.hole));
  working.include(strips.working);
  const Force load = std::min(strips.value.boltStrips, strips.value.tappedStrips);
  working.step("F_strip", "min(F_s,F_n)", load, kNewton);
  working.step("T_strip", "F_strip·a/1000", load * range.typical.arm, kNewtonMetre);
  return {};
}

}  // namespace

Result<ResistanceRange> resistanceOf(const FastenerCase& fastener) {
  return fastener.condition ? resistanceOf(*fastener.condition, fastener.thread, fastener.face)
                            : unstatedResistance(fastener.thread, fastener.face);
}

Result<Capacity> capacityOf(const FastenerCase& fastener) {
  CW_CHECK(check(fastener));
  CW_TRY(range, resistanceOf(fastener));
  Capacity capacity;
  capacity.yieldTypical = loadAtYield(range.typical, fastener.thread, *fastener.grade) * range.typical.arm;
  capacity.yieldCertain = loadAtYield(range.high, fastener.thread, *fastener.grade) * range.high.arm;
  capacity.typical = capacity.yieldTypical;
  capacity.high = std::min(capacity.yieldCertain, kMostAboveTypical * capacity.yieldTypical);
  if (fastener.hole) {
    CW_TRY(strips, strippingLoad(fastener.thread, *fastener.grade, *fastener.hole));
    if (strips * range.typical.arm < capacity.yieldTypical) {
      capacity.limit = Limit::ThreadStripping;
      capacity.typical = strips * range.typical.arm;
      capacity.high = capacity.typical;
    }
  }
  capacity.low = capacity.high / kBandRatio;
  return capacity;
}

Result<Working> capacityWorking(const FastenerCase& fastener) {
  CW_TRY(capacity, capacityOf(fastener));
  CW_TRY(range, resistanceOf(fastener));
  Working working = workingOf(range, fastener.thread);
  giveStrength(working, fastener.thread, *fastener.grade);
  yieldSteps(working, "", range.typical, fastener.thread, *fastener.grade);
  yieldSteps(working, "_hi", range.high, fastener.thread, *fastener.grade);
  if (fastener.hole) CW_CHECK(stripSteps(working, fastener, range));
  const bool strips = capacity.limit == Limit::ThreadStripping;
  working.formula = "band from T_hi/8.6 to T_hi";
  working.step("T_hi", strips ? "T_strip" : "min(Ty_hi,1.5·Ty)", capacity.high, kNewtonMetre);
  working.step("T_lo", "T_hi/8.6", capacity.low, kNewtonMetre);
  working.sources.push_back(
      "the band is a rule of this program: narrower than the exchange of in·lbf and N·m");
  return working;
}

}  // namespace cw

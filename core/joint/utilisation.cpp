#include "core/joint/utilisation.h"

#include <cmath>

#include "core/joint/checks.h"

namespace cw {
namespace {

constexpr double kMostShare = 1.2;

double torsionNumber(Torsion torsion) {
  return torsion == Torsion::Plastic ? 1.5 : 2;
}

Result<void> check(const Thread& thread, const Grade& grade) {
  CW_CHECK(checkThread(thread));
  return checkGrade(grade, thread);
}

Result<Stress> proofOf(const Grade& grade) {
  if (grade.proof) return *grade.proof;
  return fail(ErrorCode::InvalidInput, "grade", grade.name, {"%1 states no proof stress", {grade.name}},
              "give a share of yield instead");
}

Working shareWorking(const char* symbol, const char* meaning, double share, Stress strength,
                     const Thread& thread, const Grade& grade, Force load) {
  Working working;
  working.formula = std::string("F = share·") + symbol + "·As";
  working.give("share", "share of strength", share, "stated");
  working.give(symbol, meaning, strength, kMegapascal, grade.name + ", " + grade.provenance.source);
  working.give("As", "stress area", thread.stressArea, kSquareMillimetre, thread.provenance.source);
  working.step("F", std::string("share·") + symbol + "·As", load, kNewton);
  working.validity = {"axial stress alone, torsion while tightening left out"};
  return working;
}

Result<Worked<Force>> loadAtShare(const char* symbol, const char* meaning, double share, Stress strength,
                                  const Thread& thread, const Grade& grade) {
  CW_CHECK(checkShare("share", share, kMostShare));
  const Force load = share * strength * thread.stressArea;
  return Worked<Force>{load, shareWorking(symbol, meaning, share, strength, thread, grade, load)};
}

Working utilisationWorking(double share, double threadFriction, const Thread& thread, const Grade& grade,
                           Torsion torsion, Force load) {
  const double lead = thread.pitch / (kPi * thread.pitchDiameter);
  const double rho = threadFriction / std::cos(kFlank.si());
  Working working;
  working.formula = "F = ν·Ry·As/√(1+3·(k·(d2/d0)·tan(φ+ρ′))²)";
  working.give("ν", "share of yield used", share, "stated; VDI 2230 uses 0.9");
  working.give("Ry", "yield strength", grade.yield, kMegapascal, grade.name + ", " + grade.provenance.source);
  working.give("As", "stress area", thread.stressArea, kSquareMillimetre, thread.provenance.source);
  working.give("P", "pitch", thread.pitch, kMillimetre, thread.provenance.source);
  working.give("d2", "pitch diameter", thread.pitchDiameter, kMillimetre, thread.provenance.source);
  working.give("d3", "root diameter", thread.rootDiameter, kMillimetre, thread.provenance.source);
  working.give("µt", "thread friction", threadFriction, "stated");
  working.give(
      "k", torsion == Torsion::Plastic ? "torsion, fully plastic section" : "torsion, elastic section",
      torsionNumber(torsion), torsion == Torsion::Plastic ? "VDI 2230 from 1986" : "tables before 1986");
  working.step("tanφ", "P/(π·d2)", lead);
  working.step("tanρ", "µt/cos(30°)", rho);
  working.step("w", "(tanφ+tanρ)/(1-tanφ·tanρ)", (lead + rho) / (1 - lead * rho));
  working.step("d0", "(d2+d3)/2", (thread.pitchDiameter + thread.rootDiameter) / 2, kMillimetre);
  working.step("q", "√(1+3·(k·d2/d0·w)²)", twistFactor(thread, threadFriction, torsion));
  working.step("F", "ν·Ry·As/q", load, kNewton);
  working.validity = {"while the wrench turns; the torsion halves once it is taken off"};
  working.sources = {"VDI 2230 part 1"};
  return working;
}

}  // namespace

double twistFactor(const Thread& thread, double threadFriction, Torsion torsion) {
  const Length stressDiameter = (thread.pitchDiameter + thread.rootDiameter) / 2;
  const double shear = torsionNumber(torsion) * (thread.pitchDiameter / stressDiameter) *
                       wedgeSlope(thread.pitchDiameter, thread.pitch, threadFriction);
  return std::sqrt(1 + 3 * shear * shear);
}

Result<double> utilisation(Force load, double threadFriction, const Thread& thread, const Grade& grade,
                           Torsion torsion) {
  CW_CHECK(check(thread, grade));
  CW_CHECK(checkFriction("thread friction", threadFriction));
  CW_CHECK(checkNotNegative("clamp load", load, kKilonewton));
  return load / (grade.yield * thread.stressArea) * twistFactor(thread, threadFriction, torsion);
}

Result<Worked<Force>> loadAtUtilisation(double share, double threadFriction, const Thread& thread,
                                        const Grade& grade, Torsion torsion) {
  CW_CHECK(check(thread, grade));
  CW_CHECK(checkFriction("thread friction", threadFriction));
  CW_CHECK(checkShare("share of yield", share, 1));
  const Force load = share * grade.yield * thread.stressArea / twistFactor(thread, threadFriction, torsion);
  return Worked<Force>{load, utilisationWorking(share, threadFriction, thread, grade, torsion, load)};
}

Result<double> proofFraction(Force load, const Thread& thread, const Grade& grade) {
  CW_CHECK(check(thread, grade));
  CW_TRY(proof, proofOf(grade));
  CW_CHECK(checkNotNegative("clamp load", load, kKilonewton));
  return load / (proof * thread.stressArea);
}

Result<double> yieldFraction(Force load, const Thread& thread, const Grade& grade) {
  CW_CHECK(check(thread, grade));
  CW_CHECK(checkNotNegative("clamp load", load, kKilonewton));
  return load / (grade.yield * thread.stressArea);
}

Result<Worked<Force>> loadAtProof(double share, const Thread& thread, const Grade& grade) {
  CW_CHECK(check(thread, grade));
  CW_TRY(proof, proofOf(grade));
  return loadAtShare("Sp", "proof stress", share, proof, thread, grade);
}

Result<Worked<Force>> loadAtYield(double share, const Thread& thread, const Grade& grade) {
  CW_CHECK(check(thread, grade));
  return loadAtShare("Ry", "yield strength", share, grade.yield, thread, grade);
}

}  // namespace cw

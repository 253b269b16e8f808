#include "core/joint/stripping.h"

#include <algorithm>

#include "core/joint/checks.h"
#include "core/joint/wedge.h"

namespace cw {
namespace {

constexpr double kEvenShare = 2.5;    ///< in diameters; beyond, the far threads carry hardly anything
constexpr double kLeastTurns = 0.01;  ///< of thread; less holds nothing
constexpr double kLongest = 10;       ///< in diameters; no hole is tapped deeper (common practice, no source)

struct ShearBasis {
  ThreadLimits limits;
  ShearPerLength shear;
  Stress boltShear;
};

Length sheared(Length at, Length ridge, Length pitch) {
  return kPi * (at / pitch) * (pitch / 2 + kTanFlank * ridge);
}

Result<void> checkEngagement(const Thread& thread, const TappedHole& hole) {
  CW_CHECK(checkPositive("engagement", hole.engagement, kMillimetre));
  if (hole.engagement < kLeastTurns * thread.pitch)
    return fail(
        ErrorCode::OutOfRange, "engagement", text(hole.engagement, kMillimetre),
        {"%1 is not a hundredth of a turn of %2", {text(hole.engagement, kMillimetre), thread.designation}},
        "give the length of full thread that engages");
  const Length longest = kLongest * thread.diameter;
  if (hole.engagement > longest)
    return fail(
        ErrorCode::OutOfRange, "engagement", text(hole.engagement, kMillimetre),
        {"%1 is longer than any thread of %2", {text(hole.engagement, kMillimetre), thread.designation}},
        {"give the length of full threads that engage, at most %1", {text(longest, kMillimetre)}});
  if (!hole.threadLength || hole.engagement <= *hole.threadLength) return {};
  return fail(ErrorCode::OutOfRange, "engagement", text(hole.engagement, kMillimetre),
              {"%1 is longer than the thread in the hole, %2",
               {text(hole.engagement, kMillimetre), text(*hole.threadLength, kMillimetre)}},
              "give the length of full threads that engage");
}

Result<ShearBasis> basisOf(const Thread& thread, const Grade& grade, const TappedHole& hole) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkGrade(grade, thread));
  CW_CHECK(checkEngagement(thread, hole));
  CW_CHECK(checkPositive(hole.material.name + ", shear strength", hole.material.shearStrength, kMegapascal));
  CW_TRY(limits, hole.limits ? Result<ThreadLimits>(*hole.limits)
                             : limitsOf(thread, hole.fit.value_or(usualFit(thread.system))));
  CW_TRY(shear, shearPerLength(limits, thread.pitch));
  return ShearBasis{limits, shear, kShearShare * grade.tensile};
}

Stripping compare(const Thread& thread, const Grade& grade, const TappedHole& hole, const ShearBasis& basis) {
  Stripping result;
  result.boltBreaks = grade.tensile * thread.stressArea;
  result.boltStrips = basis.boltShear * (basis.shear.bolt * hole.engagement);
  result.tappedStrips = hole.material.shearStrength * (basis.shear.tapped * hole.engagement);
  result.load = std::min({result.boltBreaks, result.boltStrips, result.tappedStrips});
  result.failure = result.load == result.boltBreaks   ? Failure::BoltBreaks
                   : result.load == result.boltStrips ? Failure::BoltThreadStrips
                                                      : Failure::TappedThreadStrips;
  result.neededEngagement =
      hole.engagement * (result.boltBreaks / std::min(result.boltStrips, result.tappedStrips));
  return result;
}

void giveInputs(Working& working, const Thread& thread, const Grade& grade, const TappedHole& hole,
                const ShearBasis& basis) {
  const std::string limitSource = hole.limits                             ? "stated limits of size"
                                  : thread.system == ThreadSystem::Metric ? "ISO 965-1 formula"
                                                                          : "ASME B1.1 formula";
  working.give("P", "pitch", thread.pitch, kMillimetre, thread.provenance.source);
  working.give("Le", "full thread engaged", hole.engagement, kMillimetre, "stated");
  working.give("Ds", "bolt, least major diameter", basis.limits.majorMin, kMillimetre, limitSource);
  working.give("Es", "bolt, least pitch diameter", basis.limits.pitchMin, kMillimetre, limitSource);
  working.give("Kn", "hole, greatest minor diameter", basis.limits.minorMax, kMillimetre, limitSource);
  working.give("En", "hole, greatest pitch diameter", basis.limits.pitchMax, kMillimetre, limitSource);
  working.give("As", "stress area", thread.stressArea, kSquareMillimetre, thread.provenance.source);
  working.give("Rm", "tensile strength of the bolt", grade.tensile, kMegapascal,
               grade.name + ", " + grade.provenance.source);
  working.give("τn", {"shear strength of %1", {hole.material.name}}, hole.material.shearStrength, kMegapascal,
               hole.material.provenance.source);
}

Working strippingWorking(const Thread& thread, const Grade& grade, const TappedHole& hole,
                         const ShearBasis& basis, const Stripping& result) {
  Working working;
  working.formula = "F = τ·AS, AS = π/P·Le·D·[P/2 + 0.57735·(ridge)]";
  giveInputs(working, thread, grade, hole, basis);
  working.step("ASs", "π/P·Le·Kn·(P/2+0.57735·(Es-Kn))", basis.shear.bolt * hole.engagement,
               kSquareMillimetre);
  working.step("ASn", "π/P·Le·Ds·(P/2+0.57735·(Ds-En))", basis.shear.tapped * hole.engagement,
               kSquareMillimetre);
  working.step("F_bolt", "Rm·As", result.boltBreaks, kNewton);
  working.step("F_s", "0.6·Rm·ASs", result.boltStrips, kNewton);
  working.step("F_n", "τn·ASn", result.tappedStrips, kNewton);
  working.step("F", "min(F_bolt,F_s,F_n)", result.load, kNewton);
  working.step("Le_needed", "Le·F_bolt/min(F_s,F_n)", result.neededEngagement, kMillimetre);
  working.validity = {"static load, full threads, bolt at its least and hole at its widest size"};
  working.sources = {"FED-STD-H28/2B, ASME B1.1 appendix B; bolt shear strength 0.6·Rm"};
  if (!hole.material.caution.empty()) working.cautions.emplace_back(std::string_view(hole.material.caution));
  if (hole.engagement > kEvenShare * thread.diameter)
    working.cautions.push_back("beyond 2.5 diameters the far threads carry hardly anything");
  return working;
}

}  // namespace

Result<ShearPerLength> shearPerLength(const ThreadLimits& limits, Length pitch) {
  CW_CHECK(checkPositive("pitch", pitch, kMillimetre));
  const ShearPerLength shear{sheared(limits.minorMax, limits.pitchMin - limits.minorMax, pitch),
                             sheared(limits.majorMin, limits.majorMin - limits.pitchMax, pitch)};
  if (shear.bolt.si() > 0 && shear.tapped.si() > 0) return shear;
  return fail(ErrorCode::OutOfRange, "limits of size", text(limits.majorMin, kMillimetre),
              "these limits leave no thread to carry", "give the limits of bolt and hole that mate");
}

Result<Worked<Stripping>> stripping(const Thread& thread, const Grade& grade, const TappedHole& hole) {
  CW_TRY(basis, basisOf(thread, grade, hole));
  const Stripping result = compare(thread, grade, hole, basis);
  return Worked<Stripping>{result, strippingWorking(thread, grade, hole, basis, result)};
}

Result<Force> strippingLoad(const Thread& thread, const Grade& grade, const TappedHole& hole) {
  CW_TRY(basis, basisOf(thread, grade, hole));
  const Stripping result = compare(thread, grade, hole, basis);
  return std::min(result.boltStrips, result.tappedStrips);
}

}  // namespace cw

// Worked examples of textbooks, standards and manuals: inputs as printed, answers as printed. Where the
// answer is from memory, the comment says so.
#include <gtest/gtest.h>

#include <cmath>

#include "core/joint/adapter.h"
#include "core/joint/bolt_stiffness.h"
#include "core/joint/clamp_band.h"
#include "core/joint/long_form.h"
#include "core/joint/member_stiffness.h"
#include "core/joint/nut_factor.h"
#include "core/joint/prevailing.h"
#include "core/joint/stripping.h"
#include "core/joint/structural.h"
#include "core/joint/tightening_angle.h"
#include "core/joint/utilisation.h"
#include "tests/core/joint/fasteners.h"
#include "tests/published/printed.h"

namespace cw {
namespace {

using namespace testing_joint;
using published::Tally;

constexpr double kPoundsPerInch = 4.4482216152605 / 0.0254;  ///< N/m in one lbf/in

Tally& tally() {
  static Tally all("worked examples");
  return all;
}

void expectPrinted(const std::string& what, const std::string& printed, double computed, bool seen = true) {
  EXPECT_TRUE(tally().add(what, printed, computed, seen))
      << what << ": " << computed << ", printed " << printed;
}

Stiffness poundsPerInch(double value) {
  return newtonsPerMetre(value * kPoundsPerInch);
}

/// A grade with nothing but the strengths an example names.
Grade named(Stress proof, Stress yield, Stress tensile) {
  Grade made;
  made.name = "as in the example";
  made.from = millimetres(1);
  made.upTo = millimetres(100);
  made.proof = proof;
  made.yield = yield;
  made.tensile = tensile;
  return made;
}

// Shigley, Mechanical Engineering Design, 9th ed., example 8-3. Torque answers from memory.
TEST(WorkedExamples, E01To03ServiceStressAndTorque) {
  const double c = jointConstant(poundsPerInch(6.5e6), poundsPerInch(13.8e6)).value().value;
  expectPrinted("E01 C", "0.320", c);
  const Force clamp = quantity(25000, kPoundForce);
  expectPrinted("E01 preload stress, kpsi", "67.02", in(kKsi, clamp / quantity(0.373, kSquareInch)));
  const Force bolt = underLoad(clamp, quantity(6000, kPoundForce), c).bolt;
  expectPrinted("E01 service stress, kpsi", "72.17", in(kKsi, bolt / quantity(0.373, kSquareInch)));

  const Thread screw = thread("3/4-16");
  const Torque byFactor = torqueByNutFactor(clamp, 0.2, screw).value();
  expectPrinted("E02 T, lbf·in", "3750", in(kPoundInch, byFactor), false);

  // The book's long form: mean of major and root diameter, collar 1.25·d, root from the minor area 0.351 in².
  const Length root = inches(std::sqrt(4 * 0.351 / kPi));
  const Length mean = (screw.diameter + root) / 2;
  const Length arm = mean / 2 * wedgeSlope(mean, screw.pitch, 0.15) + assumedMeanBearing(screw) / 2 * 0.15;
  expectPrinted("E03 T, lbf·in", "3551", in(kPoundInch, clamp * arm), false);
}

// Mechanical Fastening, Joining, and Assembly, p. 85.
TEST(WorkedExamples, E05NutFactorSweep) {
  const std::pair<double, const char*> rows[] = {
      {0.3, "72.7"}, {0.25, "60.6"}, {0.2, "48.5"}, {0.15, "36.3"}, {0.1, "24.2"}};
  const Force clamp = quantity(1275, kPoundForce);
  for (const auto& [k, printed] : rows)
    expectPrinted("E05 T, lbf·in", printed,
                  in(kPoundInch, torqueByNutFactor(clamp, k, thread("#10-32")).value()));
}

// Shigley, 8th ed., solutions 8-29 (M20, 600 MPa proof, K 0.18) and 8-36 (1 1/4, grade 5).
TEST(WorkedExamples, E06And08PermanentJoints) {
  Thread m20 = thread("M20");
  m20.stressArea = squareMillimetres(245);
  const Grade proof600 = named(megapascals(600), megapascals(660), megapascals(830));
  const Force clamp = loadAtProof(0.9, m20, proof600).value().value;
  expectPrinted("E06 F, kN", "132.3", in(kKilonewton, clamp));
  expectPrinted("E06 T, N·m", "476", torqueByNutFactor(clamp, 0.18, m20).value().si());

  const Thread coarse = thread("1-1/4-7");
  const Force load = loadAtProof(0.75, coarse, grade("SAE 5", coarse)).value().value;
  expectPrinted("E08 F, kip", "53.78", in(kKip, load));
  expectPrinted("E08 stress, kpsi", "55.5", in(kKsi, load / coarse.stressArea));
  const Thread fine = thread("1-1/4-12");
  expectPrinted("E08 F fine, kip", "59.55",
                in(kKip, loadAtProof(0.75, fine, grade("SAE 5", fine)).value().value));
}

// Shigley, 9th ed., solutions 8-4: a square power screw (flank 0°) with its collar.
TEST(WorkedExamples, E09SquareThreadRaisesAndLowers) {
  const Length mean = millimetres(22.5), lead = millimetres(5);
  const Force load = kilonewtons(5);
  const Length collar = millimetres(45) / 2 * 0.06;
  const Torque raise = load * (mean / 2 * wedgeSlope(mean, lead, 0.09, degrees(0)) + collar);
  expectPrinted("E09 raise, N·m", "15.85", raise.si());
  expectPrinted("E09 lower, N·m", "7.83",
                (load * (mean / 2 * loosenSlope(mean, lead, 0.09, degrees(0)) + collar)).si());
  expectPrinted("E09 efficiency", "0.251", load * lead / (2 * kPi * raise));
}

// A fastener handbook's example after VDI 2230: M12x40, 8.8, µ 0.14, αA 1.8. The torque (E12) is from memory.
TEST(WorkedExamples, E11And12AssemblyPreload) {
  const Thread m12 = thread("M12");
  Thread byFormula = m12;
  const Length d0 = (m12.pitchDiameter + m12.rootDiameter) / 2;
  byFormula.stressArea = kPi / 4 * (d0 * d0);
  const Force most = loadAtUtilisation(0.9, 0.14, byFormula, grade("8.8", m12)).value().value;
  expectPrinted("E11 FM max, kN", "41.9", in(kKilonewton, most));
  expectPrinted("E11 FM min, kN", "23.3", in(kKilonewton, most / 1.8));
  EXPECT_NEAR(scatterOf(1.8).value(), 0.286, 5e-4);
  expectPrinted("E12 MA, N·m", "93",
                torqueByFriction(most, {0.14, 0.14}, m12, millimetres(15.065)).value().si(), false);
}

// VDI 2230 (2001/2003), fine threads, and a table for stainless fasteners (its approximate forms), reprints.
TEST(WorkedExamples, E13And14FineAndStainless) {
  const auto formulaArea = [](Thread screw) {
    const Length d0 = (screw.pitchDiameter + screw.rootDiameter) / 2;
    screw.stressArea = kPi / 4 * (d0 * d0);
    return screw;
  };
  const auto check = [&](const char* size, const char* strength, double mu, Length bearing, const char* load,
                         const char* torque) {
    const Thread screw = formulaArea(thread(size));
    const Force clamp = loadAtUtilisation(0.9, mu, screw, grade(strength, screw)).value().value;
    expectPrinted(std::string("E13 FM ") + size + ", kN", load, in(kKilonewton, clamp));
    expectPrinted(std::string("E13 MA ") + size + ", N·m", torque,
                  torqueByFriction(clamp, {mu, mu}, screw, bearing).value().si());
  };
  check("M16x1.5", "10.9", 0.12, millimetres(19.995), "128.7", "320");
  check("M10x1.25", "8.8", 0.14, millimetres(12.815), "30.8", "57");
  // The stainless table uses P/(π·d2) + 1.155·µ for the tangent of the sum: about 2 % off the exact wedge.
  const Thread m36 = formulaArea(thread("M36"));
  const Force clamp = loadAtUtilisation(0.9, 0.2, m36, grade("A2-50", m36)).value().value;
  EXPECT_NEAR(in(kKilonewton, clamp), 125, 0.025 * 125);
  EXPECT_NEAR(torqueByFriction(clamp, {0.2, 0.2}, m36, millimetres(45.055)).value().si(), 1130, 0.025 * 1130);
}

// US Army TM 1-1500-204-23-9 fig. 8-16; TM 9-254 figs. 4-5 and 4-6; an aircraft maintenance manual 2-90.
TEST(WorkedExamples, E15To21Adapters) {
  const auto setting = [](double torque, const TorqueUnit& unit, double wrench, double offset, double angle) {
    const Lever lever{inches(wrench), inches(offset), degrees(angle)};
    return in(unit, settingFor(quantity(torque, unit), lever).value().value);
  };
  expectPrinted("E15 TW, lbf·in", "214", setting(300, kPoundInch, 10, 4, 0));
  expectPrinted("E19 TW, lbf·ft", "24", setting(30, kPoundFoot, 12, 3, 0));
  expectPrinted("E21 TW, lbf·in (own number)", "73.88", setting(100, kPoundInch, 12, 6, 45));
  const Torque applied =
      appliedBy(quantity(60, kPoundInch), {inches(12), inches(2), degrees(0)}).value().value;
  expectPrinted("E16 T, lbf·in", "70", in(kPoundInch, applied));
}

// FAA AC 43.13-1B, 7-40 d: prevailing torque is added in full.
TEST(WorkedExamples, E22PrevailingTorqueIsAdded) {
  const std::tuple<double, double, const char*> rows[] = {{25, 5, "30"}, {70, 7, "77"}, {140, 12, "152"}};
  for (const auto& [most, drag, printed] : rows)
    expectPrinted("E22 lbf·in", printed,
                  in(kPoundInch, withPrevailing(quantity(most, kPoundInch), quantity(drag, kPoundInch),
                                                PrevailingRule::AlwaysAdd)
                                     .value()));
}

// Handbook of Bolts and Bolted Joints, thread strength: M10 10.9 in aluminium. Its 9.968 mm is the greatest
// major diameter of 6g, where the least, 9.732 mm, belongs: the printed 21.6 mm is too short.
TEST(WorkedExamples, E23EngagementInAluminium) {
  const auto needed = [](double major) {
    const ThreadLimits limits{millimetres(major), millimetres(8.862), millimetres(8.676), millimetres(9.206)};
    const Length tapped = shearPerLength(limits, millimetres(1.5)).value().tapped;
    return newtons(69600) / (megapascals(130) * (tapped * millimetres(1)));
  };
  expectPrinted("E23 Le, mm, as printed", "21.6", needed(9.968));
  EXPECT_NEAR(needed(9.732), 24.93, 0.005);
}

// Shigley, 8th ed., solutions 8-19 and 8-20.
TEST(WorkedExamples, E25And26Stiffness) {
  const auto half = [](const MemberFit& fit, double psi) {
    return memberStiffness(fit, quantity(psi, kPsi), inches(0.625), inches(1.5)).value().value;
  };
  const Stiffness iron = half(kGreyIronFit, 14.5e6), steel = half(kSteelFit, 30e6);
  expectPrinted("E25 iron, Mlbf/in", "9.12", iron.si() / kPoundsPerInch / 1e6);
  expectPrinted("E25 steel, Mlbf/in", "19.18", steel.si() / kPoundsPerInch / 1e6);
  expectPrinted("E25 joint, Mlbf/in", "12.4",
                inSeries({2 * iron, 2 * steel}).value().si() / kPoundsPerInch / 1e6);
  const BoltGrip grip{millimetres(30), millimetres(15), squareMillimetres(113), squareMillimetres(84.3),
                      gigapascals(207)};
  expectPrinted("E26 kb, MN/m", "466.8", boltStiffness(grip).value().value.si() / 1e6);
}

// AISC 360-05, table J3.1.
TEST(WorkedExamples, E28StructuralPretension) {
  const Thread bolt = thread("3/4-10");
  expectPrinted("E28 A325, kip", "28", in(kKip, structuralPretension(quantity(120, kKsi), bolt).value()));
  expectPrinted("E28 A490, kip", "35", in(kKip, structuralPretension(quantity(150, kKsi), bolt).value()));
}

// Turn of nut for E01; formula from Shigley, number computed by hand.
TEST(WorkedExamples, E30TurnOfNut) {
  const Angle turn = angleAfterSnug(quantity(25000, kPoundForce), newtons(0),
                                    {poundsPerInch(6.5e6), poundsPerInch(13.8e6)}, thread("3/4-16"))
                         .value()
                         .value;
  expectPrinted("E30 degrees (own number)", "32.6", inDegrees(turn));
}

// Shigley, 9th ed., example 8-2: dimensions seen, answers from memory. 1/2-20, washer and plate on cast iron.
TEST(WorkedExamples, E33MembersByFrusta) {
  const auto stiffness = [](double thickness, double start, double psi) {
    return frustumStiffness({inches(thickness), inches(start), quantity(psi, kPsi)}, inches(0.5))
        .value()
        .value;
  };
  const auto mega = [](Stiffness k) { return k.si() / kPoundsPerInch / 1e6; };
  const Stiffness k1 = stiffness(0.595, 0.75, 30e6);
  const Stiffness k2 = stiffness(0.0775, 1.437, 14.5e6);
  const Stiffness k3 = stiffness(0.6725, 0.75, 14.5e6);
  expectPrinted("E33 k1, Mlbf/in", "30.80", mega(k1), false);
  expectPrinted("E33 k2, Mlbf/in", "285.5", mega(k2), false);
  expectPrinted("E33 k3, Mlbf/in", "14.15", mega(k3), false);
  expectPrinted("E33 km, Mlbf/in", "9.378", mega(inSeries({k1, k2, k3}).value()), false);
  const Stiffness half = stiffness(0.6725, 0.75, 30e6);
  expectPrinted("E33 all steel, Mlbf/in", "14.64", mega(inSeries({half, half}).value()), false);
  const Stiffness fit =
      memberStiffness(kSteelFit, quantity(30e6, kPsi), inches(0.5), inches(1.345)).value().value;
  expectPrinted("E33 all steel by fit, Mlbf/in", "14.92", mega(fit), false);
}

}  // namespace
}  // namespace cw

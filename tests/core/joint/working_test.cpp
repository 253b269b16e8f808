// Any result can be recomputed by a stranger from the working it shows.
#include "core/joint/working.h"

#include <gtest/gtest.h>

#include "core/joint/bolt_stiffness.h"
#include "core/joint/guard.h"
#include "core/joint/losses.h"
#include "core/joint/member_stiffness.h"
#include "core/joint/recondition.h"
#include "core/joint/setting.h"
#include "core/joint/utilisation.h"
#include "tests/core/joint/fasteners.h"
#include "tests/core/joint/pen_and_paper.h"

namespace cw {
namespace {

using namespace testing_joint;

const JointStiffness kFlange{newtonsPerMetre(4e8), newtonsPerMetre(1.2e9)};

/// Cancellation in 1 − a/a_hi makes the band's relative spreads the least exact of what is shown.
constexpr double kBandTolerance = 2e-4;

TEST(Working, OfTheClampBandCanBeRecomputed) {
  for (const char* size : {"M6", "3/8-16", "M24x2"})
    for (Basis basis : {Basis::NutFactor, Basis::LongForm}) {
      const Thread screw = thread(size);
      const auto range = resistanceOf(condition("oiled"), screw, std::nullopt, basis).value();
      expectRecomputable(clampFromTorque(newtonMetres(8), range, 0.04, screw).value().working,
                         kBandTolerance);
      expectRecomputable(torqueFromClamp(kilonewtons(6), range, 0.04, screw).value().working, kBandTolerance);
    }
}

TEST(Working, OfSharesOfStrengthCanBeRecomputed) {
  const Thread m12 = thread("M12");
  const Grade strong = grade("8.8", m12);
  expectRecomputable(loadAtUtilisation(0.9, 0.12, m12, strong).value().working);
  expectRecomputable(loadAtUtilisation(0.9, 0.12, m12, strong, Torsion::Elastic).value().working);
  expectRecomputable(loadAtProof(0.75, m12, strong).value().working);
}

TEST(Working, OfAChangedConditionCanBeRecomputed) {
  for (Basis basis : {Basis::NutFactor, Basis::LongForm})
    expectRecomputable(
        recondition(newtonMetres(30), condition("dry"), condition("oiled"), thread("M8"), std::nullopt, basis)
            .value()
            .working,
        kBandTolerance);
}

TEST(Working, OfAWrenchSettingCanBeRecomputed) {
  TorqueTarget target;
  target.aim = newtonMetres(30);
  target.tolerance = {newtonMetres(26), newtonMetres(34)};
  target.prevailing = newtonMetres(3);
  target.rule = PrevailingRule::AlwaysAdd;
  const Lever lever{inches(10), inches(3), degrees(40)};
  expectRecomputable(wrenchSetting(target, lever, torque("1 ft.lbf")).value().working);
  expectRecomputable(wrenchSetting(target, std::nullopt, torque("1 ft.lbf")).value().working);
  expectRecomputable(appliedBy(newtonMetres(25), lever).value().working);
}

TEST(Working, OfStrippingAndOfTheGuardsBandCanBeRecomputed) {
  FastenerCase screw;
  screw.thread = thread("M6");
  screw.grade = grade("12.9", screw.thread);
  expectRecomputable(capacityWorking(screw).value());
  const TappedHole hole = castingHole(millimetres(9));
  expectRecomputable(stripping(screw.thread, *screw.grade, hole).value().working);
  screw.hole = hole;
  screw.condition = condition("oiled");
  expectRecomputable(capacityWorking(screw).value());
}

TEST(Working, OfElasticityCanBeRecomputed) {
  expectRecomputable(boltStiffness({millimetres(30), millimetres(15), squareMillimetres(113),
                                    squareMillimetres(84.3), gigapascals(207)})
                         .value()
                         .working);
  expectRecomputable(frustumStiffness({millimetres(10), millimetres(15), gigapascals(205)}, millimetres(10))
                         .value()
                         .working);
  expectRecomputable(
      memberStiffness(kSteelFit, gigapascals(207), millimetres(12), millimetres(45)).value().working);
  expectRecomputable(jointConstant(kFlange.bolt, kFlange.members).value().working);
  expectRecomputable(angleAfterSnug(kilonewtons(40), kilonewtons(5), kFlange, thread("M12")).value().working);
  expectRecomputable(loadAfterAngle(degrees(60), kilonewtons(5), kFlange, thread("M12")).value().working);
  expectRecomputable(embedding(Roughness::Coarse, LoadKind::Shear, 2, 3).value().working);
  expectRecomputable(embeddingLoss(millimetres(0.011), kFlange).value().working);
  expectRecomputable(thermalChange(millimetres(40), TemperatureDifference::si(60), {11.5e-6, 23e-6}, kFlange)
                         .value()
                         .working);
}

TEST(Working, ReadsAsLines) {
  const auto shown = lines(appliedBy(newtonMetres(25), {inches(10), inches(3), degrees(0)}).value().working);
  EXPECT_EQ(shown.front(), "TW = T·L/(L + E·cos θ)");
  EXPECT_THAT(shown, testing::Contains("T = TW·Leff/L = 32.5 N·m"));
}

}  // namespace
}  // namespace cw

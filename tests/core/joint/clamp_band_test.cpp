#include "core/joint/clamp_band.h"

#include <gtest/gtest.h>

#include "core/joint/utilisation.h"
#include "tests/core/joint/fasteners.h"

namespace cw {
namespace {

using namespace testing_joint;

ResistanceRange factors(double low, double typical, double high, const Thread& on) {
  return resistanceByNutFactor({low, typical, high}, on, std::nullopt, "test").value();
}

TEST(ClampBand, WithoutAnySpreadIsOneLine) {
  const Thread m10 = thread("M10");
  const auto band = clampFromTorque(newtonMetres(40), factors(0.2, 0.2, 0.2, m10), 0, m10).value().value;
  EXPECT_THAT(band.typical, IsNear(kilonewtons(20), newtons(1e-6)));
  EXPECT_EQ(band.low, band.typical);
  EXPECT_EQ(band.high, band.typical);
}

TEST(ClampBand, ToolAndFrictionAddByRootOfSquares) {
  const Thread m10 = thread("M10");
  // Friction alone: −20 % torque per load is +25 % load; +25 % torque per load is −20 % load. Tool 10 %.
  const auto band = clampFromTorque(newtonMetres(40), factors(0.16, 0.2, 0.25, m10), 0.1, m10).value().value;
  EXPECT_NEAR(band.high / band.typical, 1 + std::hypot(0.25, 0.1), 1e-12);
  EXPECT_NEAR(band.low / band.typical, 1 - std::hypot(0.2, 0.1), 1e-12);
}

TEST(ClampBand, OfTheRequiredTorqueHoldsTheTorqueThatMadeTheLoad) {
  const Thread m10 = thread("M10");
  const ResistanceRange range = factors(0.12, 0.18, 0.24, m10);
  const Force load = clampFromTorque(newtonMetres(40), range, 0.04, m10).value().value.typical;
  const auto torque = torqueFromClamp(load, range, 0.04, m10).value().value;
  EXPECT_THAT(torque.typical, IsNear(newtonMetres(40), newtonMetres(1e-9)));
  EXPECT_LT(torque.low, torque.typical);
  EXPECT_GT(torque.high, torque.typical);
}

TEST(ClampBand, NeverClampsLessThanNothing) {
  const Thread m10 = thread("M10");
  const auto band = clampFromTorque(newtonMetres(40), factors(0.05, 0.1, 1, m10), 0.9, m10).value().value;
  EXPECT_EQ(band.low, newtons(0));
}

TEST(ClampBand, RefusesTheAbsurdInOneSentence) {
  const Thread m6 = thread("M6");
  const ResistanceRange range = factors(0.2, 0.2, 0.2, m6);
  EXPECT_FALSE(clampFromTorque(newtonMetres(4000), range, 0.04, m6).has_value());
  EXPECT_FALSE(clampFromTorque(newtonMetres(10), range, 1.0, m6).has_value());
  EXPECT_FALSE(torqueFromClamp(kilonewtons(-1), range, 0.04, m6).has_value());
}

TEST(TighteningFactor, AndScatterAreInverse) {
  for (double scatter : {0.0, 0.09, 0.23, 0.35})
    EXPECT_NEAR(scatterOf(tighteningFactor(scatter).value()).value(), scatter, 1e-12);
  EXPECT_FALSE(scatterOf(0.9).has_value());
}

TEST(Utilisation, OfTheLoadAtAShareIsThatShare) {
  const Thread m12 = thread("M12");
  const Grade strong = grade("10.9", m12);
  for (Torsion torsion : {Torsion::Plastic, Torsion::Elastic})
    for (double share : {0.3, 0.9, 1.0}) {
      const Force load = loadAtUtilisation(share, 0.12, m12, strong, torsion).value().value;
      EXPECT_NEAR(utilisation(load, 0.12, m12, strong, torsion).value(), share, 1e-12);
    }
}

TEST(Utilisation, SharesOfProofAndYieldComeBack) {
  const Thread m12 = thread("M12");
  const Grade strong = grade("8.8", m12);
  EXPECT_NEAR(proofFraction(loadAtProof(0.75, m12, strong).value().value, m12, strong).value(), 0.75, 1e-12);
  EXPECT_NEAR(yieldFraction(loadAtYield(0.9, m12, strong).value().value, m12, strong).value(), 0.9, 1e-12);
}

TEST(Utilisation, RefusesAGradeOfAnotherSize) {
  const Thread m20 = thread("M20");
  const Grade small = grade("8.8", thread("M12"));
  EXPECT_THAT(refusal(utilisation(kilonewtons(10), 0.1, m20, small)),
              testing::HasSubstr("does not reach to M20"));
}

TEST(Utilisation, RefusesProofWhereTheStandardStatesNone) {
  const Thread stud = thread("3/4-10");
  EXPECT_EQ(refusal(loadAtProof(0.75, stud, grade("ASTM A193 B7", stud))),
            "grade: ASTM A193 B7 states no proof stress; give a share of yield instead.");
}

}  // namespace
}  // namespace cw

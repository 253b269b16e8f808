#include "core/joint/resistance.h"

#include <limits>
#include <gtest/gtest.h>

#include "core/joint/long_form.h"
#include "core/joint/nut_factor.h"
#include "tests/core/joint/fasteners.h"

namespace cw {
namespace {

using namespace testing_joint;

TEST(NutFactor, GoesThereAndBack) {
  const Thread m8 = thread("M8");
  for (double k : {0.1, 0.2, 0.35})
    for (double load : {0.5, 12.0, 20.0}) {
      const Torque there = torqueByNutFactor(kilonewtons(load), k, m8).value();
      EXPECT_THAT(loadByNutFactor(there, k, m8).value(), IsNear(kilonewtons(load), newtons(1e-6)));
      EXPECT_NEAR(nutFactorFrom(there, kilonewtons(load), m8).value(), k, 1e-12);
    }
}

TEST(NutFactor, RefusesWhatCannotBe) {
  const Thread m6 = thread("M6");
  EXPECT_EQ(refusal(loadByNutFactor(newtonMetres(-1), 0.2, m6)),
            "torque: -1\u202fN·m is negative; give zero or more.");
  EXPECT_EQ(refusal(loadByNutFactor(newtonMetres(10), 0, m6)),
            "nut factor: 0 is out of range; a nut factor lies above 0 and up to 1, for example 0.2.");
  EXPECT_EQ(refusal(loadByNutFactor(newtonMetres(std::numeric_limits<double>::quiet_NaN()), 0.2, m6)),
            "torque: this is not a number; give a finite number.");
  EXPECT_EQ(
      refusal(loadByNutFactor(newtonMetres(4000), 0.2, m6)),
      "torque: 4000\u202fN·m on M6 is more than any bolt of this size bears; check the unit and the thread.");
}

TEST(LongForm, GoesThereAndBack) {
  const Thread screw = thread("3/8-16");
  for (double mu : {0.04, 0.15, 0.5}) {
    const Torque there = torqueByFriction(kilonewtons(9), {mu, mu / 2}, screw, millimetres(13)).value();
    EXPECT_THAT(loadByFriction(there, {mu, mu / 2}, screw, millimetres(13)).value(),
                IsNear(kilonewtons(9), newtons(1e-6)));
  }
}

TEST(LongForm, FrictionBehindANutFactorGivesItBack) {
  for (const char* name : {"M3", "M12", "M16x1.5", "1/4-20 UNC", "1-8"}) {
    const Thread screw = thread(name);
    const Length bearing = screw.diameter * 1.3;
    for (double k : {0.08, 0.2, 0.4}) {
      const double mu = frictionBehind(k, screw, bearing).value();
      EXPECT_NEAR(nutFactorOf({mu, mu}, screw, bearing).value_or(k), k, 1e-12) << name;
    }
  }
}

TEST(LongForm, TightensHarderThanItLoosens) {
  const Thread m10 = thread("M10");
  const Friction friction{0.12, 0.12};
  EXPECT_GT(torqueByFriction(kilonewtons(20), friction, m10, millimetres(13)).value(),
            looseningTorque(kilonewtons(20), friction, m10, millimetres(13)).value());
}

TEST(LongForm, RefusesFrictionOutsideItsRange) {
  for (double mu : {0.0, -0.1, 0.51, static_cast<double>(NAN)}) {
    EXPECT_FALSE(torqueByFriction(kilonewtons(1), {mu, 0.1}, thread("M8"), millimetres(11)).has_value())
        << mu;
    EXPECT_FALSE(torqueByFriction(kilonewtons(1), {0.1, mu}, thread("M8"), millimetres(11)).has_value())
        << mu;
  }
}

TEST(Resistance, RisesWithFriction) {
  const ResistanceRange dry =
      resistanceOf(condition("dry"), thread("M8"), std::nullopt, Basis::LongForm).value();
  EXPECT_LT(dry.low.arm, dry.typical.arm);
  EXPECT_LT(dry.typical.arm, dry.high.arm);
  EXPECT_EQ(dry.condition, "dry");
}

TEST(Resistance, RefusesAConditionWithoutNumbers) {
  Condition bare;
  bare.name = "mystery";
  EXPECT_EQ(refusal(resistanceOf(bare, thread("M8"), std::nullopt)),
            "condition: “mystery” states no friction; give one, or choose another condition.");
}

TEST(Resistance, SaysThatTheFaceIsAssumed) {
  const auto range = unstatedResistance(thread("M8"), std::nullopt).value();
  EXPECT_FALSE(workingOf(range, thread("M8")).cautions.empty());
}

}  // namespace
}  // namespace cw

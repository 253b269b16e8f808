#include "core/joint/recondition.h"

#include <gtest/gtest.h>

#include "tests/core/joint/fasteners.h"

namespace cw {
namespace {

using namespace testing_joint;

TEST(Recondition, OiledThreadsTakeLessForTheSameClampLoad) {
  for (Basis basis : {Basis::NutFactor, Basis::LongForm}) {
    const auto changed =
        recondition(newtonMetres(30), condition("dry"), condition("oiled"), thread("M8"), std::nullopt, basis)
            .value()
            .value;
    EXPECT_LT(changed.torque.typical, newtonMetres(30));
    EXPECT_LT(changed.torque.low, changed.torque.typical);
    EXPECT_GT(changed.torque.high, changed.torque.typical);
  }
}

TEST(Recondition, ByNutFactorIsTheRatioOfNutFactors) {
  const Condition dry = condition("dry"), oiled = condition("oiled");
  const auto changed = recondition(newtonMetres(30), dry, oiled, thread("M8"), std::nullopt).value().value;
  EXPECT_EQ(changed.basis, Basis::NutFactor);
  EXPECT_THAT(
      changed.torque.typical,
      IsNear(newtonMetres(30 * oiled.nutFactor->typical / dry.nutFactor->typical), newtonMetres(1e-9)));
}

TEST(Recondition, ComesBackToWhereItStarted) {
  const Condition dry = condition("dry"), oiled = condition("oiled");
  const Thread screw = thread("3/8-16");
  const auto there =
      recondition(newtonMetres(30), dry, oiled, screw, std::nullopt, Basis::LongForm).value().value;
  const auto back =
      recondition(there.torque.typical, oiled, dry, screw, std::nullopt, Basis::LongForm).value().value;
  EXPECT_THAT(back.torque.typical, IsNear(newtonMetres(30), newtonMetres(1e-9)));
}

TEST(Recondition, FirstTellsToRestoreTheStatedCondition) {
  const auto changed =
      recondition(newtonMetres(30), condition("dry"), condition("oiled"), thread("M8"), std::nullopt).value();
  ASSERT_FALSE(changed.working.cautions.empty());
  EXPECT_EQ(plain(changed.working.cautions[0]),
            "first choice: bring the parts into the stated condition, “dry”");
}

TEST(Recondition, RefusesWhereNothingFollows) {
  EXPECT_EQ(
      refusal(recondition(newtonMetres(30), std::nullopt, condition("oiled"), thread("M8"), std::nullopt)),
      "condition: the specification does not state the condition its torque is for; ask its source; "
      "without it no torque for another condition follows.");
  EXPECT_EQ(
      refusal(recondition(newtonMetres(30), condition("dry"), condition("dry"), thread("M8"), std::nullopt)),
      "condition: “dry” is the condition the torque is specified for; use the torque as specified.");
}

TEST(Recondition, RefusesConditionsThatShareNoBasis) {
  Condition byFactor, byFriction;
  byFactor.name = "a";
  byFactor.nutFactor = exactly(0.2);
  byFriction.name = "b";
  byFriction.threadFriction = exactly(0.1);
  EXPECT_EQ(
      refusal(recondition(newtonMetres(30), byFactor, byFriction, thread("M8"), std::nullopt)),
      "condition: “a” and “b” share neither nut factor nor friction; choose conditions that state the same.");
}

}  // namespace
}  // namespace cw

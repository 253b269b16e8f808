#include "core/pattern/passes.h"

#include <gmock/gmock.h>

#include <limits>

namespace cw {
namespace {

using ::testing::ElementsAre;
using ::testing::Field;
using ::testing::IsEmpty;

std::vector<std::string> codes(const PassPlan& plan, std::vector<NoSecondTurn> barred = {}) {
  std::vector<std::string> out;
  for (const Finding& finding : reviewPasses(plan, barred)) out.push_back(finding.code);
  return out;
}

PassPlan withShares(std::vector<double> shares) {
  PassPlan plan;
  plan.shares = std::move(shares);
  return plan;
}

TEST(ReviewPasses, AcceptsTheDefaults) {
  PassPlan plan;
  plan.snug = 0.1;
  plan.retorque = Retorque{};
  plan.gaps = GapReadings{};
  EXPECT_THAT(codes(plan), IsEmpty());
}

TEST(ReviewPasses, WantsSharesThatRiseToTheTarget) {
  EXPECT_THAT(codes(withShares({})), ElementsAre("passes-missing"));
  EXPECT_THAT(codes(withShares({0.5, 0.5, 1})), ElementsAre("share-not-rising"));
  EXPECT_THAT(codes(withShares({0.5, 1.2, 1})), ElementsAre("share-out-of-range", "share-not-rising"));
  EXPECT_THAT(codes(withShares({0.3, 0.9})), ElementsAre("share-not-full"));
  EXPECT_THAT(codes(withShares({std::numeric_limits<double>::quiet_NaN(), 1})),
              ElementsAre("share-out-of-range", "share-not-rising"));
}

TEST(ReviewPasses, WantsSnugBelowAFifthAndBelowTheFirstPass) {
  PassPlan plan;
  plan.snug = 0.25;
  EXPECT_THAT(codes(plan), ElementsAre("snug-out-of-range"));
  plan = withShares({0.1, 1});
  plan.snug = 0.2;
  EXPECT_THAT(codes(plan), ElementsAre("snug-above-first-pass"));
}

TEST(ReviewPasses, BarsASecondTurnWhereItWouldHarm) {
  PassPlan plan;
  plan.retorque = Retorque{};
  EXPECT_THAT(codes(plan, {NoSecondTurn::SetThreadlocker}),
              ElementsAre("check-pass-barred", "retorque-barred"));
  plan.check.reset();
  plan.retorque.reset();
  EXPECT_THAT(codes(plan, {NoSecondTurn::SetThreadlocker}), IsEmpty());
}

TEST(ReviewPasses, RefusesLimitsThatMakeNoSense) {
  PassPlan plan;
  plan.check = CheckPass{0};
  plan.retorque = Retorque{seconds(0)};
  plan.gaps = GapReadings{3, {4}, {"-1", &kMillimetre}};
  EXPECT_THAT(codes(plan),
              ElementsAre("check-limit", "retorque-wait", "gap-places", "gap-passes", "gap-limit"));
}

TEST(PassesOf, ListsThemInTheOrderTheyAreDone) {
  PassPlan plan;
  plan.snug = 0.1;
  plan.retorque = Retorque{};
  plan.gaps = GapReadings{};
  EXPECT_THAT(passesOf(plan), ElementsAre(Pass{PassKind::ByHand, std::nullopt}, Pass{PassKind::Snug, 0.1},
                                          Pass{PassKind::Pattern, 0.3, false, false, true},
                                          Pass{PassKind::Pattern, 0.7, false, false, true},
                                          Pass{PassKind::Pattern, 1.0, false, true, false},
                                          Pass{PassKind::Check, 1.0, true, true, false},
                                          Pass{PassKind::Retorque, 1.0, true, true, false}));
}

TEST(AfterCheckRound, GoesOnUntilNothingMovesAndStopsAtTheLimit) {
  const CheckPass check{3};
  EXPECT_EQ(afterCheckRound(check, 1, 0), CheckVerdict::Done);
  EXPECT_EQ(afterCheckRound(check, 2, 5), CheckVerdict::Again);
  EXPECT_EQ(afterCheckRound(check, 3, 1), CheckVerdict::Stop);
  EXPECT_EQ(afterCheckRound(check, 3, 0), CheckVerdict::Done);
}

}  // namespace
}  // namespace cw

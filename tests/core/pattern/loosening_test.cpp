#include "core/pattern/loosening.h"

#include <gmock/gmock.h>

namespace cw {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

std::vector<std::string> codes(std::vector<double> shares) {
  std::vector<std::string> out;
  for (const Finding& finding : reviewLoosening({std::move(shares)})) out.push_back(finding.code);
  return out;
}

TEST(LooseningOrder, IsTheTighteningOrderReversed) {
  EXPECT_THAT(looseningOrder({{1, 3, 2, 4}}).positions, ElementsAre(4, 2, 3, 1));
}

TEST(ReviewLoosening, AcceptsTheDefaults) {
  EXPECT_THAT(reviewLoosening({}), IsEmpty());
}

TEST(ReviewLoosening, WantsSharesThatFallToNothing) {
  EXPECT_THAT(codes({0.5, 0.7, 0}), ElementsAre("loosening-not-falling"));
  EXPECT_THAT(codes({1.0, 0}), ElementsAre("loosening-not-falling"));
  EXPECT_THAT(codes({0.6, 0.2}), ElementsAre("loosening-not-loose"));
  EXPECT_THAT(codes({}), ElementsAre("loosening-not-loose"));
}

TEST(ReviewLoosening, WarnsOfLooseningAtOnce) {
  const Findings findings = reviewLoosening({{0.0}});
  ASSERT_EQ(findings.size(), 1u);
  EXPECT_EQ(findings[0].severity, Severity::Warning);
}

}  // namespace
}  // namespace cw

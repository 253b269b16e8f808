#include "core/procedure/review.h"

#include "core/procedure/review_rules.h"

namespace cw {
namespace {

constexpr ReviewRule kRules[] = {
    reviewHeading,     reviewFields,       reviewTexts,   reviewBench,     reviewSerials,   reviewApproval,
    reviewUse,         reviewSingleUse,    reviewSource,  reviewCondition, reviewTolerance, reviewPrinted,
    reviewColumns,     reviewNames,        reviewLengths, reviewGuard,     reviewTools,     reviewOrders,
    reviewSecondTurns, reviewActions,      reviewLength,  reviewNumbers,   reviewVagueness, reviewAlerts,
    reviewHolds,       reviewConsequences,
};

}  // namespace

Findings review(const Sheet& sheet, const ReviewContext& context) {
  Findings findings;
  for (const ReviewRule rule : kRules) rule(sheet, context, findings);
  return findings;
}

}  // namespace cw

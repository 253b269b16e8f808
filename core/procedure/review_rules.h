#pragma once
#include <fmt/format.h>

#include "core/procedure/review.h"

namespace cw {

/// One rule of the review: adds what it finds. To add a rule, write it beside its kin, declare it here and
/// list it in review.cpp.
using ReviewRule = void (*)(const Sheet& sheet, const ReviewContext& context, Findings& findings);

// Of the sheet as a whole (review_sheet.cpp).
void reviewHeading(const Sheet&, const ReviewContext&, Findings&);  // "heading-missing"
void reviewApproval(const Sheet&, const ReviewContext&,
                    Findings&);                                 // "approver-is-author", "not-independent"
void reviewUse(const Sheet&, const ReviewContext&, Findings&);  // "joint-never-tightened", "…-unused"
void reviewSingleUse(const Sheet&, const ReviewContext&, Findings&);  // "single-use-not-renewed"
void reviewFields(const Sheet&, const ReviewContext&, Findings&);  // "field-misspelt", … (review_fields.cpp)
void reviewTexts(const Sheet&, const ReviewContext&, Findings&);  // "text-unprintable", … (sheet_texts.cpp)
void reviewBench(const Sheet&, const ReviewContext&, Findings&);  // "method-not-done", … (bench_limits.cpp)
void reviewSerials(const Sheet&, const ReviewContext&, Findings&);  // "serials-not-read", "serials-disagree"

// Of the specifications (review_specifications.cpp).
void reviewSource(const Sheet&, const ReviewContext&, Findings&);     // "source-missing", "source-vague"
void reviewCondition(const Sheet&, const ReviewContext&, Findings&);  // "condition-missing"
void reviewTolerance(const Sheet&, const ReviewContext&, Findings&);  // "aim-missing", "tolerance-missing" …
void reviewPrinted(const Sheet&, const ReviewContext&, Findings&);    // "printed-outside-tolerance"
void reviewColumns(const Sheet&, const ReviewContext&, Findings&);    // "columns-disagree"

// Of the fasteners (review_fasteners.cpp).
void reviewNames(const Sheet&, const ReviewContext&, Findings&);    // "thread-unknown", "grade-unknown" …
void reviewLengths(const Sheet&, const ReviewContext&, Findings&);  // "fastener-too-long" …

// Of the joints (review_joints.cpp).
void reviewGuard(const Sheet&, const ReviewContext&, Findings&);        // "below-band", "past-yield" …
void reviewTools(const Sheet&, const ReviewContext&, Findings&);        // "no-tool-fits"
void reviewOrders(const Sheet&, const ReviewContext&, Findings&);       // "order-not-by-rule"
void reviewSecondTurns(const Sheet&, const ReviewContext&, Findings&);  // "check-pass-barred" …

// Of the steps (review_steps.cpp).
void reviewActions(const Sheet&, const ReviewContext&, Findings&);    // "several-actions"
void reviewLength(const Sheet&, const ReviewContext&, Findings&);     // "too-many-words"
void reviewNumbers(const Sheet&, const ReviewContext&, Findings&);    // "bare-number", "torque-in-text"
void reviewVagueness(const Sheet&, const ReviewContext&, Findings&);  // "vague-word"
void reviewAlerts(const Sheet&, const ReviewContext&, Findings&);  // "action-in-caution", "value-in-caution"
void reviewHolds(const Sheet&, const ReviewContext&, Findings&);  // "hold-too-late", "hold-by-same-person" …
void reviewConsequences(const Sheet&, const ReviewContext&,
                        Findings&);  // "injury-without-hold", "many-holds"

/// "steps[3]": as Error places it.
inline std::string indexed(std::string_view list, std::size_t index) {
  return fmt::format("{}[{}]", list, index);
}

/// Calls `each(item, place)` for every item of a list of the sheet.
template <class Item, class Each>
void forEach(const std::vector<Item>& items, std::string_view list, Each each) {
  for (std::size_t i = 0; i < items.size(); ++i) each(items[i], indexed(list, i));
}

}  // namespace cw

#include "core/procedure/quick_joint.h"

#include <algorithm>

#include "core/pattern/order.h"
#include "core/procedure/bench_limits.h"
#include "core/procedure/review_rules.h"
#include "core/procedure/sheet_check.h"
#include "core/procedure/sheet_file.h"

namespace cw {
namespace {

/// The rules of a review that a single joint can break.
constexpr ReviewRule kQuickRules[] = {reviewFields,    reviewTexts,   reviewSource,     reviewCondition,
                                      reviewTolerance, reviewPrinted, reviewColumns,    reviewNames,
                                      reviewLengths,   reviewOrders,  reviewSecondTurns};

/// Gravest last.
constexpr Verdict kByGravity[] = {Verdict::InBand, Verdict::NotJudged, Verdict::BelowBand, Verdict::AboveBand,
                                  Verdict::PastYield};

/// The verdict that a finding of the guard reports; "not-judgeable" is none.
std::optional<Verdict> verdictOf(const Finding& finding) {
  for (const Verdict verdict : kByGravity)
    if (wordOf(verdict) == finding.code) return verdict;
  return std::nullopt;
}

Verdict graver(Verdict a, Verdict b) {
  const auto gravity = [](Verdict v) { return std::find(std::begin(kByGravity), std::end(kByGravity), v); };
  return std::max(a, b, [&](Verdict one, Verdict other) { return gravity(one) < gravity(other); });
}

tl::unexpected<Error> refusal(const Finding& finding) {
  return fail(ErrorCode::NotPermitted, finding.place, "", finding.problem, finding.cure);
}

/// Nobody reviews a quick joint afterwards, so a vague source is refused here and not only remarked on.
Result<void> checkSources(const Sheet& sheet) {
  for (std::size_t i = 0; i < sheet.sources.size(); ++i)
    if (sheet.sources[i].page.empty())
      return fail(ErrorCode::NotPermitted, indexed("sources", i) + ".page", "",
                  {"“%1” is given without a page", {sheet.sources[i].document}},
                  "write the page that prints the torque");
  return {};
}

}  // namespace

Result<Sheet> quickSheet(const QuickJoint& quick, const Id& id) {
  Sheet out;
  out.id = id;
  out.title = quick.name;
  out.revision = kQuickRevision;
  out.model = quick.model;
  out.author = quick.by;
  out.sources = {quick.source};
  out.fasteners = {quick.fastener};
  out.specifications = {quick.specification};
  out.sources[0].id = "source";
  out.fasteners[0].id = "fastener";
  out.specifications[0].id = "torque";
  out.specifications[0].source = "source";
  out.specifications[0].interpretedBy = quick.by;

  Joint joint;
  joint.id = "joint";
  joint.name = quick.name;
  joint.layout = quick.layout;
  joint.fastener = "fastener";
  joint.specification = "torque";
  joint.rule = name(usualRule(quick.layout));
  CW_TRY(order, orderByRule(joint));
  joint.order = order;
  joint.passes = quick.passes;
  out.joints = {joint};

  Step step;
  step.id = "s1";
  step.kind = StepKind::Tighten;
  step.text = "Tighten: " + quick.name + ".";
  step.joint = "joint";
  if (!quick.drawnToScale) step.notes = {"The layout is drawn without its dimensions."};
  out.steps = {step};
  return readSheet(writeSheet(out));
}

Result<void> checkQuickSheet(const Sheet& sheet) {
  const bool isOneJoint =
      sheet.joints.size() == 1 && sheet.steps.size() == 1 && sheet.steps[0].kind == StepKind::Tighten;
  if (isOneJoint) return {};
  return fail(ErrorCode::InvalidInput, "quick", std::to_string(sheet.steps.size()),
              "a quick joint is one joint and the step that tightens it",
              "have a sheet issued for anything more");
}

Result<QuickVerdict> judgeQuickSheet(const Sheet& sheet, const Catalogue& catalogue) {
  CW_CHECK(checkQuickSheet(sheet));
  CW_CHECK(checkBenchCan(sheet));
  CW_CHECK(checkSources(sheet));
  const ReviewContext context{catalogue, std::nullopt, "", false};
  Findings findings;
  for (const ReviewRule rule : kQuickRules) rule(sheet, context, findings);
  const auto stops = std::find_if(findings.begin(), findings.end(),
                                  [](const Finding& each) { return each.severity == Severity::Blocking; });
  if (stops != findings.end()) return refusal(*stops);

  QuickVerdict out{Verdict::InBand, {}};
  reviewGuard(sheet, context, out.findings);
  for (const Finding& finding : out.findings) {
    const auto verdict = verdictOf(finding);
    if (!verdict) return refusal(finding);
    out.verdict = graver(out.verdict, *verdict);
  }
  return out;
}

Sheet draftFromQuickSheet(Sheet quick, const std::string& author) {
  quick.revision = "A";
  quick.author = author;
  return quick;
}

}  // namespace cw

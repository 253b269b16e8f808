#include "core/pattern/passes.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/pattern/share_text.h"

namespace cw {
namespace {

constexpr double kMostSnug = 0.2;

void reviewShares(const std::vector<double>& shares, Findings& findings) {
  if (shares.empty()) {
    findings.push_back(
        blocking("passes-missing", "shares", "there is no pass", "give at least the one at 100 %"));
    return;
  }
  double before = 0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    const std::string place = fmt::format("shares[{}]", i);
    if (!(shares[i] > 0 && shares[i] <= 1))
      findings.push_back(blocking("share-out-of-range", place,
                                  {"%1 is no share of the target", {percent(shares[i])}},
                                  "give more than 0 and at most 100 %"));
    else if (!(shares[i] > before))
      findings.push_back(blocking("share-not-rising", place,
                                  {"%1 does not exceed the pass before it", {percent(shares[i])}},
                                  {"give more than %1", {percent(before)}}));
    before = shares[i];
  }
  if (shares.back() != 1)
    findings.push_back(blocking("share-not-full", fmt::format("shares[{}]", shares.size() - 1),
                                {"the last pass stops at %1", {percent(shares.back())}}, "end at 100 %"));
}

void reviewSnug(const PassPlan& plan, Findings& findings) {
  if (!plan.snug) return;
  if (!(*plan.snug > 0 && *plan.snug <= kMostSnug))
    findings.push_back(blocking("snug-out-of-range", "snug", {"%1 is not snug", {percent(*plan.snug)}},
                                "give more than 0 and at most 20 % of the target"));
  else if (!plan.shares.empty() && *plan.snug >= plan.shares.front())
    findings.push_back(blocking("snug-above-first-pass", "snug",
                                {"snug at %1 leaves the first pass nothing to do", {percent(*plan.snug)}},
                                {"give less than %1", {percent(plan.shares.front())}}));
}

void reviewGaps(const PassPlan& plan, Findings& findings) {
  if (!plan.gaps) return;
  if (plan.gaps->places < 4)
    findings.push_back(blocking("gap-places", "gaps.places",
                                {"%1 gap readings do not show a tilt", {std::to_string(plan.gaps->places)}},
                                "measure at 4 places or more"));
  if (plan.gaps->afterPasses.empty())
    findings.push_back(blocking("gap-passes", "gaps.after_passes", "the gap is measured after no pass",
                                "name the passes after which it is measured"));
  for (const std::size_t pass : plan.gaps->afterPasses)
    if (pass < 1 || pass > plan.shares.size())
      findings.push_back(blocking("gap-passes", "gaps.after_passes",
                                  {"there is no pass %1", {std::to_string(pass)}},
                                  {"name passes from 1 to %1", {std::to_string(plan.shares.size())}}));
  if (!(plan.gaps->mostDifference.value() > Length()))
    findings.push_back(blocking("gap-limit", "gaps.most_difference", "the gap's limit is not a usable length",
                                "give more than 0, such as 0.8 mm"));
}

Message reason(NoSecondTurn bar) {
  switch (bar) {
    case NoSecondTurn::SetThreadlocker:
      return "turning again breaks the threadlocker's bond";
    case NoSecondTurn::CuredSealant:
      return "turning again breaks the cured sealant";
    case NoSecondTurn::AngleTightening:
      return "turning again adds to the angle";
    case NoSecondTurn::SoftGasket:
      return "turning again crushes the soft gasket";
  }
  return {};
}

void reviewSecondTurns(const PassPlan& plan, std::span<const NoSecondTurn> barred, Findings& findings) {
  for (const NoSecondTurn bar : barred) {
    if (plan.check)
      findings.push_back(blocking("check-pass-barred", "check", reason(bar), "leave out the check pass"));
    if (plan.retorque)
      findings.push_back(blocking("retorque-barred", "retorque", reason(bar), "leave out the retorque"));
  }
}

}  // namespace

Provenance sourceOfShares() {
  return {"installation instruction for isolating gaskets, stating that it follows ASME PCC-1 (2010)", true};
}

Provenance sourceOfSnug() {
  return {"Plastics Pipe Institute TN-38: hand tight, then not above 20 % of target", true};
}

Provenance sourceOfCheckLimit() {
  return {"JIS B 2251: about 4 to 6 turns of the flange", false};
}

Provenance sourceOfRetorque() {
  return {"installation instruction for isolating gaskets: one more pass at 100 % at least 4 h later", true};
}

Provenance sourceOfGapReadings() {
  return {"ASME PCC-1, appendix E: 0.8 mm widest less narrowest; 8 places after rounds 1 and 2", false};
}

Findings reviewPasses(const PassPlan& plan, std::span<const NoSecondTurn> barred) {
  Findings findings;
  reviewShares(plan.shares, findings);
  reviewSnug(plan, findings);
  if (plan.check && plan.check->limit < 1)
    findings.push_back(blocking("check-limit", "check.limit", "the check pass may not be done once",
                                "allow 1 round or more"));
  if (plan.retorque && !(plan.retorque->wait > Duration() && std::isfinite(plan.retorque->wait.si())))
    findings.push_back(blocking("retorque-wait", "retorque.wait", "the wait is not a usable time",
                                "give more than 0, such as 4 h"));
  reviewGaps(plan, findings);
  reviewSecondTurns(plan, barred, findings);
  return findings;
}

std::vector<Pass> passesOf(const PassPlan& plan) {
  std::vector<Pass> passes;
  if (plan.byHand) passes.push_back({PassKind::ByHand, std::nullopt});
  if (plan.snug) passes.push_back({PassKind::Snug, plan.snug});
  for (std::size_t i = 0; i < plan.shares.size(); ++i) {
    Pass pass{PassKind::Pattern, plan.shares[i]};
    pass.isByPosition = i + 1 == plan.shares.size();
    pass.measuresGapsAfter =
        plan.gaps && std::count(plan.gaps->afterPasses.begin(), plan.gaps->afterPasses.end(), i + 1) > 0;
    passes.push_back(pass);
  }
  if (plan.check) passes.push_back({PassKind::Check, 1.0, true, true});
  if (plan.retorque) passes.push_back({PassKind::Retorque, 1.0, true, true});
  return passes;
}

CheckVerdict afterCheckRound(const CheckPass& check, std::size_t round, std::size_t moved) {
  if (moved == 0) return CheckVerdict::Done;
  return round < check.limit ? CheckVerdict::Again : CheckVerdict::Stop;
}

}  // namespace cw

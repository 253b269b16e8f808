#include <algorithm>
#include <set>

#include "core/joint/tool_fitness.h"
#include "core/procedure/guard_subject.h"
#include "core/procedure/review_rules.h"
#include "core/procedure/sheet_check.h"
#include "core/procedure/targets.h"
#include "core/units/format.h"

namespace cw {
namespace {

/// One fastener tightened to one specification somewhere in a joint.
struct Pairing {
  const Fastener* fastener;
  const Specification* specification;
  auto operator<=>(const Pairing&) const = default;
};

std::set<Pairing> pairingsOf(const Sheet& sheet, const Joint& joint) {
  std::set<Pairing> out;
  for (const std::string& label : joint.order) {
    const Pairing pairing{sheet.fastener(joint.fastenerAt(label)),
                          sheet.specification(joint.specificationAt(label))};
    if (pairing.fastener != nullptr && pairing.specification != nullptr) out.insert(pairing);
  }
  return out;
}

Message cureFor(const Judgement& judgement) {
  if (!judgement.fits.empty())
    return {"did you mean %1? Look at the source's unit again",
            {text(StatedTorque{judgement.torque.digits, judgement.fits.front()})}};
  return "compare value, unit, thread and grade with the source; if something else limits the torque, say so";
}

void judgeTorque(const StatedTorque& torque, const GuardSubject& subject, const std::string& place,
                 Findings& findings) {
  const auto judgement = judge(torque, subject);
  if (!judgement) {
    findings.push_back(
        {Severity::Blocking, "not-judgeable", place, judgement.error().problem, judgement.error().expected});
  } else if (judgement->verdict == Verdict::NotJudged) {
    findings.push_back({Severity::Note, "not-judged", place, explain(*judgement).front(),
                        "compare the value with the source twice: nothing else guards it"});
  } else if (judgement->verdict != Verdict::InBand) {
    findings.push_back({Severity::Blocking, std::string(wordOf(judgement->verdict)), place,
                        explain(*judgement).front(), cureFor(*judgement)});
  }
}

/// Says nothing of names that the catalogue does not know: those are findings of their own.
void judgePairing(const Pairing& pairing, const Catalogue& catalogue, const std::string& place,
                  Findings& findings) {
  const auto subject = guardSubject(*pairing.fastener, *pairing.specification, catalogue);
  if (subject && pairing.specification->aim)
    judgeTorque(*pairing.specification->aim, *subject, place, findings);
}

/// Could this tool, in good order, bring the specification's torque about?
bool fits(const TorqueTool& tool, const TorqueTarget& target) {
  if (tool.status != ToolStatus::InUse) return false;
  return std::any_of(tool.scales.begin(), tool.scales.end(), [&](const Scale& scale) {
    const auto setting = wrenchSetting(target, std::nullopt, scale.graduation);
    return setting && toolFitness(tool, setting->value).fits();
  });
}

}  // namespace

void reviewGuard(const Sheet& sheet, const ReviewContext& context, Findings& findings) {
  forEach(sheet.joints, "joints", [&](const Joint& joint, const std::string& place) {
    for (const Pairing& pairing : pairingsOf(sheet, joint))
      judgePairing(pairing, context.catalogue, place, findings);
  });
}

void reviewTools(const Sheet& sheet, const ReviewContext& context, Findings& findings) {
  if (!context.crib) return;
  forEach(sheet.specifications, "specifications", [&](const Specification& each, const std::string& place) {
    const auto band = allowedBand(each);
    if (!band) return;
    const TorqueTarget target{each.aim->value(), *band, Torque(), PrevailingRule::None};
    if (std::none_of(context.crib->begin(), context.crib->end(),
                     [&](const TorqueTool& tool) { return fits(tool, target); }))
      findings.push_back({Severity::Warning,
                          "no-tool-fits",
                          place,
                          {"no tool in the crib can be set to %1 within its tolerance", {text(*each.aim)}},
                          "get one, or state a tolerance that a tool can keep"});
  });
}

/// An order edited by hand names no rule, so that nobody takes it for the published one.
void reviewOrders(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.joints, "joints", [&](const Joint& joint, const std::string& place) {
    if (joint.rule.empty()) return;
    const auto ruled = orderByRule(joint);
    if (!ruled) {
      findings.push_back({Severity::Blocking, "rule-does-not-fit", place + ".rule", ruled.error().problem,
                          ruled.error().expected});
    } else if (*ruled != joint.order) {
      const auto differs =
          std::mismatch(ruled->begin(), ruled->end(), joint.order.begin(), joint.order.end());
      findings.push_back(
          {Severity::Blocking,
           "order-not-by-rule",
           place + ".order",
           {"“%1” stands where the rule “%2” gives “%3”", {*differs.second, joint.rule, *differs.first}},
           "write the rule's order, or name no rule: the order is then made by hand"});
    }
  });
}

void reviewSecondTurns(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.joints, "joints", [&](const Joint& joint, const std::string& place) {
    std::vector<NoSecondTurn> barred = joint.noSecondTurn;
    for (const Pairing& pairing : pairingsOf(sheet, joint))
      if (pairing.specification->method == Method::TorqueAndAngle)
        barred.push_back(NoSecondTurn::AngleTightening);
    std::sort(barred.begin(), barred.end());
    barred.erase(std::unique(barred.begin(), barred.end()), barred.end());
    for (Finding finding : reviewPasses(joint.passes, barred)) {
      finding.place = place + ".passes." + finding.place;
      findings.push_back(std::move(finding));
    }
  });
}

}  // namespace cw

#include "core/record/tool_offer.h"

#include <algorithm>

#include "core/procedure/targets.h"

namespace cw {
namespace {

/// The pattern's pass for the job's pass number: by hand and check passes are not counted there.
Result<Pass> patternPass(const Joint& joint, int number) {
  for (const Pass& pass : passesOf(joint.passes))
    if ((pass.kind == PassKind::Snug || pass.kind == PassKind::Pattern) && --number == 0) return pass;
  return fail(ErrorCode::NotFound, "pass", "", "there is no such pass", "take the pass that is under way");
}

/// A deviation's torque stands in for the specification's.
Sheet withJobTorque(const Job& job, const Joint& joint, const std::string& label, std::size_t step) {
  Sheet sheet = job.sheet;
  if (const auto& torque = job.steps[step].torque)
    for (Specification& specification : sheet.specifications)
      if (specification.id == joint.specificationAt(label))
        specification.low = torque->low, specification.aim = torque->aim, specification.high = torque->high;
  return sheet;
}

Result<ToolSet> offer(const Job& job, const Next& now, const ShopFloor& floor, const TorqueTool& tool,
                      const Scale& scale, const std::string& sign, const Moment& moment) {
  const Step& step = job.sheet.steps[now.step];
  const Joint& joint = *job.sheet.joint(step.joint);
  const std::string label = now.position.empty() ? joint.order.front() : now.position;
  CW_TRY(pass, patternPass(joint, now.pass));
  const Sheet sheet = withJobTorque(job, joint, label, now.step);
  CW_TRY(setting, targetAt(sheet, *sheet.joint(joint.id), label, pass, scale.graduation));
  ToolSet set;
  set.step = step.id;
  set.pass = now.pass;
  set.tool = tool.id;
  set.setting = setting;
  Draft draft;
  draft.enteredBy = sign;
  draft.body = set;
  CW_CHECK(mayAppend(job, compose(job, draft, floor, moment), floor));
  return set;
}

}  // namespace

std::vector<ToolOffer> toolOffers(const Job& job, const Next& now, const ShopFloor& floor,
                                  const std::string& sign, const Moment& moment) {
  std::vector<ToolOffer> out;
  for (const TorqueTool& tool : floor.tools) {
    if (tool.status == ToolStatus::Retired) continue;
    for (const Scale& scale : tool.scales)
      out.push_back({tool.id, scale.low.unit, offer(job, now, floor, tool, scale, sign, moment)});
  }
  const auto span = [&](const ToolOffer& o) { return floor.tool(o.tool)->scaleIn(*o.unit)->high.value(); };
  std::stable_sort(out.begin(), out.end(), [&](const ToolOffer& a, const ToolOffer& b) {
    return a.fits() != b.fits() ? a.fits() : span(a) < span(b);
  });
  return out;
}

}  // namespace cw

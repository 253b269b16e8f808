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

class Offers {
 public:
  Offers(const Job& job, const Next& now, const ShopFloor& floor, const Worker& worker, const Moment& moment)
      : m_job(job), m_now(now), m_floor(floor), m_worker(worker), m_moment(moment) {}

  ToolOffer of(const TorqueTool& tool, const Scale& scale) const {
    ToolOffer out{tool.id, scale.low.unit, stated(tool, scale)};
    if (!out.set) return out;
    const ToolSet set = *out.set;
    if (const auto fits = mayState(set); !fits) {
      out.set = fail(fits.error());
      if (mayState(withALeadsWord(set))) out.allowed = set;
    }
    return out;
  }

 private:
  Result<ToolSet> stated(const TorqueTool& tool, const Scale& scale) const {
    const Step& step = m_job.sheet.steps[m_now.step];
    const Joint& joint = *m_job.sheet.joint(step.joint);
    const std::string label = m_now.position.empty() ? joint.order.front() : m_now.position;
    CW_TRY(pass, patternPass(joint, m_now.pass));
    const Sheet sheet = withJobTorque(m_job, joint, label, m_now.step);
    CW_TRY(setting, targetAt(sheet, *sheet.joint(joint.id), label, pass, scale.graduation));
    ToolSet set;
    set.step = step.id;
    set.pass = m_now.pass;
    set.tool = tool.id;
    set.setting = setting;
    return set;
  }

  Result<void> mayState(const ToolSet& set) const {
    Draft draft;
    draft.enteredBy = m_worker.sign;
    draft.supervisor = m_worker.supervisor;
    draft.body = set;
    return mayAppend(m_job, compose(m_job, draft, m_floor, m_moment), m_floor);
  }

  ToolSet withALeadsWord(ToolSet set) const {
    for (const Person& person : m_floor.people)
      if (person.active && person.may(Role::ShopLead)) set.allowedBy = person.sign;
    set.reason = "to see whether a reason helps";
    return set;
  }

  const Job& m_job;
  const Next& m_now;
  const ShopFloor& m_floor;
  const Worker& m_worker;
  const Moment& m_moment;
};

}  // namespace

std::vector<ToolOffer> toolOffers(const Job& job, const Next& now, const ShopFloor& floor,
                                  const Worker& worker, const Moment& moment) {
  const Offers offers(job, now, floor, worker, moment);
  std::vector<ToolOffer> out;
  for (const TorqueTool& tool : floor.tools) {
    if (tool.status == ToolStatus::Retired) continue;
    for (const Scale& scale : tool.scales) out.push_back(offers.of(tool, scale));
  }
  const auto span = [&](const ToolOffer& o) { return floor.tool(o.tool)->scaleIn(*o.unit)->high.value(); };
  std::stable_sort(out.begin(), out.end(), [&](const ToolOffer& a, const ToolOffer& b) {
    return a.fits() != b.fits() ? a.fits() : span(a) < span(b);
  });
  return out;
}

}  // namespace cw

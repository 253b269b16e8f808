#include "core/record/tool_offer.h"

#include <algorithm>

#include "core/procedure/targets.h"

namespace cw {
namespace {

class Offers {
 public:
  Offers(const Job& job, const Next& now, const ShopFloor& floor, const Worker& worker, const Moment& moment)
      : m_job(job), m_now(now), m_floor(floor), m_worker(worker), m_moment(moment) {
    const JobTorque torque = torqueAt(job, now.step, setFor(job, now));
    m_wanted.id = job.sheet.steps[now.step].id;
    m_wanted.low = torque.low, m_wanted.aim = torque.aim, m_wanted.high = torque.high;
    m_share = shareOf(job, job.sheet.steps[now.step], now.pass);
  }

  ToolOffer of(const TorqueTool& tool, const Scale& scale) const {
    ToolOffer out{tool.id, scale.low.unit, stated(tool, scale)};
    if (!out.set) return out;
    const ToolSet set = *out.set;
    if (const auto fits = mayState(set, {m_worker.sign, m_worker.supervisor}); !fits) {
      out.set = fail(fits.error());
      if (aLeadCouldAllow(set)) out.allowed = set;
    }
    return out;
  }

 private:
  Result<ToolSet> stated(const TorqueTool& tool, const Scale& scale) const {
    CW_TRY(setting, settingFor(m_wanted, m_share, scale.graduation));
    ToolSet set;
    set.step = m_job.sheet.steps[m_now.step].id;
    set.tool = tool.id;
    set.setting = setting;
    return set;
  }

  /// As if everybody asked were here.
  Result<void> mayState(const ToolSet& set, std::set<std::string> here) const {
    Draft draft;
    draft.enteredBy = m_worker.sign;
    draft.supervisor = m_worker.supervisor;
    draft.body = set;
    CW_TRY(entry, compose(m_job, draft, m_floor, {std::move(here), {}}, m_moment));
    return judge(m_job, std::move(entry), From::Line).map([](const Judged&) {});
  }

  bool aLeadCouldAllow(ToolSet set) const {
    for (const Person& person : m_floor.people)
      if (person.active && person.may(Role::ShopLead)) set.allowedBy = person.sign;
    set.reason = "to see whether a reason helps";
    return !set.allowedBy.empty() &&
           mayState(set, {m_worker.sign, m_worker.supervisor, set.allowedBy.text}).has_value();
  }

  const Job& m_job;
  const Next& m_now;
  const ShopFloor& m_floor;
  const Worker& m_worker;
  const Moment& m_moment;
  Specification m_wanted;  ///< the torque that holds where the wrench is to be used
  double m_share = 1;
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

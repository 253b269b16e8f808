#include "core/record/lapsed.h"

#include <set>

namespace cw {
namespace {

class Lapses {
 public:
  Lapses(const Job& job, const ShopFloor& floor, const Moment& now)
      : m_job(job), m_floor(floor), m_today(localDate(now)) {}

  std::vector<Message> all() {
    for (const Kept& kept : m_job.entries) {
      if (kept.overtaken) continue;
      if (const auto* set = std::get_if<ToolSet>(&kept.body())) look(*set);
      if (const auto* applied = std::get_if<Applied>(&kept.body())) look(applied->batch, applied->expiry);
      if (const auto* done = std::get_if<ActDone>(&kept.body())) look(done->batch, done->expiry);
    }
    lookAtTheJoint();
    return std::move(m_out);
  }

 private:
  void look(const ToolSet& set) {
    const TorqueTool* tool = m_floor.tool(set.tool.text);
    if (tool == nullptr || !m_seen.insert(set.tool).second) return;
    if (const auto service = checkInService(*tool, m_today); !service)
      m_out.push_back({"Wrench %1: %2.", {set.tool, plain(service.error().problem)}});
  }
  void look(const std::string& batch, const std::string& expiry) {
    const auto date = parseDate(expiry);
    if (expiry.empty() || !date || std::chrono::sys_days{*date} >= std::chrono::sys_days{m_today}) return;
    m_out.push_back({"Batch %1 expired on %2.", {batch, expiry}});
  }
  void lookAtTheJoint() {
    if (!m_job.parked) return;
    for (std::size_t i = 0; i < m_job.steps.size(); ++i) {
      const StepProgress& progress = m_job.steps[i];
      const bool begun = progress.tightening.set() != nullptr || progress.tightening.pass > 1;
      if (progress.state == StepState::Open && begun)
        m_out.push_back({"%1 is partly tightened and starts again; judge its gasket before that.",
                         {m_job.sheet.joint(m_job.sheet.steps[i].joint)->name}});
    }
  }

  const Job& m_job;
  const ShopFloor& m_floor;
  std::chrono::year_month_day m_today;
  std::set<std::string> m_seen;
  std::vector<Message> m_out;
};

}  // namespace

std::vector<Message> lapsedBy(const Job& job, const ShopFloor& floor, const Moment& now) {
  return Lapses(job, floor, now).all();
}

}  // namespace cw

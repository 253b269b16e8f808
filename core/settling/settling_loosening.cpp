#include "core/settling/settling_loosening.h"

#include <fmt/format.h>

#include "core/settling/settling_springs.h"

namespace cw {
namespace {

Result<void> checkRounds(const std::vector<LooseningRound>& rounds, int bolts) {
  for (std::size_t i = 0; i < rounds.size(); ++i) {
    const std::string place = fmt::format("rounds[{}]", i);
    if (!(rounds[i].share >= 0 && rounds[i].share < 1))
      return fail(ErrorCode::OutOfRange, place + ".share", fmt::format("{:g}", rounds[i].share),
                  {"%1 is no share to let a bolt off to", {fmt::format("{:g}", rounds[i].share)}},
                  "0 or more, below 1");
    CW_CHECK(checkOrder(place + ".order", rounds[i].order, bolts));
  }
  return {};
}

void noteHighest(Loosening& out, const TighteningPlan& start) {
  const std::vector<Force>& loads = out.steps.back().loads;
  for (std::size_t i = 0; i < loads.size(); ++i) {
    const double share = loads[i] / start.target(static_cast<int>(i));
    if (share <= out.highestShare) continue;
    out.highestShare = share;
    out.highestBolt = static_cast<int>(i) + 1;
    out.highestStep = static_cast<int>(out.steps.size());
  }
}

}  // namespace

Result<Loosening> loosen(const SettlingModel& model, const std::vector<Force>& loads,
                         const std::vector<LooseningRound>& rounds) {
  const int bolts = model.boltCount();
  const TighteningPlan start{loads, 0, {}};
  CW_CHECK(checkTightening(start, bolts));
  CW_CHECK(checkRounds(rounds, bolts));
  std::vector<Force> drawn;
  for (int i = 0; i < bolts; ++i) drawn.push_back(start.target(i));
  SettlingSprings springs(model);
  CW_CHECK(springs.drawTogether(drawn));

  Loosening out;
  int fitted = bolts;
  for (std::size_t r = 0; r < rounds.size(); ++r)
    for (const int bolt : rounds[r].order) {
      const Force goal = rounds[r].share * start.target(bolt - 1);
      if (goal == Force() && springs.started(bolt - 1)) {
        CW_CHECK(springs.remove(bolt - 1));
        --fitted;
      } else if (springs.load(bolt - 1) > goal) {
        CW_CHECK(springs.pull(bolt - 1, goal));
      }
      out.steps.push_back({static_cast<int>(r) + 1, bolt, springs.loads()});
      if (2 * fitted >= bolts) noteHighest(out, start);
    }
  return out;
}

}  // namespace cw

#include "core/pattern/loosening.h"

#include <cmath>
#include <string>

#include "core/pattern/share_text.h"

namespace cw {
Order looseningOrder(const Order& tightening) {
  return {{tightening.positions.rbegin(), tightening.positions.rend()},
          {"the tightening order in reverse: cylinder head specification of a diesel engine", true}};
}

Provenance sourceOfLooseningShares() {
  return {"flange practice: steps of about 20 to 30 % of the load, never one side completely", false};
}

Findings reviewLoosening(const LooseningPlan& plan) {
  Findings findings;
  double before = 1;
  for (std::size_t i = 0; i < plan.shares.size(); ++i) {
    const double share = plan.shares[i];
    if (!(share >= 0 && share < before))
      findings.push_back(blocking("loosening-not-falling", "shares[" + std::to_string(i) + "]",
                                  {"%1 is not less than the round before left", {percent(share)}},
                                  {"give at least 0 and less than %1", {percent(before)}}));
    before = share;
  }
  if (plan.shares.empty() || plan.shares.back() != 0)
    findings.push_back(
        blocking("loosening-not-loose", "shares", "the last round leaves the joint tight", "end at 0 %"));
  if (plan.shares.size() == 1)
    findings.push_back({Severity::Warning, "loosening-at-once", "shares",
                        "loosened in one round, the last fasteners take up the load of the others",
                        "loosen in three rounds, such as 70, 40 and 0 %"});
  return findings;
}

}  // namespace cw

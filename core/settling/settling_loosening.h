#pragma once
#include "core/settling/settling_model.h"
#include "core/settling/settling_tightening.h"

namespace cw {

/// One trip that lets the bolts off to a share of the load they started with; share 0 takes them out.
struct LooseningRound {
  double share = 0;
  std::vector<int> order;  ///< bolt numbers from 1
};

struct LooseningStep {
  int round = 0;  ///< from 1
  int bolt = 0;   ///< from 1
  std::vector<Force> loads;
};

/// The hardest-loaded bolt while a joint is let off.
struct Loosening {
  std::vector<LooseningStep> steps;
  double highestShare = 1;  ///< highest load over the load it started with, while half of the bolts are in
  int highestBolt = 0;      ///< which bolt; 0 if none ever rises
  int highestStep = 0;      ///< index into steps + 1
};

/// Loads while bolts that all carry `loads` are let off in rounds. A bolt that carries less than its round's
/// share already is left alone. Once half of the bolts are out, the part may tip, which is not modelled.
/// Errors: as checkTightening for the loads and orders; OutOfRange for shares outside 0 to 1.
Result<Loosening> loosen(const SettlingModel& model, const std::vector<Force>& loads,
                         const std::vector<LooseningRound>& rounds);

}  // namespace cw

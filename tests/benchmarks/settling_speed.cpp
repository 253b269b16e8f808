// Settling of 64 bolts in four passes with lift-off, from the plate to the loads, against a fresh dense
// solve per step; 1000 friction trials of 24 bolts; how soon a cancel answers.
#include <fmt/format.h>

#include <Eigen/Dense>
#include <chrono>
#include <thread>

#include "core/settling/settling_course.h"
#include "core/settling/settling_trials.h"
#include "tests/benchmarks/settling_baseline.h"
#include "tests/benchmarks/settling_joints.h"

namespace {

using namespace cw;

void compareWithFreshSolves() {
  SettlingModel model;
  SettlingCourse course;
  std::vector<Force> baseline;
  const TighteningPlan tightening = benchmarkTightening(64);
  const double plate = milliseconds([&] { model = *settlingModel(benchmarkJoint(64, true)); });
  const double ours = milliseconds([&] { course = *settle(model, tightening); });
  const double fresh = milliseconds([&] { baseline = settleByFreshSolves(model, tightening); });
  double worst = 0;
  for (std::size_t i = 0; i < baseline.size(); ++i)
    worst = std::max(worst, std::abs((course.passes.back().loads[i] - baseline[i]) / kilonewtons(200)));
  fmt::print("64 bolts x 4 passes, lift-off, {} gasket cells: plate {:.0f} ms + settling {:.0f} ms\n",
             model.cells.size(), plate, ours);
  fmt::print(
      "  fresh dense solve per step (same plate): {:.0f} ms + {:.0f} ms; ratio {:.1f}; loads agree to {:.2g} "
      "of target\n",
      plate, fresh, (plate + fresh) / (plate + ours), worst);
}

void compareWithOneFactorisation() {
  const SettlingModel model = *settlingModel(benchmarkJoint(64, false));
  TighteningPlan tightening = benchmarkTightening(64);
  tightening.snugShare = 0;
  constexpr int kTimes = 50;
  double sum = 0;
  const double settling = milliseconds([&] {
    for (int i = 0; i < kTimes; ++i) sum += settle(model, tightening)->passes.back().mean.si();
  });
  const Eigen::Map<const Eigen::MatrixXd> matrix(model.flexibility.data(), 64, 64);
  const double factorisation = milliseconds([&] {
    for (int i = 0; i < kTimes; ++i) sum += matrix.llt().matrixLLT()(i, i);
  });
  fmt::print(
      "64 bolts x 4 passes, two-way gasket: {:.2f} ms; one dense factorisation {:.3f} ms ({:.1f} times; sum "
      "{:.3g})\n",
      settling / kTimes, factorisation / kTimes, settling / factorisation, sum);
}

void runTrials(bool oneWay) {
  const SettlingModel model = *settlingModel(benchmarkJoint(24, oneWay));
  const TighteningPlan tightening = benchmarkTightening(24);
  FrictionTrials trials;
  const double time = milliseconds([&] { trials = *frictionTrials(model, tightening, {0.1, 1000, 1}); });
  fmt::print("1000 friction trials of 24 bolts x 4 passes, {}: {:.0f} ms, mean spread {:.2f}\n",
             oneWay ? "lift-off" : "two-way gasket", time, trials.meanSpread);
}

void timeCancel() {
  const SettlingModel model = *settlingModel(benchmarkJoint(24, true));
  std::stop_source stop;
  double asked = 0;
  const auto start = std::chrono::steady_clock::now();
  const auto now = [&] {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
  };
  std::thread canceller([&] {
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
    asked = now();
    stop.request_stop();
  });
  const auto trials = frictionTrials(model, benchmarkTightening(24), {0.1, 100000, 1}, {}, stop.get_token());
  const double answered = now();
  canceller.join();
  fmt::print("cancel answered after {:.2f} ms, {} trials kept\n", answered - asked, trials->done);
}

}  // namespace

int main() {
  compareWithFreshSolves();
  compareWithOneFactorisation();
  runTrials(false);
  runTrials(true);
  timeCancel();
}

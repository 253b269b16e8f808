// What a record costs to enter, seal and verify as its joint grows: 2 000 fasteners in four passes beside
// 500. Were everything done once for each entry, the larger would take four times as long.
#include <fmt/format.h>

#include <chrono>
#include <iostream>
#include <stdexcept>

#include "core/record/verify.h"
#include "tests/support/need.h"
#include "tests/support/sample_job.h"

namespace cw::test {
namespace {

constexpr int kRepeats = 3;

Sheet sheetOf(std::size_t fasteners) {
  Sheet sheet = sampleSheet();
  Joint& joint = sheet.joints.front();
  joint.layout.shape = Rows{fasteners / 20, 20, millimetres(60), millimetres(60)};
  joint.order.clear();
  for (std::size_t i = 1; i <= fasteners; ++i) joint.order.push_back(std::to_string(i));
  joint.rule.clear();
  joint.passes.shares = {0.4, 0.6, 0.8, 1.0};
  return sheet;
}

template <class Work>
double milliseconds(Work work) {
  const auto began = std::chrono::steady_clock::now();
  work();
  return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - began).count();
}

struct Cost {
  double enter = 0, seal = 0, verify = 0;  // ms
  int entries = 0;
};

void workThrough(Bench& bench, int fasteners) {
  if (const std::string refusal = bench.workThrough("s4"); !refusal.empty())
    throw std::runtime_error(refusal);
  const auto say = [&](Body body, const char* sign = "mira") { need(bench.say(sign, std::move(body))); };
  say(HandStarted{"s5", fasteners, {}});
  say(ConditionConfirmed{"s5", "dry"});
  for (const char* setting : {"26", "39", "52"}) {
    say(toolSet("s5", "T-07", inLbf(setting)));
    say(counted("s5", fasteners));
  }
  say(toolSet("s5", "T-07", inLbf("65")));
  say(SignedIn{}, "otto");
  Witnessed seen;
  seen.step = "s5", seen.manner = Manner::Independent, seen.what = {"setting"};
  seen.tool = "T-07", seen.setting = inLbf("65");
  say(seen, "otto");
  for (int position = 1; position <= fasteners; ++position) say(clicked("s5", std::to_string(position)));
  say(checkPass("s5", {}));
  Witnessed marks;
  marks.step = "s6", marks.what = {"marks"};
  say(marks, "otto");
  say(Finished{});
}

Cost costOf(int fasteners) {
  const SecretKey key = makeKey();
  Cost best;
  for (int i = 0; i < kRepeats; ++i) {
    Bench bench(sheetOf(static_cast<std::size_t>(fasteners)));
    Cost cost;
    cost.enter = milliseconds([&] { workThrough(bench, fasteners); });
    cost.entries = bench.job().count();
    std::string record;
    cost.seal = milliseconds([&] { record = need(sealRecord(bench.job(), bench.context(), key)); });
    cost.verify = milliseconds([&] {
      const Verification verified = verifyRecord(record, publicOf(key));
      if (!verified.good() || verified.count != cost.entries) throw std::runtime_error("it does not verify");
    });
    if (i == 0 || cost.enter + cost.seal + cost.verify < best.enter + best.seal + best.verify) best = cost;
  }
  std::cout << fmt::format(
      "{:5} fasteners: {:5} entries judged; enter {:.1f} ms, seal {:.1f} ms, verify {:.1f} ms\n", fasteners,
      best.entries, best.enter, best.seal, best.verify);
  return best;
}

}  // namespace
}  // namespace cw::test

int main() {
  const auto few = cw::test::costOf(500), many = cw::test::costOf(2000);
  std::cout << fmt::format("entries {:.2f} times; enter {:.2f}, seal {:.2f}, verify {:.2f} times\n",
                           static_cast<double>(many.entries) / few.entries, many.enter / few.enter,
                           many.seal / few.seal, many.verify / few.verify);
  return 0;
}

#include "tests/rules_walk/told.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include "core/record/next.h"
#include "core/units/stated_json.h"

namespace cw::test {
namespace {

std::string torque(const StatedTorque& value) {
  return value.empty() ? "-" : value.digits + std::string(value.unit->code);
}

std::string toldStep(const StepProgress& p) {
  const Tightening& t = p.tightening;
  std::string out = fmt::format("{}|{}|{}|{}|", static_cast<int>(p.state), p.warningsRead, p.reason,
                                p.absence ? static_cast<int>(*p.absence) : -1);
  if (p.torque) out += torque(p.torque->low) + torque(p.torque->aim) + torque(p.torque->high);
  out += fmt::format("|{}|{}|{}|{}|{}|{}|{}|{}|{}|{}|{}", fmt::join(p.hands, ","), t.handStarted,
                     fmt::join(t.conditions, ","), t.witnessed, t.pass, fmt::join(t.counted, ","), t.gapsRead,
                     fmt::join(t.tightened, ","), t.firstOpen, t.rounds, t.settled);
  for (const InHand& each : t.inHand) out += "|" + each.holder.text + canonical(bodyToJson(each.set));
  return out;
}

}  // namespace

std::string toldSteps(const Job& job) {
  std::string out;
  for (const StepProgress& progress : job.steps) out += toldStep(progress) + "\n";
  const Next now = next(job);
  out += fmt::format("next {} {} {} {} {} {} {}\n", static_cast<int>(now.stage), now.step, now.pass,
                     now.position, now.round, fmt::join(now.positions, ","), now.condition);
  out += fmt::format("{}{}{}{} {} [{}] {}\n", job.paused, job.parked, job.finished, job.calledOff,
                     job.corrections, fmt::join(job.signedIn, ","), hex(job.head));
  return out + canonical(bodyToJson(job.start)) + "\n";
}

std::string told(const Job& job) {
  std::string out = toldSteps(job);
  for (const Kept& kept : job.entries)
    out += fmt::format("{} {} {} {} {} {}\n", hex(kept.hash), kept.overtaken, kept.correctedBy.value_or(0),
                       kept.turned, kept.confirmedBy.value_or(0), canonical(bodyToJson(kept.body())));
  return out;
}

}  // namespace cw::test

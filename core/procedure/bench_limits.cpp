#include "core/procedure/bench_limits.h"

#include "core/procedure/review_rules.h"
#include "core/procedure/words.h"

namespace cw {
namespace {

constexpr const char* kOutside =
    "tighten by torque alone if the source allows it, or work and record it outside this program";

}  // namespace

Findings beyondTheBench(const Sheet& sheet) {
  Findings findings;
  forEach(sheet.specifications, "specifications", [&](const Specification& each, const std::string& place) {
    if (each.method != Method::TorqueOnly)
      findings.push_back(blocking("method-not-done", place + ".method",
                                  {"the bench does not do “%1”: it asks for no angle and records none",
                                   {std::string(wordOf(each.method))}},
                                  kOutside));
    else if (each.angle)
      findings.push_back(blocking("method-not-done", place + ".angle",
                                  "the bench asks for no angle and records none", kOutside));
  });
  return findings;
}

Result<void> checkBenchCan(const Sheet& sheet) {
  const Findings findings = beyondTheBench(sheet);
  if (findings.empty()) return {};
  const Finding& first = findings.front();
  return fail(ErrorCode::NotPermitted, first.place, "", first.problem, first.cure);
}

void reviewBench(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  const Findings found = beyondTheBench(sheet);
  findings.insert(findings.end(), found.begin(), found.end());
  forEach(sheet.joints, "joints", [&](const Joint& joint, const std::string& place) {
    if (joint.passes.retorque)
      findings.push_back({Severity::Warning, "retorque-not-called", place + ".passes.retorque",
                          "the record says that a retorque is due, but nothing calls anybody to it",
                          "plan it, and start it as a job of its own with that reason"});
  });
}

}  // namespace cw

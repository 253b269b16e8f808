#include <fmt/format.h>

#include "tests/rules_walk/oracle.h"
#include "tests/rules_walk/torque_now.h"

namespace cw::test {
namespace {

bool isOfStep(const Json& entry, const std::string& step) {
  return textOf(*entry.find("body"), "step") == step;
}

bool changesWhatIsSeen(const Json& entry) {
  const std::string kind = textOf(entry, "kind");
  return kind != "warnings-read" && kind != "set-aside" && kind != "left-blank";
}

void addHands(std::set<std::string>& out, const Json& entry) {
  out.insert(textOf(entry, "entered_by"));
  if (const std::string sign = textOf(entry, "supervisor"); !sign.empty()) out.insert(sign);
  for (const Json& doer : *entry.find("by")->array()) out.insert(textOf(doer, "person"));
}

bool includes(const Json& body, const char* list, const std::string& item) {
  const Json* found = body.find(list);
  if (found == nullptr) return false;
  for (const Json& each : *found->array())
    if (*each.string() == item) return true;
  return false;
}

}  // namespace

/// Everybody who did, entered, supervised or corrected what holds of a step before an entry.
std::set<std::string> Oracle::hands(const Job& job, std::size_t step, int before) const {
  std::set<std::string> out;
  for (int at = 1; at < before; ++at) {
    const std::string kind = textOf(entry(at), "kind");
    const int of = kind == "corrected" ? wholeOf(*entry(at).find("body"), "of") : at;
    if (kind == "witnessed" || kind == "taken-apart" || !holds(job, of)) continue;
    if (isOfStep(entry(of), job.sheet.steps[step].id)) addHands(out, entry(at));
  }
  return out;
}

/// The last look at a step that holds and stands before an entry: what it saw, and that it was a second
/// person's.
std::string Oracle::looked(const Job& job, std::size_t step, int before) const {
  const Step& asked = job.sheet.steps[step];
  int look = 0;
  for (int at = 1; at < before; ++at)
    if (textOf(entry(at), "kind") == "witnessed" && isOfStep(entry(at), asked.id) && holds(job, at))
      look = at;
  if (look == 0) return "nobody looked at " + asked.id;
  const Json& seen = *entry(look).find("body");
  if (seen.find("agrees") == nullptr) return "the look at " + asked.id + " does not agree";
  for (const std::string& item : asked.hold->what)
    if (!includes(seen, "what", item) || includes(seen, "not_so", item)) return item + " was not looked at";
  if (job.start.alone) return textOf(seen, "manner") == "self" ? "" : "a self-check that is none";
  const std::string sign = textOf(entry(look), "entered_by");
  std::set<std::string> out = hands(job, step, look);
  if (asked.kind != StepKind::Hold) return out.contains(sign) ? sign + " looked at their own work" : "";
  for (std::size_t i = step; i-- > 0 && job.sheet.steps[i].kind != StepKind::Hold;) {
    out.merge(hands(job, i, look));
    for (int at = look + 1; at < before; ++at)
      if (isOfStep(entry(at), job.sheet.steps[i].id) && holds(job, at) && changesWhatIsSeen(entry(at)))
        return fmt::format("entry {} is of {} and after the look at {}", at, job.sheet.steps[i].id, asked.id);
  }
  return out.contains(sign) ? sign + " looked at their own work" : "";
}

/// The last pull of a position that holds is within what is allowed, after a second person's look if one is
/// asked.
std::string Oracle::position(const Job& job, const Step& step, const std::string& label) const {
  int last = 0;
  for (int at = 1; at <= job.count(); ++at)
    if (textOf(entry(at), "kind") == "tightened" && isOfStep(entry(at), step.id) && holds(job, at) &&
        textOf(*entry(at).find("body"), "position") == label)
      last = at;
  const std::string place = step.id + " " + label;
  if (last == 0) return place + " was not pulled";
  const Json body = bodyNow(last);
  const std::string tool = textOf((*entry(last).find("by")->array())[0], "tool");
  const auto setting = settingOf(job, m_entries, step.id, tool, last);
  if (body.find("reading") == nullptr && !setting) return place + " was pulled with no wrench set";
  const double reached = body.find("reading") != nullptr ? newtonMetresOf(*body.find("reading")) : *setting;
  if (!bandAt(job, m_entries, step, label, last).holds(reached))
    return fmt::format("{} holds {} N·m, which nothing allows", place, reached);
  if (!step.hold) return {};
  const std::size_t index = *job.stepIndex(step.id);
  if (const std::string wrong = looked(job, index, last); !wrong.empty()) return wrong;
  // Nobody set the wrench anew after the look.
  bool lookedAt = false;
  for (int at = 1; at < last; ++at) {
    if (!isOfStep(entry(at), step.id) || !holds(job, at)) continue;
    if (textOf(entry(at), "kind") == "tool-set") lookedAt = false;
    if (textOf(entry(at), "kind") == "witnessed")
      lookedAt = entry(at).find("body")->find("agrees") != nullptr;
  }
  return lookedAt ? "" : place + " was pulled after the wrench was set and before anybody looked";
}

std::string Oracle::complete(const Job& job) const {
  for (std::size_t i = 0; i < job.sheet.steps.size(); ++i) {
    const Step& step = job.sheet.steps[i];
    std::string last;  // what closed the step
    int at = 0;
    for (int each = 1; each <= job.count(); ++each) {
      const std::string kind = textOf(entry(each), "kind");
      const bool isTorque = kind == "deviated" && entry(each).find("body")->find("aim") != nullptr;
      if (!isOfStep(entry(each), step.id) || !holds(job, each) || kind == "warnings-read" || isTorque)
        continue;
      if (kind == "reopened" || kind == "taken-apart") continue;
      last = kind, at = each;
    }
    if (last.empty()) return "nothing stands against " + step.id;
    const Json body = bodyNow(at);
    if (last == "set-aside") return step.id + " is set aside";
    if (step.kind == StepKind::Tighten) {
      for (const std::string& label : job.sheet.joint(step.joint)->order)
        if (const std::string wrong = position(job, step, label); !wrong.empty()) return wrong;
      const bool settles = last != "check-pass" || body.find("moved") == nullptr;
      if (!settles) return step.id + " still moved";
      if (last == "left-blank") return step.id + " is blank";
      continue;
    }
    if (step.kind == StepKind::Hold) {
      if (const std::string wrong = looked(job, i, job.count() + 1); !wrong.empty()) return wrong;
      continue;
    }
    if (last == "deviated") continue;
    if (step.kind == StepKind::Check && (last != "checked" || textOf(body, "answer") != "yes"))
      return step.id + " is not answered yes";
    if (last == "left-blank" && textOf(body, "absence") != "not-applicable")
      return step.id + " is not recorded";
    if (last == "measured") {
      const double value = std::atof(textOf(body, "value").c_str());
      if (!step.low.empty() && value < std::atof(step.low.c_str())) return step.id + " is below its limit";
      if (!step.high.empty() && value > std::atof(step.high.c_str())) return step.id + " is above its limit";
    }
  }
  return {};
}

}  // namespace cw::test

#include "core/record/derive.h"

#include <algorithm>

#include "core/base/digest.h"
#include "core/record/body_fields.h"
#include "core/record/next.h"

namespace cw {
namespace {

// Only whole numbers, yes or no, and stated texts are derived: they are hashed, so a change here is a new
// version of the rules.

const ToolSet* wrenchOf(const Situation& at) {
  const Doer& doer = at.entry.by.front();
  for (const InHand& each : at.progress.tightening.inHand)
    if (!doer.tool.empty() && each.set.tool == doer.tool.text) return &each.set;
  return at.progress.tightening.heldBy(doer.person.text);
}

void derive(JobStarted& body, const Situation& at) {
  body.sheetDigest.value = hex(sha256(at.job.sheetBytes));
}

/// A check pass is made with the wrench as for the final one.
void derive(ToolSet& body, const Situation& at) {
  body.pass.value = std::min(at.progress.tightening.pass, passesOf(at.job, at.asked()));
}

void derive(PassCounted& body, const Situation& at) {
  body.pass.value = at.progress.tightening.pass;
  if (const ToolSet* set = wrenchOf(at)) body.setting.value = set->setting;
  const Next due = nextIn(at.job, at.step, at.progress);
  if (!isWholeJoint(at.job, due)) body.positions.value = due.positions;
}

void derive(GapsRead& body, const Situation& at) {
  body.pass.value = at.progress.tightening.pass - 1;
  const auto& wanted = at.joint().passes.gaps;
  body.within.value = wanted && even(body.gaps, *wanted);
}

void derive(Tightened& body, const Situation& at) {
  const JobTorque torque = torqueAt(at.job, at.step, at.progress, body.position);
  body.pass.value = at.progress.tightening.pass;
  body.target.value = torque.aim;
  if (const ToolSet* set = wrenchOf(at)) body.setting.value = set->setting;
  body.within.value = within(body.reading ? *body.reading : body.setting.value, torque);
}

void derive(CheckPassMade& body, const Situation& at) {
  body.round.value = at.progress.tightening.rounds + 1;
}

/// The wrenches that a second person may find: those in hand, or, after the joint, those its final pass was
/// made with, one that was stopped since included.
std::vector<const ToolSet*> wrenchesToSee(const Situation& at, std::size_t joint) {
  std::vector<const ToolSet*> out;
  if (joint == at.step) {
    for (const InHand& each : at.progress.tightening.inHand) out.push_back(&each.set);
    return out;
  }
  const int last = passesOf(at.job, at.job.sheet.steps[joint]);
  for (const Kept& kept : at.job.entries)
    if (const auto* set = std::get_if<ToolSet>(&kept.entry.body);
        set != nullptr && !kept.overtaken && set->pass == last && stepMeant(at.job, kept.entry.body) == joint)
      out.push_back(set);
  return out;
}

/// Quantities are compared as quantities, ids without case.
void derive(Witnessed& body, const Situation& at) {
  const auto joint = lookedAt(at.job, at.step);
  bool same = body.notSo.empty();
  if (joint) {
    const auto wrenches = wrenchesToSee(at, *joint);
    const auto isIt = [&](const ToolSet* set) {
      return (body.tool.empty() || sameMark(body.tool.text, set->tool.text)) &&
             (!body.setting || sameTorque(*body.setting, set->setting));
    };
    const bool sawAWrench = !body.tool.empty() || body.setting;
    same = same && (!sawAWrench || std::any_of(wrenches.begin(), wrenches.end(), isIt));
    const auto all = static_cast<int>(at.job.plans[*joint].placeInOrder.size());
    same = same && (!body.count || *body.count == all);
  }
  body.agrees.value = same;
}

void derive(ToolStopped& body, const Situation& at) {
  for (std::size_t i = 0; i < at.job.steps.size(); ++i) {
    const auto& inHand = at.job.steps[i].tightening.inHand;
    if (std::none_of(inHand.begin(), inHand.end(),
                     [&](const InHand& each) { return each.set.tool == body.tool.text; }))
      continue;
    for (const Kept& kept : at.job.entries) {
      const auto* pulled = std::get_if<Tightened>(&kept.body());
      if (pulled == nullptr || kept.overtaken || stepMeant(at.job, kept.body()) != i) continue;
      if (pulled->pass == at.job.steps[i].tightening.pass && kept.entry.by.front().tool == body.tool.text)
        body.positions.value.push_back(pulled->position);
    }
  }
}

void derive(ClockWentBack& body, const Situation& at) {
  if (at.job.last() != nullptr) body.before.value = rfc3339(at.job.last()->time);
}

template <class B>
struct Derivation {
  B& body;
  const Situation& at;
  bool any = false;
  template <class T>
  void operator()(std::string_view, Derived<T>& field) {
    static_assert(
        requires { derive(body, at); }, "write derive() for this kind");
    field = {};
    any = true;
  }
  template <class T>
  void operator()(std::string_view, T&) {}
};

}  // namespace

void deriveAll(Body& body, const Situation& at) {
  std::visit(
      [&]<class B>(B& b) {
        Derivation<B> derivation{b, at};
        B::fields(b, derivation);
        if constexpr (requires { derive(b, at); })
          if (derivation.any) derive(b, at);
      },
      body);
}

std::string fieldThatDoesNotFollow(const Body& said, const Situation& at) {
  Body right = said;
  deriveAll(right, at);
  if (right == said) return {};
  const Json a = bodyToJson(said), b = bodyToJson(right);
  for (const auto* each : {&a, &b})
    for (const auto& [key, value] : *each->object()) {
      const Json* left = a.find(key);
      const Json* other = b.find(key);
      if (left == nullptr || other == nullptr || !(*left == *other)) return key;
    }
  return {};
}

}  // namespace cw

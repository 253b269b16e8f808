#include "core/record/job.h"

#include <algorithm>

#include "core/procedure/sheet_file.h"

namespace cw {
namespace {

const Joint& jointOf(const Job& job, const Step& step) {
  return *job.sheet.joint(step.joint);
}

StepPlan planOf(const Sheet& sheet, const Step& step) {
  StepPlan out;
  const Joint* joint = step.kind == StepKind::Tighten ? sheet.joint(step.joint) : nullptr;
  if (joint == nullptr) return out;
  for (const std::string& label : joint->order) {
    out.placeInOrder.emplace(label, out.placeInOrder.size());
    const Specification* specification = sheet.specification(joint->specificationAt(label));
    if (specification == nullptr || specification->condition.empty()) continue;
    if (std::find(out.conditions.begin(), out.conditions.end(), specification->condition) ==
        out.conditions.end())
      out.conditions.push_back(specification->condition);
  }
  return out;
}

}  // namespace

const ToolSet* Tightening::heldBy(std::string_view person) const {
  for (const InHand& each : inHand)
    if (each.holder == person) return &each.set;
  return set();
}

std::optional<std::size_t> Job::stepIndex(std::string_view stepId) const {
  const auto found = stepPlaces.find(stepId);
  return found == stepPlaces.end() ? std::nullopt : std::optional(found->second);
}

Result<Job> emptyJob(Id shop, Id id, std::string sheetBytes) {
  CW_TRY(sheet, readSheet(sheetBytes));
  Job job;
  job.head = genesis(shop, id, sha256(sheetBytes));
  job.shop = std::move(shop);
  job.id = std::move(id);
  job.steps.resize(sheet.steps.size());
  for (const Step& step : sheet.steps) {
    job.stepPlaces.emplace(step.id, job.stepPlaces.size());
    job.plans.push_back(planOf(sheet, step));
  }
  job.sheet = std::move(sheet);
  job.sheetBytes = std::move(sheetBytes);
  return job;
}

const std::vector<std::string>& orderOf(const Job& job, const Step& step) {
  return jointOf(job, step).order;
}

int passesOf(const Job& job, const Step& step) {
  const PassPlan& plan = jointOf(job, step).passes;
  return static_cast<int>(plan.shares.size()) + (plan.snug ? 1 : 0);
}

double shareOf(const Job& job, const Step& step, int pass) {
  const PassPlan& plan = jointOf(job, step).passes;
  if (plan.snug && pass == 1) return *plan.snug;
  return plan.shares.at(static_cast<std::size_t>(pass - (plan.snug ? 2 : 1)));
}

int checkRoundsOf(const Job& job, const Step& step) {
  const auto& check = jointOf(job, step).passes.check;
  return check ? static_cast<int>(check->limit) : 0;
}

bool hasPosition(const Job& job, std::size_t step, std::string_view label) {
  return job.plans[step].placeInOrder.contains(label);
}

JobTorque torqueBySheet(const Job& job, std::size_t step, const std::string& position) {
  const Joint& joint = jointOf(job, job.sheet.steps[step]);
  const Specification* specification = job.sheet.specification(joint.specificationAt(position));
  if (specification == nullptr || !specification->aim) return {};
  const StatedTorque& aim = *specification->aim;
  // As in allowedBand: a source that states a highest torque only has no lowest.
  return {specification->low.value_or(StatedTorque{"0", aim.unit}), aim, specification->high.value_or(aim)};
}

JobTorque torqueAt(const Job& job, std::size_t step, const StepProgress& progress,
                   const std::string& position) {
  return progress.torque ? *progress.torque : torqueBySheet(job, step, position);
}

JobTorque torqueAt(const Job& job, std::size_t step, const std::string& position) {
  return torqueAt(job, step, job.steps[step], position);
}

JobTorque torqueOf(const Deviated& deviated) {
  return {deviated.low.value_or(*deviated.aim), *deviated.aim, deviated.high.value_or(*deviated.aim)};
}

JobTorque torqueThen(const Job& job, std::size_t step, const std::string& position, int sequence) {
  const std::string& id = job.sheet.steps[step].id;
  const Deviated* own = nullptr;
  if (job.steps[step].torque)
    for (const Kept& kept : job.entries) {
      if (kept.entry.sequence >= sequence) break;
      const auto* deviated = std::get_if<Deviated>(&kept.entry.body);
      if (deviated != nullptr && deviated->aim && deviated->step == id) own = deviated;
    }
  return own != nullptr ? torqueOf(*own) : torqueBySheet(job, step, position);
}

const std::string& conditionAt(const Job& job, std::size_t step, const std::string& position) {
  static const std::string kUnsaid;
  const Joint& joint = jointOf(job, job.sheet.steps[step]);
  const Specification* specification = job.sheet.specification(joint.specificationAt(position));
  return specification == nullptr ? kUnsaid : specification->condition;
}

std::optional<std::size_t> lookedAt(const Job& job, std::size_t step) {
  for (std::size_t i = step + 1; i-- > 0;)
    if (job.sheet.steps[i].kind == StepKind::Tighten) return i;
  return std::nullopt;
}

}  // namespace cw

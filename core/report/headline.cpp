#include "core/report/headline.h"

namespace cw {
namespace {

constexpr std::size_t kNamed = 3;  ///< more are counted

std::size_t countOf(std::span<const ExceptionGroup> exceptions, bool corrections) {
  std::size_t out = 0;
  for (const ExceptionGroup& group : exceptions)
    if (group.kind != ExceptionKind::RetorqueDue && group.kind != ExceptionKind::NotDone &&
        (group.kind == ExceptionKind::Correction) == corrections)
      out += group.lines.size();
  return out;
}

bool retorqueIsDue(std::span<const ExceptionGroup> exceptions) {
  for (const ExceptionGroup& group : exceptions)
    if (group.kind == ExceptionKind::RetorqueDue) return true;
  return false;
}

Message exceptionsText(std::size_t count) {
  if (count == 0) return {};
  if (count == 1) return "with one exception";
  return {"with %1 exceptions", {std::to_string(count)}};
}

Message correctionsText(std::size_t count) {
  if (count == 0) return {};
  if (count == 1) return "one slip corrected";
  return {"%1 slips corrected", {std::to_string(count)}};
}

std::string missingText(const Job& job, const std::vector<Shortfall>& missing, const Wording& wording) {
  std::string out;
  for (std::size_t i = 0; i < missing.size() && i < kNamed; ++i)
    out += (out.empty() ? "" : "; ") + wording(shortfallText(job, missing[i]));
  if (missing.size() <= kNamed) return wording({"Not complete: %1", {out}});
  return wording({"Not complete: %1; and %2 more", {out, std::to_string(missing.size() - kNamed)}});
}

}  // namespace

Message shortfallText(const Job& job, const Shortfall& shortfall) {
  const Step& step = job.sheet.steps[shortfall.step];
  const std::string number = std::to_string(shortfall.step + 1);
  switch (shortfall.kind) {
    case Shortfall::Kind::Positions:
      return {"%1 of %2 positions of “%3”",
              {std::to_string(shortfall.done), std::to_string(shortfall.of), job.sheet.joint(step.joint)->name}};
    case Shortfall::Kind::Check:
      return {"the check of step %1 was not answered yes", {number}};
    case Shortfall::Kind::Hold:
      return {"no second person looked at step %1", {number}};
    case Shortfall::Kind::Step:
      return {"step %1 was not done, or not recorded", {number}};
  }
  return {};
}

std::string headlineOf(const Headline& of, const Wording& wording) {
  if (of.job.calledOff) return wording("Called off, never sealed");
  if (!of.job.finished) return wording("In progress, not sealed");
  if (of.job.isTrial()) return wording(of.sealed ? "Sealed by a trial version; its rules are not checked" : "Finished by a trial version, not sealed");
  std::vector<Shortfall> missing = shortfallsOf(of.job);
  std::vector<std::string> parts;
  if (!of.sealed) parts.push_back(wording("Finished, not sealed"));
  const Message exceptions = exceptionsText(countOf(of.exceptions, false));
  if (!missing.empty())
    parts.push_back(missingText(of.job, missing, wording));
  else if (of.sealed)
    parts.push_back(wording(exceptions.empty() ? "Complete as the sheet says" : "Complete"));
  if (!exceptions.empty()) parts.push_back(wording(exceptions));
  if (const Message slips = correctionsText(countOf(of.exceptions, true)); !slips.empty())
    parts.push_back(wording(slips));
  std::string out;
  for (const std::string& part : parts) out += (out.empty() ? "" : ", ") + part;
  return retorqueIsDue(of.exceptions) ? wording({"%1; retorque due", {out}}) : out;
}

}  // namespace cw

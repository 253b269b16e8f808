#include "core/record/rule_checks.h"

#include <algorithm>

namespace cw {

Message doing(Stage stage) {
  switch (stage) {
    case Stage::Start:
      return "start the job";
    case Stage::Resume:
      return "resume the job";
    case Stage::ReadWarnings:
      return "read its warnings and cautions";
    case Stage::Act:
      return "do the act";
    case Stage::Check:
      return "make the check";
    case Stage::Measure:
      return "measure";
    case Stage::Apply:
      return "apply the compound";
    case Stage::Hold:
      return "have the second person look";
    case Stage::HandStart:
      return "run every fastener to the face by finger and enter the count";
    case Stage::ConfirmCondition:
      return "confirm the condition of the threads";
    case Stage::SetTool:
      return "set the wrench";
    case Stage::WitnessBeforeFinal:
      return "have the second person look";
    case Stage::CountPass:
      return "do the pass and enter the count";
    case Stage::ReadGaps:
      return "measure the gap between the faces all round";
    case Stage::TightenPosition:
      return "tighten the next position";
    case Stage::CheckPass:
      return "make a check pass";
    case Stage::Finish:
      return "finish the job";
    case Stage::Nothing:
      return "nothing is left to do";
  }
  return {};
}

Result<void> said(const std::string& text, std::string_view place, Message missing) {
  if (text.find_first_not_of(" \t\n") != std::string::npos) return {};
  return fail(ErrorCode::InvalidInput, std::string(place), "", std::move(missing), "say it in a few words");
}

Result<void> knownPositions(const Job& job, std::size_t step, const std::vector<std::string>& labels,
                            std::string_view place) {
  std::set<std::string_view> seen;
  for (const std::string& label : labels) {
    if (!hasPosition(job, step, label))
      return fail(ErrorCode::NotFound, std::string(place), label,
                  {"the joint has no position “%1”", {shown(label)}}, "write the label that is on the part");
    if (!seen.insert(label).second)
      return fail(ErrorCode::InvalidInput, std::string(place), label,
                  {"position “%1” is named twice", {shown(label)}}, "name each once");
  }
  return {};
}

Result<void> fullCount(int count, std::size_t wanted) {
  if (count == static_cast<int>(wanted)) return {};
  return fail(ErrorCode::OutOfRange, "count", std::to_string(count),
              {"%1 is not the number of fasteners in this joint", {std::to_string(count)}},
              {"all %1 are to be done", {std::to_string(wanted)}});
}

}  // namespace cw

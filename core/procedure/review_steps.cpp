#include <algorithm>

#include "core/procedure/numbers_in_text.h"
#include "core/procedure/review_rules.h"
#include "core/procedure/wording.h"

namespace cw {
namespace {

std::string quoted(const std::vector<std::string>& words) {
  std::string out;
  for (const std::string& word : words) out += (out.empty() ? "“" : ", “") + word + "”";
  return out;
}

/// Calls `each(sentence, place)` for every sentence of every instruction.
template <class Each>
void forEachInstruction(const Sheet& sheet, Each each) {
  forEach(sheet.steps, "steps", [&](const Step& step, const std::string& place) {
    for (const std::string& sentence : sentences(step.text)) each(sentence, place + ".text");
  });
}

/// The same for warnings, cautions and notes.
template <class Each>
void forEachAlert(const Sheet& sheet, Each each) {
  forEach(sheet.steps, "steps", [&](const Step& step, const std::string& place) {
    const std::pair<std::string_view, const std::vector<std::string>&> lists[] = {
        {".warnings", step.warnings}, {".cautions", step.cautions}, {".notes", step.notes}};
    for (const auto& [list, texts] : lists)
      forEach(texts, place + std::string(list), [&](const std::string& text, const std::string& textPlace) {
        for (const std::string& sentence : sentences(text)) each(sentence, textPlace);
      });
  });
}

template <class Each>
void forEachSentence(const Sheet& sheet, Each each) {
  forEachInstruction(sheet, each);
  forEachAlert(sheet, each);
}

std::vector<std::string> digitsThatCount(const std::string& sentence, Counts counts) {
  std::vector<std::string> out;
  for (const NumberInText& number : numbersIn(sentence))
    if (number.counts == counts) out.push_back(number.digits);
  return out;
}

bool demands(const HoldDemand& hold, std::string_view what) {
  return std::find(hold.what.begin(), hold.what.end(), what) != hold.what.end();
}

}  // namespace

void reviewActions(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.steps, "steps", [&](const Step& step, const std::string& place) {
    std::vector<std::string> found;
    for (const std::string& sentence : sentences(step.text))
      for (std::string& action : actions(sentence)) found.push_back(std::move(action));
    if (found.size() > 1)
      findings.push_back({Severity::Warning,
                          "several-actions",
                          place + ".text",
                          {"this step asks for several things: %1", {quoted(found)}},
                          "write one step for each"});
  });
}

void reviewLength(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEachSentence(sheet, [&](const std::string& sentence, const std::string& place) {
    if (const std::size_t words = wordCount(sentence); words > kMostWords)
      findings.push_back({Severity::Warning,
                          "too-many-words",
                          place,
                          {"this sentence has %1 words", {std::to_string(words)}},
                          {"use at most %1", {std::to_string(kMostWords)}}});
  });
}

void reviewNumbers(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEachSentence(sheet, [&](const std::string& sentence, const std::string& place) {
    if (const auto bare = digitsThatCount(sentence, Counts::Nothing); !bare.empty())
      findings.push_back({Severity::Blocking,
                          "bare-number",
                          place,
                          {"%1 has no unit", {quoted(bare)}},
                          "write the unit, or what is counted"});
  });
  forEachInstruction(sheet, [&](const std::string& sentence, const std::string& place) {
    if (const auto torques = digitsThatCount(sentence, Counts::Torques); !torques.empty())
      findings.push_back({Severity::Blocking,
                          "torque-in-text",
                          place,
                          {"the instruction states a torque of its own: %1", {quoted(torques)}},
                          "leave it to the joint's specification, which is shown in the wrench's unit"});
  });
}

void reviewVagueness(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEachInstruction(sheet, [&](const std::string& sentence, const std::string& place) {
    if (const auto vague = vagueWords(sentence); !vague.empty())
      findings.push_back({Severity::Warning,
                          "vague-word",
                          place,
                          {"%1 leaves the amount open", {quoted(vague)}},
                          "say what can be measured or seen"});
  });
}

void reviewAlerts(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEachAlert(sheet, [&](const std::string& sentence, const std::string& place) {
    if (const auto found = actions(sentence); !found.empty())
      findings.push_back({Severity::Blocking,
                          "action-in-caution",
                          place,
                          {"something to do stands where it is easily missed: %1", {quoted(found)}},
                          "make it a step; say here what harms and how"});
    if (const auto torques = digitsThatCount(sentence, Counts::Torques); !torques.empty())
      findings.push_back({Severity::Blocking,
                          "value-in-caution",
                          place,
                          {"a torque stands where it is easily missed: %1", {quoted(torques)}},
                          "put it into a specification"});
    if (const auto values = digitsThatCount(sentence, Counts::Quantity); !values.empty())
      findings.push_back({Severity::Warning,
                          "value-in-caution",
                          place,
                          {"a value stands where it is easily missed: %1", {quoted(values)}},
                          "make it a step that measures or checks"});
  });
}

void reviewHolds(const Sheet& sheet, const ReviewContext& context, Findings& findings) {
  forEach(sheet.steps, "steps", [&](const Step& step, const std::string& place) {
    if (!step.hold) return;
    if (step.hold->what.empty())
      findings.push_back({Severity::Warning, "hold-says-nothing", place + ".hold",
                          "the second person is not told what to look at",
                          "name it: setting, marks, count, or in words"});
    if (step.kind == StepKind::Hold && demands(*step.hold, "setting"))
      findings.push_back({Severity::Blocking, "hold-too-late", place + ".hold",
                          "a wrench's setting cannot be checked once the joint is tight",
                          "put this hold on the step that tightens: it comes before the final pass"});
    if (context.onePersonShop)
      findings.push_back({Severity::Warning, "hold-by-same-person", place + ".hold",
                          "there is no second person in this shop",
                          "it becomes a self-check after a break, printed as “not independent”"});
  });
}

/// Each one costs two people's time, and many of them are signed without looking.
constexpr std::size_t kManyHolds = 3;

void reviewConsequences(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.steps, "steps", [&](const Step& step, const std::string& place) {
    const Joint* joint = sheet.joint(step.joint);
    if (joint != nullptr && joint->ifItLetsGo == IfItLetsGo::Injury && !step.hold)
      findings.push_back({Severity::Warning,
                          "injury-without-hold",
                          place + ".hold",
                          {"somebody is hurt if “%1” lets go, and no second person looks", {joint->name}},
                          "put a hold on this step"});
  });
  const auto holds = std::count_if(sheet.steps.begin(), sheet.steps.end(),
                                   [](const Step& step) { return step.hold.has_value(); });
  if (static_cast<std::size_t>(holds) > kManyHolds)
    findings.push_back({Severity::Note,
                        "many-holds",
                        "steps",
                        {"a second person is wanted at %1 steps", {std::to_string(holds)}},
                        {"keep it to the %1 that matter most", {std::to_string(kManyHolds)}}});
}

}  // namespace cw

#include "core/joint/agreement.h"
#include "core/procedure/numbers_in_text.h"
#include "core/procedure/review_rules.h"
#include "core/units/format.h"

namespace cw {
namespace {

/// In "60 ± 5 in-lb" the second number is no torque that anything is tightened to.
std::vector<StatedTorque> torquesPrinted(const std::string& printed) {
  std::vector<StatedTorque> out;
  for (const NumberInText& number : numbersIn(printed))
    if (number.torque) out.push_back(*number.torque);
  if (out.size() == 2 && printed.find("±") != std::string::npos) out.pop_back();
  return out;
}

/// Equal values in two units differ in the last places.
constexpr double kNoise = 1e-9;

bool isBelow(const StatedTorque& torque, const std::optional<StatedTorque>& limit) {
  return limit && torque.value() < limit->value() * (1 - kNoise);
}

bool isAbove(const StatedTorque& torque, const std::optional<StatedTorque>& limit) {
  return limit && torque.value() > limit->value() * (1 + kNoise);
}

void compareColumns(const StatedTorque& first, const StatedTorque& second, const std::string& place,
                    Findings& findings) {
  const auto agreement = columnsAgree(first, second);
  if (!agreement) {
    findings.push_back({Severity::Warning, "columns-not-compared", place, agreement.error().problem,
                        agreement.error().expected});
  } else if (agreement->agreement != Agreement::Agrees) {
    const bool rounded = agreement->agreement == Agreement::Rounded;
    findings.push_back(
        {rounded ? Severity::Note : Severity::Blocking, rounded ? "columns-rounded" : "columns-disagree",
         place, explain(*agreement, first, second), "look at the source again: line, column and unit"});
  }
}

}  // namespace

void reviewSource(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.specifications, "specifications", [&](const Specification& each, const std::string& place) {
    if (each.source.empty())
      findings.push_back({Severity::Blocking,
                          "source-missing",
                          place + ".source",
                          {"“%1” has no source", {each.printed}},
                          "name the document, its page and revision"});
    if (each.interpretedBy.empty())
      findings.push_back({Severity::Warning,
                          "interpreter-missing",
                          place + ".interpreted_by",
                          {"nobody stands for how “%1” was read", {each.printed}},
                          "name who read it"});
  });
  forEach(sheet.sources, "sources", [&](const Source& each, const std::string& place) {
    if (each.page.empty() || each.revision.empty())
      findings.push_back({Severity::Warning,
                          "source-vague",
                          place,
                          {"“%1” is given without page or revision", {each.document}},
                          "write both, so that an old revision is noticed"});
  });
}

void reviewCondition(const Sheet& sheet, const ReviewContext& context, Findings& findings) {
  forEach(sheet.specifications, "specifications", [&](const Specification& each, const std::string& place) {
    if (each.condition.empty()) {
      findings.push_back({Severity::Warning,
                          "condition-missing",
                          place + ".condition",
                          {"“%1” does not say for which state of the thread", {each.printed}},
                          "name the condition the source means, such as dry or oiled"});
    } else if (const auto known = context.catalogue.condition(each.condition); !known) {
      findings.push_back({Severity::Blocking, "condition-unknown", place + ".condition",
                          known.error().problem, known.error().expected});
    }
  });
}

void reviewTolerance(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.specifications, "specifications", [&](const Specification& each, const std::string& place) {
    if (!each.aim)
      findings.push_back({Severity::Blocking,
                          "aim-missing",
                          place + ".aim",
                          {"“%1” has no torque to aim at", {each.printed}},
                          "state what the wrench is to apply"});
    if (!each.high || (!each.low && each.reading != Reading::Maximum))
      findings.push_back({Severity::Blocking,
                          "tolerance-missing",
                          place,
                          {"“%1” has no lowest or no highest torque", {each.printed}},
                          "state what the source allows, or what you assume and why"});
    if (!each.toleranceStated && each.why.empty())
      findings.push_back({Severity::Warning,
                          "assumption-unexplained",
                          place + ".why",
                          {"the tolerance of “%1” is assumed without a reason", {each.printed}},
                          "say by which rule, or mark it as stated by the source"});
  });
}

void reviewPrinted(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.specifications, "specifications", [&](const Specification& each, const std::string& place) {
    for (const StatedTorque& printed : torquesPrinted(each.printed))
      if (isBelow(printed, each.low) || isAbove(printed, each.high))
        findings.push_back(
            {Severity::Blocking,
             "printed-outside-tolerance",
             place + ".printed",
             {"the source prints %1, which lies outside what the sheet allows", {text(printed)}},
             "compare low, aim and high with what is printed, units too"});
  });
}

void reviewColumns(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.specifications, "specifications", [&](const Specification& each, const std::string& place) {
    if (each.printedSecond.empty()) return;
    const auto first = torquesPrinted(each.printed), second = torquesPrinted(each.printedSecond);
    if (first.size() != second.size() || first.empty()) {
      findings.push_back({Severity::Warning,
                          "columns-not-compared",
                          place + ".printed_second",
                          {"“%1” and “%2” cannot be compared", {each.printed, each.printedSecond}},
                          "write both columns with their units"});
      return;
    }
    for (std::size_t i = 0; i < first.size(); ++i)
      compareColumns(first[i], second[i], place + ".printed_second", findings);
  });
}

}  // namespace cw

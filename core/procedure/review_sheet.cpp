#include <algorithm>
#include <set>

#include "core/procedure/review_rules.h"
#include "core/procedure/serials.h"

namespace cw {
namespace {

void needText(Findings& findings, Severity severity, std::string place, const std::string& text,
              Message problem, Message cure) {
  if (text.empty())
    findings.push_back({severity, "heading-missing", std::move(place), std::move(problem), std::move(cure)});
}

bool isTightened(const Sheet& sheet, const Joint& joint) {
  return std::any_of(sheet.steps.begin(), sheet.steps.end(),
                     [&](const Step& step) { return step.joint == joint.id; });
}

bool isUsed(const Sheet& sheet, const Part& part) {
  return std::any_of(sheet.steps.begin(), sheet.steps.end(),
                     [&](const Step& step) { return step.part == part.id; });
}

/// The ids of fasteners or specifications that some position of some joint goes by.
std::set<std::string> usedIn(const Sheet& sheet, const std::string& (Joint::*at)(const std::string&) const) {
  std::set<std::string> out;
  for (const Joint& joint : sheet.joints)
    for (const std::string& label : joint.order) out.insert((joint.*at)(label));
  return out;
}

template <class Item>
void findUnused(const std::vector<Item>& items, std::string_view list, const std::set<std::string>& used,
                Findings& findings) {
  forEach(items, list, [&](const Item& item, const std::string& place) {
    if (!used.contains(item.id))
      findings.push_back({Severity::Note,
                          "entry-unused",
                          place,
                          {"“%1” is never used", {item.id}},
                          "use it in a joint, or leave it out"});
  });
}

}  // namespace

void reviewHeading(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  needText(findings, Severity::Blocking, "author", sheet.author, "the sheet has no author",
           "name who wrote it");
  needText(findings, Severity::Blocking, "model", sheet.model, "the sheet does not say what it applies to",
           "write the model as on the machine's plate");
  needText(findings, Severity::Warning, "serials", serialsText(sheet),
           "the sheet does not say for which serial numbers it holds", "write a range, or “all”");
  if (sheet.steps.empty())
    findings.push_back({Severity::Blocking, "heading-missing", "steps", "the sheet has no step",
                        "write what is to be done"});
}

void reviewSerials(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  if (sheet.serials.empty()) return;
  const auto read = serialRangesIn(sheet.serials);
  if (!read && sheet.serialRanges.empty())
    findings.push_back({Severity::Warning,
                        "serials-not-read",
                        "serials",
                        {"“%1” cannot be read as serial numbers, so no machine's is compared with it",
                         {shown(sheet.serials)}},
                        "write “all”, or ranges such as “100 to 480”, or state them as serial_ranges"});
  if (read && !sheet.serialRanges.empty() && !sameSerials(*read, sheet.serialRanges))
    findings.push_back(blocking("serials-disagree", "serial_ranges",
                                {"“%1” is not what the ranges say", {shown(sheet.serials)}},
                                "make words and ranges agree, or leave the words out"));
}

void reviewApproval(const Sheet& sheet, const ReviewContext& context, Findings& findings) {
  if (context.approver.empty() || context.approver != sheet.author) return;
  if (context.onePersonShop)
    findings.push_back({Severity::Warning,
                        "not-independent",
                        "author",
                        {"“%1” wrote the sheet and approves it", {sheet.author}},
                        "type every value again unseen; the sheet will say “not independent”"});
  else
    findings.push_back({Severity::Blocking,
                        "approver-is-author",
                        "author",
                        {"“%1” wrote the sheet and cannot approve it", {sheet.author}},
                        "have somebody else approve it"});
}

void reviewUse(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.joints, "joints", [&](const Joint& joint, const std::string& place) {
    if (!isTightened(sheet, joint))
      findings.push_back({Severity::Blocking,
                          "joint-never-tightened",
                          place,
                          {"no step tightens “%1”", {joint.name}},
                          "add a step that tightens it, or leave the joint out"});
  });
  forEach(sheet.parts, "parts", [&](const Part& part, const std::string& place) {
    if (!part.singleUse && !isUsed(sheet, part))
      findings.push_back({Severity::Warning,
                          "part-unused",
                          place,
                          {"no step uses “%1”", {part.name}},
                          "name it in the step that uses it, or leave it out"});
  });
  findUnused(sheet.fasteners, "fasteners", usedIn(sheet, &Joint::fastenerAt), findings);
  findUnused(sheet.specifications, "specifications", usedIn(sheet, &Joint::specificationAt), findings);
}

void reviewSingleUse(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.parts, "parts", [&](const Part& part, const std::string& place) {
    if (part.singleUse && !isUsed(sheet, part))
      findings.push_back({Severity::Blocking,
                          "single-use-not-renewed",
                          place,
                          {"“%1” may be used once, and no step fits a new one", {part.name}},
                          "name it in the step that fits the new one"});
  });
}

}  // namespace cw

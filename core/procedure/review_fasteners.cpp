#include <tuple>

#include "core/procedure/review_rules.h"
#include "core/units/format.h"

namespace cw {
namespace {

template <class Row>
void needKnown(const Result<Row>& found, const char* code, const std::string& place, Findings& findings) {
  if (!found)
    findings.push_back({Severity::Blocking, code, place, found.error().problem, found.error().expected});
}

Length reach(const Fastener& fastener) {
  return fastener.length->value() - fastener.grip->value();
}

void reviewLengthsOf(const Fastener& fastener, const std::string& place, Findings& findings) {
  const auto add = [&](const char* code, Message problem, Message cure) {
    findings.push_back({Severity::Blocking, code, place, std::move(problem), std::move(cure)});
  };
  const auto& [length, engagement, grip, depth] =
      std::tie(fastener.length, fastener.engagement, fastener.grip, fastener.depth);
  if (length && engagement && engagement->value() > length->value())
    add("engagement-too-long",
        {"%1 of thread cannot engage on a length of %2", {text(*engagement), text(*length)}},
        "measure the engagement again");
  if (engagement && depth && engagement->value() > depth->value())
    add("engagement-too-long", {"%1 of thread cannot engage in %2", {text(*engagement), text(*depth)}},
        "measure the hole's thread again");
  if (length && grip && depth && reach(fastener) > depth->value())
    add("fastener-too-long",
        {"a length of %1 reaches deeper than %2 of clamped parts and %3 of thread",
         {text(*length), text(*grip), text(*depth)}},
        "choose a shorter one: it would bottom before it clamps");
  if (length && grip && engagement && reach(fastener) < engagement->value())
    add("fastener-too-short",
        {"a length of %1 through %2 leaves less than %3 to engage",
         {text(*length), text(*grip), text(*engagement)}},
        "choose a longer one, or measure again");
}

}  // namespace

void reviewNames(const Sheet& sheet, const ReviewContext& context, Findings& findings) {
  forEach(sheet.fasteners, "fasteners", [&](const Fastener& fastener, const std::string& place) {
    const auto thread = context.catalogue.thread(fastener.thread);
    needKnown(thread, "thread-unknown", place + ".thread", findings);
    if (thread && !fastener.grade.empty())
      needKnown(context.catalogue.grade(fastener.grade, *thread), "grade-unknown", place + ".grade",
                findings);
    if (!fastener.tapped.empty())
      needKnown(context.catalogue.material(fastener.tapped), "material-unknown", place + ".tapped", findings);
  });
}

void reviewLengths(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEach(sheet.fasteners, "fasteners", [&](const Fastener& fastener, const std::string& place) {
    reviewLengthsOf(fastener, place, findings);
  });
}

}  // namespace cw

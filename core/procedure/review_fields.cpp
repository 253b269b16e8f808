#include <algorithm>

#include "core/base/near_name.h"
#include "core/procedure/review_rules.h"
#include "core/procedure/sheet_objects.h"

namespace cw {
namespace {

/// What somebody may want of a joint and the bench does not do.
constexpr std::string_view kNotDone[] = {"adapter",    "angle",   "crowfoot",     "elongation",
                                         "lever",      "loosen",  "prevailing",   "prevailing_torque",
                                         "stretch",    "tension", "torque_angle", "turn",
                                         "turn_angle", "wait",    "yield"};

bool isNotDone(std::string_view name) {
  return std::any_of(std::begin(kNotDone), std::end(kNotDone),
                     [&](std::string_view each) { return isSameField(each, name); });
}

Finding judgeField(std::string_view kind, const std::string& place, const std::string& name) {
  const std::string written = shown(name);
  const std::string where = place.empty() ? written : place + "." + written;
  if (isNotDone(name))
    return {Severity::Blocking,
            "field-not-done",
            where,
            {"the bench does not do what “%1” asks for", {written}},
            "leave it out, and have it done and recorded outside this program"};
  if (const std::string field = fieldMeantBy(name, kind); !field.empty())
    return {Severity::Blocking,
            "field-misspelt",
            where,
            {"“%1” is not known here", {written}},
            {"did you mean “%1”? Write that, or leave it out", {field}}};
  if (const auto kinds = kindsWithField(name); !kinds.empty())
    return {Severity::Warning,
            "field-misplaced",
            where,
            {"“%1” is not known here and is passed over", {written}},
            {"write it where it is read (%1), or leave it out", {listed(kinds)}}};
  return {Severity::Note,
          "field-unknown",
          where,
          {"“%1” is not known here: it travels along and is passed over", {written}},
          "leave it out, unless another program needs it"};
}

}  // namespace

void reviewFields(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  forEachOpenObject(sheet, [&](std::string_view kind, const std::string& place, const Json::Object& rest) {
    for (const auto& [name, value] : rest) findings.push_back(judgeField(kind, place, name));
  });
}

}  // namespace cw

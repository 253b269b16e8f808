#pragma once
#include <fmt/format.h>

#include <string>
#include <string_view>
#include <vector>

#include "core/base/error.h"
#include "core/procedure/sheet.h"

namespace cw {

/// Calls `each(kind, place, rest)` for every object of a sheet that keeps fields it does not know: the kind
/// as the schema names it ("sheet", "step", …), the place as in Error, and those fields.
template <class AnySheet, class Each>
void forEachOpenObject(AnySheet& sheet, Each each) {
  const auto forAll = [&each](std::string_view kind, std::string_view list, auto& items) {
    for (std::size_t i = 0; i < items.size(); ++i) each(kind, fmt::format("{}[{}]", list, i), items[i].rest);
  };
  each("sheet", std::string(), sheet.rest);
  forAll("source", "sources", sheet.sources);
  forAll("part", "parts", sheet.parts);
  forAll("fastener", "fasteners", sheet.fasteners);
  forAll("specification", "specifications", sheet.specifications);
  forAll("joint", "joints", sheet.joints);
  for (std::size_t i = 0; i < sheet.joints.size(); ++i) {
    const std::string place = fmt::format("joints[{}]", i);
    each("layout", place + ".layout", sheet.joints[i].layoutRest);
    each("passes", place + ".passes", sheet.joints[i].passesRest);
    for (auto& [label, detail] : sheet.joints[i].positions)
      each("position", place + ".positions[" + shown(label) + "]", detail.rest);
  }
  forAll("step", "steps", sheet.steps);
  for (std::size_t i = 0; i < sheet.steps.size(); ++i)
    if (auto& hold = sheet.steps[i].hold) each("hold", fmt::format("steps[{}].hold", i), hold->rest);
}

/// The names that resources/formats/sheet.schema.json gives the fields of such an object.
const std::vector<std::string_view>& fieldNames(std::string_view kind);

/// True if two names differ in case, hyphens, underscores, blanks or a plural's s at most.
bool isSameField(std::string_view a, std::string_view b);

/// The field of that kind that somebody meant by a name that is none of its own, or nothing.
std::string fieldMeantBy(std::string_view name, std::string_view kind);

/// The kinds that have a field of this name.
std::vector<std::string> kindsWithField(std::string_view name);

}  // namespace cw

#include "core/procedure/sheet_objects.h"

#include <algorithm>
#include <map>

#include "core/base/json.h"
#include "core/base/near_name.h"
#include "core/base/resource.h"
#include "core/fastener/folded_name.h"

namespace cw {
namespace {

constexpr std::string_view kOpenKinds[] = {"sheet",         "source", "part",     "fastener",
                                           "specification", "joint",  "position", "layout",
                                           "passes",        "step",   "hold"};

using Names = std::map<std::string_view, std::vector<std::string_view>, std::less<>>;

/// The parsed schema stays: the names are views into it.
const Json& schema() {
  static const Json read = parseJson(resource("formats/sheet.schema.json")).value_or(Json());
  return read;
}

const Json* objectOf(std::string_view kind) {
  if (kind == "sheet") return &schema();
  const Json* definitions = schema().find("$defs");
  return definitions == nullptr ? nullptr : definitions->find(kind);
}

Names readNames() {
  Names out;
  for (const std::string_view kind : kOpenKinds) {
    const Json* object = objectOf(kind);
    const Json* fields = object == nullptr ? nullptr : object->find("properties");
    if (fields == nullptr || fields->object() == nullptr) continue;
    for (const auto& [name, field] : *fields->object()) out[kind].push_back(name);
  }
  return out;
}

const Names& names() {
  static const Names read = readNames();
  return read;
}

std::string bare(std::string_view name) {
  std::string out = foldedName(name);
  if (out.ends_with('s')) out.pop_back();
  return out;
}

}  // namespace

const std::vector<std::string_view>& fieldNames(std::string_view kind) {
  static const std::vector<std::string_view> kNone;
  const auto found = names().find(kind);
  return found == names().end() ? kNone : found->second;
}

bool isSameField(std::string_view a, std::string_view b) {
  return bare(a) == bare(b);
}

std::string fieldMeantBy(std::string_view name, std::string_view kind) {
  const auto& fields = fieldNames(kind);
  const auto same = std::find_if(fields.begin(), fields.end(),
                                 [&](std::string_view field) { return isSameField(field, name); });
  if (same != fields.end()) return std::string(*same);
  const auto near = nearNames(name, fields, 1);
  return near.empty() ? std::string() : near.front();
}

std::vector<std::string> kindsWithField(std::string_view name) {
  std::vector<std::string> out;
  for (const auto& [kind, fields] : names())
    if (std::any_of(fields.begin(), fields.end(),
                    [&](std::string_view field) { return isSameField(field, name); }))
      out.emplace_back(kind);
  return out;
}

}  // namespace cw

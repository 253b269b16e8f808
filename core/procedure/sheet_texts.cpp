#include "core/procedure/sheet_texts.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/base/json.h"
#include "core/base/printable.h"
#include "core/procedure/review_rules.h"
#include "core/procedure/sheet_file.h"
#include "core/procedure/sheet_objects.h"

namespace cw {
namespace {

struct Longest {
  std::string_view field;
  std::size_t characters;
};

constexpr Longest kLongestTexts[] = {{"title", kLongestTitle},   {"document", kLongestTitle},
                                     {"text", kLongestText},     {"warnings", kLongestText},
                                     {"cautions", kLongestText}, {"notes", kLongestText},
                                     {"why", kLongestText},      {"notice", kLongestText},
                                     {"printed", kLongestText},  {"printed_second", kLongestText},
                                     {"serials", kLongestText},  {"what", kLongestText}};

std::size_t longestOf(std::string_view field) {
  for (const auto& [name, characters] : kLongestTexts)
    if (name == field) return characters;
  return kLongestName;
}

std::size_t characterCount(std::string_view text) {
  return static_cast<std::size_t>(
      std::count_if(text.begin(), text.end(), [](char byte) { return (byte & 0xc0) != 0x80; }));
}

void judgeText(const std::string& text, std::string_view field, const std::string& place,
               Findings& findings) {
  if (const auto unseen = firstUnprintable(text); !unseen.empty())
    findings.push_back(blocking("text-unprintable", place,
                                {"there is a character in it that cannot be seen: %1", {printable(unseen)}},
                                "write it without line ends, control and direction characters"));
  const std::size_t count = characterCount(text), longest = longestOf(field);
  if (count > longest)
    findings.push_back(blocking("text-too-long", place,
                                {"this text has %1 characters", {std::to_string(count)}},
                                {"write at most %1", {std::to_string(longest)}}));
}

void judgeTexts(const Json& value, std::string_view field, const std::string& place, Findings& findings) {
  if (const auto* text = value.string()) judgeText(*text, field, place, findings);
  if (const auto* items = value.array())
    for (std::size_t i = 0; i < items->size(); ++i)
      judgeTexts((*items)[i], field, fmt::format("{}[{}]", place, i), findings);
  if (const auto* members = value.object())
    for (const auto& [key, member] : *members) {
      const bool isLabel = field == "positions";
      const std::string within = isLabel         ? place + "[" + shown(key) + "]"
                                 : place.empty() ? key
                                                 : place + "." + key;
      if (isLabel) judgeText(key, field, within, findings);
      judgeTexts(member, key, within, findings);
    }
}

/// Without pictures, and without what only travels along.
Sheet knownPart(Sheet sheet) {
  forEachOpenObject(sheet, [](std::string_view, const std::string&, Json::Object& rest) { rest.clear(); });
  for (Source& source : sheet.sources) source.photograph.reset();
  return sheet;
}

}  // namespace

Findings textFindings(const Sheet& sheet) {
  Findings findings;
  judgeTexts(toJson(knownPart(sheet)), "", "", findings);
  forEach(sheet.sources, "sources", [&](const Source& source, const std::string& place) {
    if (source.photograph) judgeText(source.photograph->name, "name", place + ".photograph.name", findings);
  });
  return findings;
}

Result<void> checkTexts(const Sheet& sheet) {
  const Findings findings = textFindings(sheet);
  if (findings.empty()) return {};
  const Finding& first = findings.front();
  return fail(ErrorCode::InvalidInput, first.place, "", first.problem, first.cure);
}

void reviewTexts(const Sheet& sheet, const ReviewContext&, Findings& findings) {
  const Findings found = textFindings(sheet);
  findings.insert(findings.end(), found.begin(), found.end());
}

}  // namespace cw

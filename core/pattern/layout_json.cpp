#include "core/pattern/layout_json.h"

#include <fmt/format.h>

#include "core/base/file_format.h"
#include "core/pattern/numeral_json.h"
#include "core/pattern/shape_json.h"

namespace cw {
namespace {

Json viewJson(const View& view) {
  Json out{Json::Object{}};
  if (view.mirrored) out.set("mirrored", true);
  if (view.rotation != Angle()) out.set("rotation", numeral(view.rotation, kDegree));
  return out;
}

Json labelsJson(const Labels& labels) {
  if (labels.style == LabelStyle::Letters) return "letters";
  if (labels.style == LabelStyle::Clock) return "clock";
  return Json::Array(labels.own.begin(), labels.own.end());
}

Json numbersJson(const std::vector<std::size_t>& numbers) {
  return Json::Array(numbers.begin(), numbers.end());
}

Json outlineJson(const Outline& outline, const LengthUnit& unit) {
  Json out;
  if (const auto* round = std::get_if<RoundOutline>(&outline))
    return out.set("diameter", numeral(round->diameter, unit));
  return out.set("corners", pointsToJson(std::get<PolygonOutline>(outline).corners, unit));
}

Result<const LengthUnit*> readUnit(JsonReader& reader) {
  CW_TRY(code, reader.text("unit"));
  if (const LengthUnit* unit = unitWithCode<LengthTag>(code)) return unit;
  return fail(ErrorCode::InvalidInput, reader.placeOf("unit"), code,
              {"“%1” is no unit of length known here", {shown(code)}}, "write mm, m, um, in or ft");
}

Result<View> readView(JsonReader& layout) {
  const Json* value = layout.optional("view");
  if (value == nullptr) return View();
  CW_TRY(reader, JsonReader::of(*value, layout.placeOf("view")));
  CW_TRY(mirrored, reader.booleanOr("mirrored", false));
  CW_TRY(rotation, readQuantityOr(reader, "rotation", kDegree, Angle()));
  CW_CHECK(reader.nothingElse());
  return View{mirrored, rotation};
}

Result<Labels> readLabels(JsonReader& layout) {
  const Json* value = layout.optional("labels");
  if (value == nullptr) return Labels();
  if (value->array() != nullptr) {
    CW_TRY(own, layout.textsOrEmpty("labels"));
    return Labels{LabelStyle::Own, std::move(own)};
  }
  CW_TRY(style, layout.text("labels"));
  if (style == "numbers") return Labels();
  if (style == "letters") return Labels{LabelStyle::Letters, {}};
  if (style == "clock") return Labels{LabelStyle::Clock, {}};
  return fail(ErrorCode::InvalidInput, layout.placeOf("labels"), style,
              {"“%1” is no kind of label", {shown(style)}},
              "write numbers, letters, clock, or the list of labels");
}

Result<std::vector<std::size_t>> readNumbers(JsonReader& reader, std::string_view key) {
  if (reader.optional(key) == nullptr) return std::vector<std::size_t>();
  CW_TRY(numbers, reader.integers(key, 1, kMostPositions));
  return std::vector<std::size_t>(numbers.begin(), numbers.end());
}

Result<std::vector<std::vector<std::size_t>>> readGroups(JsonReader& layout) {
  CW_TRY(items, layout.listOrEmpty("groups"));
  std::vector<std::vector<std::size_t>> out;
  for (std::size_t i = 0; i < items->size(); ++i) {
    CW_TRY(reader, JsonReader::of((*items)[i], fmt::format("{}[{}]", layout.placeOf("groups"), i)));
    CW_TRY(positions, readNumbers(reader, "positions"));
    CW_CHECK(reader.nothingElse());
    out.push_back(std::move(positions));
  }
  return out;
}

Result<std::optional<Outline>> readOutline(JsonReader& layout, const LengthUnit& unit) {
  const Json* value = layout.optional("outline");
  if (value == nullptr) return std::optional<Outline>();
  CW_TRY(reader, JsonReader::of(*value, layout.placeOf("outline")));
  std::optional<Outline> out;
  if (reader.has("corners")) {
    CW_TRY(corners, readPoints(reader, "corners", unit));
    out = PolygonOutline{std::move(corners)};
  } else {
    CW_TRY(diameter, readQuantity(reader, "diameter", unit));
    out = RoundOutline{diameter};
  }
  CW_CHECK(reader.nothingElse());
  return out;
}

}  // namespace

Json toJson(const Layout& layout) {
  Json out;
  out.set("unit", layout.unit->code);
  addShape(out, layout.shape, *layout.unit);
  if (layout.view != View()) out.set("view", viewJson(layout.view));
  if (layout.labels.style != LabelStyle::Numbers) out.set("labels", labelsJson(layout.labels));
  if (!layout.leftOut.empty()) out.set("left_out", numbersJson(layout.leftOut));
  if (!layout.groups.empty()) {
    Json::Array groups;
    for (const auto& group : layout.groups) groups.push_back(Json().set("positions", numbersJson(group)));
    out.set("groups", std::move(groups));
  }
  if (layout.outline) out.set("outline", outlineJson(*layout.outline, *layout.unit));
  return out;
}

Result<Layout> readLayout(JsonReader& reader) {
  CW_TRY(unit, readUnit(reader));
  CW_TRY(shape, readShape(reader, *unit));
  CW_TRY(view, readView(reader));
  CW_TRY(labels, readLabels(reader));
  CW_TRY(leftOut, readNumbers(reader, "left_out"));
  CW_TRY(groups, readGroups(reader));
  CW_TRY(outline, readOutline(reader, *unit));
  Layout out{std::move(shape),  unit, view, std::move(labels), std::move(leftOut), std::move(groups),
             std::move(outline)};
  if (auto placed = positions(out); !placed) return fail(within(reader.place(), placed.error()));
  return out;
}

Result<Layout> readLayoutFile(std::string_view bytes) {
  CW_TRY(json, parseJson(bytes));
  CW_TRY(reader, JsonReader::of(json, ""));
  CW_CHECK(checkFormat(reader, "clampwright.layout", 1));
  return readLayout(reader);
}

std::string writeLayoutFile(const Layout& layout) {
  return pretty(toJson(layout).set("format", "clampwright.layout").set("version", 1));
}

}  // namespace cw

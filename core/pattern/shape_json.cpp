#include "core/pattern/shape_json.h"

#include <fmt/format.h>

#include "core/pattern/numeral_json.h"

namespace cw {
namespace {

Json circleJson(const Circle& circle, const LengthUnit& unit) {
  Json out;
  out.set("count", circle.count).set("diameter", numeral(circle.diameter, unit));
  if (circle.phase != Angle()) out.set("phase", numeral(circle.phase, kDegree));
  if (circle.firstHole != 1) out.set("first_hole", circle.firstHole);
  if (circle.direction == Direction::Anticlockwise) out.set("direction", "anticlockwise");
  return out;
}

/// Adds each kind of shape under its own name.
struct ShapeWriter {
  Json& layout;
  const LengthUnit& unit;

  void operator()(const Circle& circle) { layout.set("circle", circleJson(circle, unit)); }
  void operator()(const Rows& grid) {
    Json out;
    out.set("rows", grid.rows).set("columns", grid.columns);
    if (grid.rows > 1) out.set("row_spacing", numeral(grid.rowSpacing, unit));
    if (grid.columns > 1) out.set("column_spacing", numeral(grid.columnSpacing, unit));
    layout.set("rows", std::move(out));
  }
  void operator()(const Perimeter& edge) {
    Json out;
    out.set("width", numeral(edge.width, unit)).set("height", numeral(edge.height, unit));
    out.set("across", edge.across).set("upright", edge.upright);
    layout.set("perimeter", std::move(out));
  }
  void operator()(const Line& line) {
    Json out;
    out.set("count", line.count);
    if (line.count > 1) out.set("spacing", numeral(line.spacing, unit));
    layout.set("line", std::move(out));
  }
  void operator()(const ConcentricCircles& rings) {
    Json::Array out;
    for (const Circle& circle : rings.circles) out.push_back(circleJson(circle, unit));
    layout.set("circles", std::move(out));
  }
  void operator()(const FreePoints& free) { layout.set("points", pointsToJson(free.points, unit)); }
};

Result<std::size_t> readCount(JsonReader& reader, std::string_view key) {
  CW_TRY(number, reader.integer(key, 1, kMostPositions));
  return static_cast<std::size_t>(number);
}

Result<Direction> readDirection(JsonReader& reader) {
  CW_TRY(word, reader.textOr("direction", "clockwise"));
  if (word == "clockwise") return Direction::Clockwise;
  if (word == "anticlockwise") return Direction::Anticlockwise;
  return fail(ErrorCode::InvalidInput, reader.placeOf("direction"), word,
              {"“%1” is no direction", {shown(word)}}, "write clockwise or anticlockwise");
}

Result<Circle> readCircle(JsonReader& reader, const LengthUnit& unit) {
  CW_TRY(count, readCount(reader, "count"));
  CW_TRY(diameter, readQuantity(reader, "diameter", unit));
  CW_TRY(phase, readQuantityOr(reader, "phase", kDegree, Angle()));
  Circle out{count, diameter, phase};
  if (reader.has("first_hole")) {
    CW_TRY(first, readCount(reader, "first_hole"));
    out.firstHole = first;
  }
  CW_TRY(direction, readDirection(reader));
  out.direction = direction;
  CW_CHECK(reader.nothingElse());
  return out;
}

Result<Rows> readRows(JsonReader& reader, const LengthUnit& unit) {
  CW_TRY(rows, readCount(reader, "rows"));
  CW_TRY(columns, readCount(reader, "columns"));
  CW_TRY(rowSpacing, readQuantityOr(reader, "row_spacing", unit, Length()));
  CW_TRY(columnSpacing, readQuantityOr(reader, "column_spacing", unit, Length()));
  CW_CHECK(reader.nothingElse());
  return Rows{rows, columns, rowSpacing, columnSpacing};
}

Result<Perimeter> readPerimeter(JsonReader& reader, const LengthUnit& unit) {
  CW_TRY(width, readQuantity(reader, "width", unit));
  CW_TRY(height, readQuantity(reader, "height", unit));
  CW_TRY(across, readCount(reader, "across"));
  CW_TRY(upright, readCount(reader, "upright"));
  CW_CHECK(reader.nothingElse());
  return Perimeter{width, height, across, upright};
}

Result<Line> readLine(JsonReader& reader, const LengthUnit& unit) {
  CW_TRY(count, readCount(reader, "count"));
  CW_TRY(spacing, readQuantityOr(reader, "spacing", unit, Length()));
  CW_CHECK(reader.nothingElse());
  return Line{count, spacing};
}

/// A list that is short enough to hold positions.
Result<const Json::Array*> readItems(JsonReader& reader, std::string_view key) {
  CW_TRY(items, reader.list(key));
  if (items->size() <= kMostPositions) return items;
  return fail(ErrorCode::OutOfRange, reader.placeOf(key), std::to_string(items->size()),
              {"%1 are too many", {std::to_string(items->size())}},
              {"give at most %1", {std::to_string(kMostPositions)}});
}

Result<ConcentricCircles> readCircles(JsonReader& layout, const LengthUnit& unit) {
  CW_TRY(items, readItems(layout, "circles"));
  ConcentricCircles out;
  for (std::size_t i = 0; i < items->size(); ++i) {
    CW_TRY(reader, JsonReader::of((*items)[i], fmt::format("{}[{}]", layout.placeOf("circles"), i)));
    CW_TRY(circle, readCircle(reader, unit));
    out.circles.push_back(circle);
  }
  return out;
}

Result<FreePoints> readFreePoints(JsonReader& layout, const LengthUnit& unit) {
  CW_TRY(points, readPoints(layout, "points", unit));
  return FreePoints{std::move(points)};
}

/// Reads the object `key` by `read` and lets it pass for a Shape.
template <class Kind>
Result<Shape> readObject(JsonReader& layout, std::string_view key, const LengthUnit& unit,
                         Result<Kind> (*read)(JsonReader&, const LengthUnit&)) {
  CW_TRY(reader, JsonReader::of(*layout.optional(key), layout.placeOf(key)));
  return read(reader, unit).map([](Kind kind) { return Shape(std::move(kind)); });
}

Result<std::string_view> shapeKey(const JsonReader& layout) {
  std::vector<std::string_view> found;
  for (const std::string_view key : {"circle", "rows", "perimeter", "line", "circles", "points"})
    if (layout.has(key)) found.push_back(key);
  if (found.size() == 1) return found.front();
  return fail(ErrorCode::InvalidInput, layout.place(), "",
              found.empty() ? "this layout has no shape" : "this layout has several shapes",
              "give one of circle, rows, perimeter, line, circles or points");
}

}  // namespace

void addShape(Json& layout, const Shape& shape, const LengthUnit& unit) {
  std::visit(ShapeWriter{layout, unit}, shape);
}

Result<Shape> readShape(JsonReader& layout, const LengthUnit& unit) {
  const auto asShape = [](auto kind) { return Shape(std::move(kind)); };
  CW_TRY(key, shapeKey(layout));
  if (key == "circle") return readObject(layout, key, unit, readCircle);
  if (key == "rows") return readObject(layout, key, unit, readRows);
  if (key == "perimeter") return readObject(layout, key, unit, readPerimeter);
  if (key == "line") return readObject(layout, key, unit, readLine);
  if (key == "circles") return readCircles(layout, unit).map(asShape);
  return readFreePoints(layout, unit).map(asShape);
}

Json pointsToJson(const std::vector<Point>& points, const LengthUnit& unit) {
  Json::Array out;
  for (const Point& point : points)
    out.push_back(Json().set("x", numeral(point.x, unit)).set("y", numeral(point.y, unit)));
  return out;
}

Result<std::vector<Point>> readPoints(JsonReader& reader, std::string_view key, const LengthUnit& unit) {
  CW_TRY(items, readItems(reader, key));
  std::vector<Point> out;
  for (std::size_t i = 0; i < items->size(); ++i) {
    CW_TRY(point, JsonReader::of((*items)[i], fmt::format("{}[{}]", reader.placeOf(key), i)));
    CW_TRY(x, readQuantity(point, "x", unit));
    CW_TRY(y, readQuantity(point, "y", unit));
    CW_CHECK(point.nothingElse());
    out.push_back({x, y});
  }
  return out;
}

}  // namespace cw

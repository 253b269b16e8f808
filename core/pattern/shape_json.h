#pragma once
#include "core/base/json.h"
#include "core/pattern/shape.h"
#include "core/units/unit.h"

namespace cw {

/// Sets the one member of a layout that holds its shape: circle, rows, perimeter, line, circles or points.
void addShape(Json& layout, const Shape& shape, const LengthUnit& unit);

/// Reads that member. InvalidInput if there is none or more than one, for a wrong or unknown field in it.
Result<Shape> readShape(JsonReader& layout, const LengthUnit& unit);

/// [{"x":"1","y":"-2.5"}, …]
Json pointsToJson(const std::vector<Point>& points, const LengthUnit& unit);
Result<std::vector<Point>> readPoints(JsonReader& reader, std::string_view key, const LengthUnit& unit);

}  // namespace cw

#include "core/settling/settling_file.h"

#include <cmath>

#include "core/base/file_format.h"
#include "core/settling/settling_check.h"

namespace cw {
namespace {

constexpr int kFewestOnAPart = 3;

Result<Length> readMillimetres(JsonReader& reader, std::string_view key) {
  return reader.decimal(key).map([](double value) { return millimetres(value); });
}

/// [[x, y], …] in millimetres.
Result<std::vector<Point>> readPlaces(JsonReader& reader, std::string_view key) {
  CW_TRY(rows, reader.list(key));
  std::vector<Point> places;
  for (const Json& row : *rows) {
    const std::string place = reader.placeOf(key) + "[" + std::to_string(places.size()) + "]";
    CW_TRY(pair, decimalsFrom(row, place));
    if (pair.size() != 2)
      return fail(ErrorCode::InvalidInput, place, canonical(row),
                  {"%1 is not a place", {shown(canonical(row))}}, "write [x, y] in millimetres");
    places.push_back({millimetres(pair[0]), millimetres(pair[1])});
  }
  return places;
}

tl::unexpected<Error> unknownShape(JsonReader& reader, const std::string& shape, Message expected) {
  return fail(ErrorCode::InvalidInput, reader.placeOf("shape"), shape,
              {"“%1” is no shape known here", {shown(shape)}}, std::move(expected));
}

Result<Annulus> readAnnulus(JsonReader& reader) {
  CW_TRY(inner, readMillimetres(reader, "inner_radius_mm"));
  CW_TRY(outer, readMillimetres(reader, "outer_radius_mm"));
  return Annulus{inner, outer};
}

Result<PlateShape> readPlateShape(JsonReader& part) {
  CW_TRY(shape, part.text("shape"));
  if (shape == "annulus") return readAnnulus(part).map([](Annulus ring) { return PlateShape(ring); });
  if (shape == "polygon")
    return readPlaces(part, "corners_mm").map([](std::vector<Point> corners) {
      return PlateShape(PolygonOutline{std::move(corners)});
    });
  if (shape != "rectangle") return unknownShape(part, shape, "write annulus, rectangle or polygon");
  CW_TRY(length, readMillimetres(part, "length_mm"));
  CW_TRY(width, readMillimetres(part, "width_mm"));
  return PlateShape(Rectangle{length, width});
}

/// A pipe or hub behind a ring, of the ring's own material.
Result<Hub> readHub(JsonReader& part, const Plate& plate) {
  if (part.optional("hub") == nullptr) return Hub{};
  CW_TRY(hub, part.object("hub"));
  CW_TRY(radius, readMillimetres(hub, "mean_radius_mm"));
  CW_TRY(wall, readMillimetres(hub, "wall_mm"));
  CW_CHECK(hub.nothingElse());
  if (radius > Length() && wall > Length() && wall < radius)
    return Hub::cylinder(radius, wall, plate.modulus, plate.poisson);
  return fail(ErrorCode::OutOfRange, hub.place(), "", "this is not a thin cylinder",
              "write a mean radius above zero and a wall thinner than it");
}

Result<void> readPart(JsonReader& file, PlateOnGasket& into) {
  CW_TRY(part, file.object("part"));
  CW_TRY(shape, readPlateShape(part));
  CW_TRY(thickness, readMillimetres(part, "thickness_mm"));
  CW_TRY(modulus, part.decimal("modulus_GPa"));
  CW_TRY(poisson, part.decimalOr("poisson", 0.3));
  into.plate = {std::move(shape), thickness, gigapascals(modulus), poisson};
  CW_TRY(hub, readHub(part, into.plate));
  into.hub = hub;
  CW_TRY(pair, part.booleanOr("pair", false));
  into.pair = pair;
  return part.nothingElse();
}

Result<std::pair<Length, Length>> readSpan(JsonReader& band, std::string_view key) {
  CW_TRY(ends, band.decimals(key));
  if (ends.size() == 2) return std::pair(millimetres(ends[0]), millimetres(ends[1]));
  return fail(ErrorCode::InvalidInput, band.placeOf(key), "", "this is not a span",
              "write [from, to] in millimetres");
}

Result<std::vector<Band>> readBands(JsonReader& gasket) {
  CW_TRY(rows, gasket.list("bands"));
  std::vector<Band> bands;
  for (const Json& row : *rows) {
    CW_TRY(band, JsonReader::of(row, gasket.placeOf("bands") + "[" + std::to_string(bands.size()) + "]"));
    CW_TRY(x, readSpan(band, "x_mm"));
    CW_TRY(y, readSpan(band, "y_mm"));
    std::int64_t sign = 1;
    if (band.has("sign")) {
      CW_TRY(written, band.integer("sign", -1, 1));
      sign = written;
    }
    CW_CHECK(band.nothingElse());
    bands.push_back({x.first, x.second, y.first, y.second, static_cast<int>(sign)});
  }
  return bands;
}

/// Bands speak for themselves; beside them the shape may be left out or repeat the part's.
Result<GasketShape> readGasketShape(JsonReader& gasket) {
  const bool hasBands = gasket.has("bands");
  CW_TRY(shape, hasBands ? gasket.textOr("shape", "bands") : gasket.text("shape"));
  if (shape == "annulus") return readAnnulus(gasket).map([](Annulus ring) { return GasketShape(ring); });
  if (shape == "bands" || shape == "rectangle")
    return readBands(gasket).map([](std::vector<Band> bands) { return GasketShape(std::move(bands)); });
  if (shape != "path") return unknownShape(gasket, shape, "write annulus, bands or path");
  CW_TRY(corners, readPlaces(gasket, "corners_mm"));
  CW_TRY(width, readMillimetres(gasket, "width_mm"));
  return GasketShape(GasketPath{std::move(corners), width});
}

Result<void> readGasket(JsonReader& file, FlexiblePart& into) {
  CW_TRY(gasket, file.object("gasket"));
  CW_TRY(shape, readGasketShape(gasket));
  into.plate.gasket = std::move(shape);
  CW_TRY(stiffness, gasket.decimal("stiffness_N_per_m"));
  into.plate.gasketStiffness = newtonsPerMetre(stiffness);
  CW_TRY(ratio, gasket.decimalOr("unloading_ratio", 1));
  CW_TRY(liftsOff, gasket.booleanOr("lifts_off", false));
  into.answer = {ratio, liftsOff};
  return gasket.nothingElse();
}

Result<Flexibility> readFlexibility(JsonReader& file) {
  CW_TRY(rows, file.list("flexibility_m_per_N"));
  const std::size_t size = rows->size();
  if (size > kMostSettlingBolts)
    return fail(ErrorCode::OutOfRange, file.placeOf("flexibility_m_per_N"), std::to_string(size),
                {"%1 rows cannot be computed", {std::to_string(size)}},
                {"at most %1", {std::to_string(kMostSettlingBolts)}});
  Flexibility matrix(static_cast<int>(size));
  for (std::size_t i = 0; i < size; ++i) {
    const std::string place = file.placeOf("flexibility_m_per_N") + "[" + std::to_string(i) + "]";
    CW_TRY(row, decimalsFrom((*rows)[i], place));
    if (row.size() != size)
      return fail(ErrorCode::InvalidInput, place, std::to_string(row.size()),
                  {"this row holds %1 numbers, not %2", {std::to_string(row.size()), std::to_string(size)}},
                  "write as many numbers in each row as there are rows");
    for (std::size_t j = 0; j < size; ++j)
      matrix.set(static_cast<int>(i), static_cast<int>(j), metresPerNewton(row[j]));
  }
  return matrix;
}

/// What is bolted together: never both, never neither.
Result<void> readBody(JsonReader& file, SettlingJoint& into) {
  const bool measured = file.has("flexibility_m_per_N");
  if (measured && (file.has("part") || file.has("gasket")))
    return fail(ErrorCode::InvalidInput, file.placeOf("flexibility_m_per_N"), "",
                "a flexibility stands beside the part or gasket that it replaces", "leave one of them out");
  if (measured) {
    CW_TRY(matrix, readFlexibility(file));
    into.body = std::move(matrix);
    return {};
  }
  FlexiblePart part;
  CW_CHECK(readPart(file, part.plate));
  CW_CHECK(readGasket(file, part));
  into.body = std::move(part);
  return {};
}

/// A flexibility may leave open where its bolts are, but not how many there are.
Result<void> readBoltPlaces(JsonReader& bolts, SettlingJoint& into) {
  const auto* matrix = std::get_if<Flexibility>(&into.body);
  into.bolts.places = std::vector<Point>();
  if (bolts.has("positions_mm")) {
    CW_TRY(places, readPlaces(bolts, "positions_mm"));
    into.bolts.places = std::move(places);
    return {};
  }
  CW_TRY(count, bolts.integer("count", 1, kMostSettlingBolts));
  if (matrix != nullptr && matrix->size() != count)
    return fail(ErrorCode::InvalidInput, bolts.placeOf("count"), std::to_string(count),
                {"%1 bolts do not fit a flexibility of %2 rows",
                 {std::to_string(count), std::to_string(matrix->size())}},
                "one row and column for each bolt");
  if (matrix != nullptr && !bolts.has("circle_radius_mm")) return {};
  CW_TRY(radius, readMillimetres(bolts, "circle_radius_mm"));
  into.bolts.places = BoltCircle{static_cast<int>(count), radius};
  return {};
}

/// A flexibility knows nothing of heads; a part does not go without them.
Result<void> readHeads(JsonReader& bolts, bool onAPart, SettlingBolts& into) {
  for (const auto& [key, length] :
       {std::pair("hole_mm", &into.hole), std::pair("bearing_mm", &into.bearing)}) {
    if (!onAPart && !bolts.has(key)) continue;
    CW_TRY(value, readMillimetres(bolts, key));
    *length = value;
  }
  return {};
}

Result<void> readBolts(JsonReader& file, SettlingJoint& into) {
  const bool onAPart = std::holds_alternative<FlexiblePart>(into.body);
  CW_TRY(bolts, file.object("bolts"));
  CW_CHECK(readBoltPlaces(bolts, into));
  CW_CHECK(readHeads(bolts, onAPart, into.bolts));
  CW_TRY(stiffness, bolts.decimal("stiffness_N_per_m"));
  into.bolts.stiffness = newtonsPerMetre(stiffness);
  CW_TRY(goSlack, bolts.booleanOr("go_slack", false));
  into.bolts.goSlack = goSlack;
  return bolts.nothingElse();
}

Result<void> checkBolts(const SettlingJoint& joint) {
  const std::vector<Point> places = boltPlaces(joint.bolts);
  const std::string count = std::to_string(boltCount(joint));
  if (std::holds_alternative<FlexiblePart>(joint.body) && boltCount(joint) < kFewestOnAPart)
    return fail(ErrorCode::OutOfRange, "bolts", count, {"%1 cannot hold a part flat", {count}},
                "three bolts or more");
  for (std::size_t i = 0; i < places.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      if (std::hypot((places[i].x - places[j].x).si(), (places[i].y - places[j].y).si()) < kClosest.si())
        return fail(ErrorCode::InvalidInput, "bolts, bolt " + std::to_string(i + 1), "",
                    {"it is in the place of bolt %1", {std::to_string(j + 1)}},
                    "every bolt in a place of its own");
  return {};
}

Result<std::vector<Force>> readTargets(JsonReader& file) {
  if (!file.has("targets_N"))
    return file.decimal("target_N").map([](double target) { return std::vector{newtons(target)}; });
  CW_TRY(values, file.decimals("targets_N"));
  std::vector<Force> targets;
  for (const double value : values) targets.push_back(newtons(value));
  return targets;
}

Result<std::vector<SettlingPass>> readSettlingPasses(JsonReader& file, int bolts) {
  CW_TRY(rows, file.list("passes"));
  if (rows->empty())
    return fail(ErrorCode::InvalidInput, file.placeOf("passes"), "", "there is no pass",
                R"(write at least one, for example {"share":1,"order":[1,3,2,4]})");
  std::vector<SettlingPass> passes;
  for (const Json& row : *rows) {
    CW_TRY(pass, JsonReader::of(row, "passes[" + std::to_string(passes.size()) + "]"));
    CW_TRY(share, pass.decimal("share"));
    CW_TRY(order, pass.integers("order", 1, bolts));
    CW_CHECK(pass.nothingElse());
    passes.push_back({share, {order.begin(), order.end()}});
  }
  return passes;
}

}  // namespace

Result<SettlingCase> readSettlingFile(std::string_view bytes) {
  CW_TRY(json, parseJson(bytes));
  CW_TRY(file, JsonReader::of(json, ""));
  CW_CHECK(checkFormat(file, "clampwright.settle", 1));
  SettlingCase out;
  CW_CHECK(file.textOr("title", ""));
  CW_CHECK(readBody(file, out.joint));
  CW_CHECK(readBolts(file, out.joint));
  CW_CHECK(checkBolts(out.joint));
  CW_CHECK(checkJoint(out.joint));
  CW_TRY(targets, readTargets(file));
  CW_TRY(snug, file.decimalOr("snug_share", 0));
  CW_TRY(passes, readSettlingPasses(file, boltCount(out.joint)));
  out.tightening = {std::move(targets), snug, std::move(passes)};
  CW_CHECK(checkTightening(out.tightening, boltCount(out.joint)));
  CW_CHECK(file.nothingElse());
  return out;
}

}  // namespace cw

#include "core/settling/plate_check.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "core/settling/plate_outline.h"
#include "core/settling/plate_polygon.h"

namespace cw {
namespace {

constexpr double kGrain = 1e-9;  // metres; what rounding may put beyond an edge

std::string millimetreText(Length value) {
  return fmt::format("{:g} mm", inMillimetres(value));
}

Result<void> checkSize(const char* place, Length value, Length most = metres(100)) {
  if (value >= millimetres(0.1) && value <= most) return {};
  return fail(ErrorCode::OutOfRange, place, millimetreText(value),
              {"%1 is not a size of a part", {millimetreText(value)}},
              {"0.1 mm to %1", {millimetreText(most)}});
}

Result<void> checkRing(const std::string& place, const Annulus& ring) {
  CW_CHECK(checkSize((place + ".outer_radius").c_str(), ring.outer));
  if (ring.inner >= Length() && ring.inner <= 0.999 * ring.outer) return {};
  return fail(ErrorCode::OutOfRange, place + ".inner_radius", millimetreText(ring.inner),
              {"an inner radius of %1 leaves no ring", {millimetreText(ring.inner)}},
              {"0 to 0.999 of the outer radius, %1", {millimetreText(ring.outer)}});
}

Result<void> checkCorners(const std::string& place, const std::vector<Point>& corners) {
  if (corners.size() < 3 || corners.size() > 200)
    return fail(ErrorCode::OutOfRange, place, fmt::format("{}", corners.size()),
                {"%1 corners cannot be computed", {fmt::format("{}", corners.size())}}, "3 to 200 corners");
  for (std::size_t i = 0; i < corners.size(); ++i)
    CW_CHECK(checkPoint(corners[i], fmt::format("{}[{}]", place, i)));
  if (crossesItself(corners))
    return fail(ErrorCode::InvalidInput, place, "", "the line crosses itself",
                "corners one after another around the shape, each once");
  if (polygonArea(corners) < Area::si(1e-8))
    return fail(ErrorCode::OutOfRange, place, "", "the corners enclose no area",
                "corners that do not lie in a line");
  return {};
}

Result<void> checkShape(const PlateShape& shape) {
  if (const auto* ring = std::get_if<Annulus>(&shape)) return checkRing("part", *ring);
  if (const auto* outline = std::get_if<PolygonOutline>(&shape))
    return checkCorners("part.corners", outline->corners);
  const auto& rectangle = std::get<Rectangle>(shape);
  CW_CHECK(checkSize("part.length", rectangle.length));
  return checkSize("part.width", rectangle.width);
}

Result<void> checkPart(const Plate& plate) {
  CW_CHECK(checkShape(plate.shape));
  CW_CHECK(checkSize("part.thickness", plate.thickness, metres(10)));
  const double modulus = plate.modulus.si() / 1e9;
  if (!(modulus >= 1e-3 && modulus <= 1e6))
    return fail(ErrorCode::OutOfRange, "part.modulus", fmt::format("{:g} GPa", modulus),
                {"%1 GPa is not the modulus of a solid", {fmt::format("{:g}", modulus)}},
                "0.001 to 1000000 GPa; steel has about 205");
  if (!(plate.poisson >= 0 && plate.poisson <= 0.49))
    return fail(ErrorCode::OutOfRange, "part.poisson", fmt::format("{:g}", plate.poisson),
                {"Poisson's ratio cannot be %1", {fmt::format("{:g}", plate.poisson)}},
                "0 to 0.49; steel has 0.3");
  return {};
}

tl::unexpected<Error> beyondPart(const std::string& place) {
  return fail(ErrorCode::OutOfRange, place, "", "the gasket reaches beyond the part",
              "a gasket that lies wholly on the part");
}

Result<void> checkRingGasket(const Plate& plate, const GasketShape& gasket) {
  const auto* ring = std::get_if<Annulus>(&gasket);
  if (!ring)
    return fail(ErrorCode::InvalidInput, "gasket.shape", "",
                "a round part can be computed on an annulus only", "an annulus as gasket");
  CW_CHECK(checkRing("gasket", *ring));
  const auto& part = std::get<Annulus>(plate.shape);
  if (ring->inner.si() < part.inner.si() - kGrain || ring->outer.si() > part.outer.si() + kGrain)
    return beyondPart("gasket");
  return {};
}

bool isFinite(const Band& band) {
  const double sum = band.fromX.si() + band.toX.si() + band.fromY.si() + band.toY.si();
  return std::isfinite(sum);
}

Result<void> checkBand(const std::string& place, const Band& band, const Rectangle& part) {
  if (!isFinite(band) || band.fromX >= band.toX || band.fromY >= band.toY)
    return fail(ErrorCode::InvalidInput, place, "", "the band has no area",
                "x and y each from a smaller to a larger number");
  if (band.sign != 1 && band.sign != -1)
    return fail(ErrorCode::InvalidInput, place + ".sign", fmt::format("{}", band.sign),
                {"%1 is no sign of a band", {fmt::format("{}", band.sign)}},
                "1 to add the band or -1 to cut it out");
  const double halfLength = part.length.si() / 2 + kGrain;
  const double halfWidth = part.width.si() / 2 + kGrain;
  if (band.fromX.si() < -halfLength || band.toX.si() > halfLength || band.fromY.si() < -halfWidth ||
      band.toY.si() > halfWidth)
    return beyondPart(place);
  return {};
}

/// Midpoints between the edges along one axis: one point in every piece that the edges cut out.
std::vector<double> betweens(std::vector<double> edges) {
  std::sort(edges.begin(), edges.end());
  std::vector<double> out;
  for (std::size_t i = 0; i + 1 < edges.size(); ++i)
    if (edges[i + 1] - edges[i] > kGrain) out.push_back((edges[i] + edges[i + 1]) / 2);
  return out;
}

/// No place may be covered twice or cut out where nothing lies.
Result<void> checkCoverage(const std::vector<Band>& bands) {
  std::vector<double> x;
  std::vector<double> y;
  for (const Band& band : bands) {
    x.insert(x.end(), {band.fromX.si(), band.toX.si()});
    y.insert(y.end(), {band.fromY.si(), band.toY.si()});
  }
  bool any = false;
  for (const double midX : betweens(x))
    for (const double midY : betweens(y)) {
      const int layers = coverage(bands, metres(midX), metres(midY));
      any |= layers > 0;
      if (layers < 0 || layers > 1)
        return fail(ErrorCode::InvalidInput, "gasket.bands", "",
                    {layers < 0 ? "gasket is cut out at x = %1 mm, y = %2 mm, where there is none"
                                : "gasket lies twice at x = %1 mm, y = %2 mm",
                     {fmt::format("{:g}", midX * 1e3), fmt::format("{:g}", midY * 1e3)}},
                    "bands that cover every place once or not at all");
    }
  if (any) return {};
  return fail(ErrorCode::InvalidInput, "gasket.bands", "", "the bands leave no gasket",
              "at least one band with sign 1");
}

Result<void> checkBandGasket(const Plate& plate, const GasketShape& gasket) {
  const auto* bands = std::get_if<std::vector<Band>>(&gasket);
  if (!bands)
    return fail(ErrorCode::InvalidInput, "gasket.shape", "annulus",
                "a rectangular part cannot be computed on an annulus", "bands as gasket");
  if (bands->size() > 100)
    return fail(ErrorCode::OutOfRange, "gasket.bands", fmt::format("{}", bands->size()),
                {"%1 bands are too many", {fmt::format("{}", bands->size())}}, "at most 100");
  for (std::size_t i = 0; i < bands->size(); ++i)
    CW_CHECK(checkBand(fmt::format("gasket.bands[{}]", i), (*bands)[i], std::get<Rectangle>(plate.shape)));
  return checkCoverage(*bands);
}

Result<void> checkPathGasket(const PolygonOutline& part, const GasketShape& gasket) {
  const auto* path = std::get_if<GasketPath>(&gasket);
  if (!path)
    return fail(ErrorCode::InvalidInput, "gasket.shape", "",
                "a free-form part can be computed on a path only", "a gasket path");
  CW_CHECK(checkCorners("gasket.corners", path->corners));
  CW_CHECK(checkSize("gasket.width", path->width));
  Patches pieces;
  for (const PathPiece& piece : pathPieces(*path, 120, pieces))
    if (!isInside(part.corners, piece.patch.centre) ||
        edgeDistance(part.corners, piece.patch.centre).si() < path->width.si() / 2 - kGrain)
      return beyondPart("gasket");
  return {};
}

Result<void> checkGasket(const Plate& plate, const GasketShape& gasket) {
  if (std::holds_alternative<Annulus>(plate.shape)) return checkRingGasket(plate, gasket);
  if (std::holds_alternative<Rectangle>(plate.shape)) return checkBandGasket(plate, gasket);
  return checkPathGasket(std::get<PolygonOutline>(plate.shape), gasket);
}

}  // namespace

Result<void> checkPlate(const PlateOnGasket& plate) {
  CW_CHECK(checkPart(plate.plate));
  const double stiffness = plate.gasketStiffness.si();
  if (!(stiffness > 0 && stiffness <= 1e15))
    return fail(ErrorCode::OutOfRange, "gasket.stiffness", fmt::format("{:g} N/m", stiffness),
                {"a gasket stiffness of %1 N/m cannot be computed", {fmt::format("{:g}", stiffness)}},
                "above 0, up to 1e15 N/m");
  const bool round = std::holds_alternative<Annulus>(plate.plate.shape);
  if (const double hub = plate.hub.momentPerRadian.si(); !(hub >= 0 && hub <= 1e15) || (hub > 0 && !round))
    return fail(ErrorCode::OutOfRange, "hub", fmt::format("{:g}", hub),
                {"a hub of %1 N·m per rad and m cannot be computed", {fmt::format("{:g}", hub)}},
                "0, or up to 1e15 on a ring");
  return checkGasket(plate.plate, plate.gasket);
}

}  // namespace cw

#include "core/settling/settling_check.h"

#include <fmt/format.h>

#include <Eigen/Dense>
#include <cmath>

#include "core/settling/plate_check.h"
#include "core/settling/plate_polygon.h"

namespace cw {
namespace {

std::string number(double value) {
  return fmt::format("{:g}", value);
}

Result<void> checkPositive(const std::string& place, double value, double most, const char* unit) {
  if (value > 0 && value <= most) return {};
  return fail(ErrorCode::OutOfRange, place, number(value),
              {"%1 %2 cannot be computed", {number(value), unit}},
              {"above 0, up to %1 %2", {number(most), unit}});
}

Result<void> checkCount(int count) {
  if (count >= 1 && count <= kMostSettlingBolts) return {};
  return fail(ErrorCode::OutOfRange, "bolts", number(count), {"%1 bolts cannot be computed", {number(count)}},
              {"1 to %1 bolts", {number(kMostSettlingBolts)}});
}

Result<void> checkHead(const SettlingBolts& bolts) {
  CW_CHECK(checkPositive("bolts.bearing", inMillimetres(bolts.bearing), 1e4, "mm"));
  if (bolts.hole >= Length() && bolts.hole < bolts.bearing) return {};
  return fail(ErrorCode::OutOfRange, "bolts.hole", number(inMillimetres(bolts.hole)),
              {"a hole of %1 mm leaves no bearing face", {number(inMillimetres(bolts.hole))}},
              {"0 to less than the bearing diameter, %1 mm", {number(inMillimetres(bolts.bearing))}});
}

bool restsOn(const PlateShape& shape, const Point& place, double bearingRadius) {
  const double grain = 1e-9;
  if (const auto* ring = std::get_if<Annulus>(&shape)) {
    const double radius = std::hypot(place.x.si(), place.y.si());
    const bool clearOfBore = ring->inner == Length() || radius - bearingRadius >= ring->inner.si() - grain;
    return clearOfBore && radius + bearingRadius <= ring->outer.si() + grain;
  }
  if (const auto* outline = std::get_if<PolygonOutline>(&shape))
    return isInside(outline->corners, place) &&
           edgeDistance(outline->corners, place).si() >= bearingRadius - grain;
  const auto& rectangle = std::get<Rectangle>(shape);
  return std::abs(place.x.si()) + bearingRadius <= rectangle.length.si() / 2 + grain &&
         std::abs(place.y.si()) + bearingRadius <= rectangle.width.si() / 2 + grain;
}

Result<void> checkPlaces(const SettlingBolts& bolts, const PlateShape& shape) {
  if (const auto* circle = std::get_if<BoltCircle>(&bolts.places))
    CW_CHECK(checkPositive("bolts.circle_radius", inMillimetres(circle->radius), 1e5, "mm"));
  const std::vector<Point> places = boltPlaces(bolts);
  for (std::size_t i = 0; i < places.size(); ++i) {
    const std::string at = fmt::format("({:g}, {:g}) mm", places[i].x.si() * 1e3, places[i].y.si() * 1e3);
    if (!restsOn(shape, places[i], bolts.bearing.si() / 2))
      return fail(ErrorCode::OutOfRange, fmt::format("bolts, bolt {}", i + 1), at,
                  {"the head at %1 does not rest wholly on the part", {at}},
                  "a position at least half the bearing diameter from every edge");
    for (std::size_t j = 0; j < i; ++j)
      if (std::hypot((places[i].x - places[j].x).si(), (places[i].y - places[j].y).si()) <
          bolts.bearing.si() - 1e-9)
        return fail(ErrorCode::InvalidInput, fmt::format("bolts, bolt {}", i + 1), at,
                    {"the head at %1 overlaps that of bolt %2", {at, number(static_cast<double>(j + 1))}},
                    "positions at least one bearing diameter apart");
  }
  return {};
}

Result<void> checkAnswer(const GasketAnswer& answer) {
  if (!(answer.unloadingRatio >= 1 && answer.unloadingRatio <= 100))
    return fail(ErrorCode::OutOfRange, "gasket.unloading_ratio", number(answer.unloadingRatio),
                {"a gasket cannot unload %1 times as stiff as it loads", {number(answer.unloadingRatio)}},
                "1 to 100");
  return {};
}

Result<void> checkFlexiblePart(const FlexiblePart& part, const SettlingBolts& bolts) {
  CW_CHECK(checkPlate(part.plate));
  CW_CHECK(checkHead(bolts));
  CW_CHECK(checkPlaces(bolts, part.plate.plate.shape));
  return checkAnswer(part.answer);
}

Result<void> checkMatrix(const Flexibility& matrix, const SettlingBolts& bolts) {
  const std::size_t places = boltPlaces(bolts).size();
  if (places != 0 && places != static_cast<std::size_t>(matrix.size()))
    return fail(ErrorCode::InvalidInput, "flexibility", number(matrix.size()),
                {"a flexibility of %1 rows does not fit %2 bolts",
                 {number(matrix.size()), number(static_cast<double>(places))}},
                "one row and column for each bolt");
  const Eigen::Map<const Eigen::MatrixXd> values(matrix.data(), matrix.size(), matrix.size());
  if (!values.allFinite())
    return fail(ErrorCode::InvalidInput, "flexibility", "", "the flexibility holds a value that is no number",
                "finite numbers in m/N");
  for (int i = 0; i < matrix.size(); ++i)
    for (int j = 0; j < i; ++j)
      if (std::abs(values(i, j) - values(j, i)) > 1e-6 * values.cwiseAbs().maxCoeff())
        return fail(
            ErrorCode::InvalidInput, fmt::format("flexibility[{}][{}]", i, j), number(values(i, j)),
            {"%1 m/N here is %2 m/N across the diagonal", {number(values(i, j)), number(values(j, i))}},
            "a symmetric matrix: what bolt i does to bolt j, j does to i");
  if (Eigen::LLT<Eigen::MatrixXd>(values).info() != Eigen::Success)
    return fail(ErrorCode::InvalidInput, "flexibility", "",
                "the flexibility is not positive definite: some pull would move the part the wrong way",
                "a matrix whose eigenvalues are all above 0");
  return {};
}

}  // namespace

Result<void> checkJoint(const SettlingJoint& joint) {
  CW_CHECK(checkCount(boltCount(joint)));
  CW_CHECK(checkPositive("bolts.stiffness", joint.bolts.stiffness.si(), 1e15, "N/m"));
  const auto* part = std::get_if<FlexiblePart>(&joint.body);
  return part ? checkFlexiblePart(*part, joint.bolts)
              : checkMatrix(std::get<Flexibility>(joint.body), joint.bolts);
}

}  // namespace cw

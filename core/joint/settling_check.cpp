#include "core/joint/settling_check.h"

#include <fmt/format.h>

#include <Eigen/Dense>
#include <cmath>

#include "core/joint/plate_check.h"

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

bool restsOn(const PlateShape& shape, const PlatePoint& place, double bearingRadius) {
  const double grain = 1e-9;
  if (const auto* ring = std::get_if<Annulus>(&shape)) {
    const double radius = std::hypot(place.x.si(), place.y.si());
    const bool clearOfBore = ring->inner == Length() || radius - bearingRadius >= ring->inner.si() - grain;
    return clearOfBore && radius + bearingRadius <= ring->outer.si() + grain;
  }
  const auto& rectangle = std::get<Rectangle>(shape);
  return std::abs(place.x.si()) + bearingRadius <= rectangle.length.si() / 2 + grain &&
         std::abs(place.y.si()) + bearingRadius <= rectangle.width.si() / 2 + grain;
}

Result<void> checkPlaces(const SettlingBolts& bolts, const PlateShape& shape) {
  const std::vector<PlatePoint> places = boltPlaces(bolts);
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

Result<void> checkAnswer(const GasketAnswer& answer, double snugShare) {
  if (!(answer.unloadingRatio >= 1 && answer.unloadingRatio <= 100))
    return fail(ErrorCode::OutOfRange, "gasket.unloading_ratio", number(answer.unloadingRatio),
                {"a gasket cannot unload %1 times as stiff as it loads", {number(answer.unloadingRatio)}},
                "1 to 100");
  if (answer.liftsOff && snugShare == 0)
    return fail(ErrorCode::InvalidInput, "snug_share", "0",
                "on a gasket that lifts off, the part tips under the first bolt if no other is snug",
                "a snug share above 0, such as 0.03");
  return {};
}

Result<void> checkFlexiblePart(const FlexiblePart& part, const SettlingJoint& joint) {
  CW_CHECK(checkPlate(part.plate));
  CW_CHECK(checkHead(joint.bolts));
  CW_CHECK(checkPlaces(joint.bolts, part.plate.plate.shape));
  return checkAnswer(part.answer, joint.snugShare);
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

Result<void> checkTargets(const SettlingJoint& joint) {
  const auto count = static_cast<std::size_t>(boltCount(joint));
  if (joint.targets.size() != 1 && joint.targets.size() != count)
    return fail(ErrorCode::InvalidInput, "target", number(static_cast<double>(joint.targets.size())),
                {"%1 targets do not fit %2 bolts",
                 {number(static_cast<double>(joint.targets.size())), number(static_cast<double>(count))}},
                "one target for all, or one for each bolt");
  for (const Force target : joint.targets) CW_CHECK(checkPositive("target", target.si(), 1e12, "N"));
  return {};
}

Result<void> checkShare(const std::string& place, double share) {
  if (share > 0 && share <= 2) return {};
  return fail(ErrorCode::OutOfRange, place, number(share), {"%1 is no share of the target", {number(share)}},
              "above 0, at most 2");
}

Result<void> checkPass(const std::string& place, const SettlingPass& pass, int bolts) {
  CW_CHECK(checkShare(place + ".share", pass.share));
  return checkOrder(place + ".order", pass.order, bolts);
}

}  // namespace

Result<void> checkOrder(const std::string& place, const std::vector<int>& order, int bolts) {
  std::vector<bool> seen(static_cast<std::size_t>(bolts), false);
  const Message right("every bolt from 1 to %1 once", {number(bolts)});
  for (const int bolt : order) {
    if (bolt < 1 || bolt > bolts)
      return fail(ErrorCode::InvalidInput, place, number(bolt), {"there is no bolt %1", {number(bolt)}},
                  right);
    if (seen[static_cast<std::size_t>(bolt - 1)])
      return fail(ErrorCode::InvalidInput, place, number(bolt), {"bolt %1 comes twice", {number(bolt)}},
                  right);
    seen[static_cast<std::size_t>(bolt - 1)] = true;
  }
  for (int bolt = 1; bolt <= bolts; ++bolt)
    if (!seen[static_cast<std::size_t>(bolt - 1)])
      return fail(ErrorCode::InvalidInput, place, number(bolt), {"bolt %1 is missing", {number(bolt)}},
                  right);
  return {};
}

Result<void> checkSettling(const SettlingJoint& joint) {
  CW_CHECK(checkCount(boltCount(joint)));
  CW_CHECK(checkPositive("bolts.stiffness", joint.bolts.stiffness.si(), 1e15, "N/m"));
  if (joint.snugShare != 0) CW_CHECK(checkShare("snug_share", joint.snugShare));
  if (const auto* part = std::get_if<FlexiblePart>(&joint.body)) {
    CW_CHECK(checkFlexiblePart(*part, joint));
  } else {
    CW_CHECK(checkMatrix(std::get<Flexibility>(joint.body), joint.bolts));
  }
  CW_CHECK(checkTargets(joint));
  if (joint.passes.size() > 100)
    return fail(ErrorCode::OutOfRange, "passes", number(static_cast<double>(joint.passes.size())),
                {"%1 passes are too many", {number(static_cast<double>(joint.passes.size()))}},
                "at most 100");
  for (std::size_t i = 0; i < joint.passes.size(); ++i)
    CW_CHECK(checkPass(fmt::format("passes[{}]", i), joint.passes[i], boltCount(joint)));
  return {};
}

}  // namespace cw

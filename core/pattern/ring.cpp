#include "core/pattern/ring.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace cw {
namespace {

constexpr double kOffRing = 0.02;  // of the radius: coordinates are typed to a tenth of a millimetre or so

/// For each hole of the shape, the index of its position, or nothing if it is left out.
Ring seatsOfHoles(std::size_t holes, const std::vector<std::size_t>& leftOut) {
  Ring seats;
  std::size_t position = 0;
  for (std::size_t hole = 1; hole <= holes; ++hole) {
    const bool isGone = std::find(leftOut.begin(), leftOut.end(), hole) != leftOut.end();
    seats.push_back(isGone ? std::nullopt : std::optional(position++));
  }
  return seats;
}

std::vector<Ring> concentric(const ConcentricCircles& shape, const Ring& seats) {
  std::vector<std::pair<Length, Ring>> found;
  auto next = seats.begin();
  for (const Circle& circle : shape.circles) {
    const auto end = next + static_cast<std::ptrdiff_t>(circle.count);
    found.emplace_back(circle.diameter, Ring(next, end));
    next = end;
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return a.first < b.first; });
  std::vector<Ring> out;
  for (auto& [diameter, ring] : found) out.push_back(std::move(ring));
  return out;
}

tl::unexpected<Error> noRing(std::size_t count, Message problem) {
  return fail(ErrorCode::OutOfRange, "order", std::to_string(count), std::move(problem),
              "use the rule balanced, centre-out or circular");
}

Result<std::vector<Ring>> foundRing(const std::vector<Point>& points) {
  const std::string count = std::to_string(points.size());
  if (points.size() < 3)
    return noRing(points.size(), {"this order needs a ring, and %1 positions make none", {count}});
  const auto places = aboutMiddle(points);
  const auto round = goingRound(places);
  if (std::isinf(axesOf(places).aspect))
    return noRing(points.size(), {"this order needs a ring, and the %1 positions lie on a line", {count}});
  if (!isRing(places, round))
    return noRing(
        points.size(),
        {"this order needs a ring, and the %1 positions are not equally spaced on a circle", {count}});
  return std::vector<Ring>{Ring(round.begin(), round.end())};
}

}  // namespace

bool isRing(const std::vector<Place>& places, const std::vector<std::size_t>& round) {
  if (places.size() < 3) return false;
  const double pitch = -numberingSense(places) * 2 * kPi / static_cast<double>(places.size());
  const Place first = places[round.front()] / std::abs(places[round.front()]);
  for (std::size_t k = 0; k < round.size(); ++k)
    if (!(std::abs(places[round[k]] - first * std::polar(1.0, pitch * static_cast<double>(k))) <= kOffRing))
      return false;
  return true;
}

Result<std::vector<Ring>> rings(const Layout& layout) {
  CW_TRY(points, places(layout));
  if (const auto* circle = std::get_if<Circle>(&layout.shape))
    return std::vector<Ring>{seatsOfHoles(circle->count, layout.leftOut)};
  if (const auto* circles = std::get_if<ConcentricCircles>(&layout.shape))
    return concentric(*circles, seatsOfHoles(points.size() + layout.leftOut.size(), layout.leftOut));
  return foundRing(points);
}

}  // namespace cw

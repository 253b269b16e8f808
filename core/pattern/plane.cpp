#include "core/pattern/plane.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <tuple>

namespace cw {
namespace {

constexpr double kNothing = 1e-9;  // of the farthest distance: below it, rounding is all there is

/// Turn from `from` to `to` in the given sense, 0 to 2π, to a millionth so that equal directions tie.
long turn(const Place& from, const Place& to, double sense) {
  constexpr double kSteps = 1e6;
  const double angle = -sense * std::arg(to * std::conj(from)) / (2 * kPi);
  return std::lround((angle - std::floor(angle)) * kSteps) % std::lround(kSteps);
}

/// The axis turned so that the first place not square to it lies on its negative side.
Place awayFromFirst(Place axis, const std::vector<Place>& places) {
  for (const Place& place : places) {
    if (std::abs(on(axis, place)) < 1e-6) continue;
    return on(axis, place) > 0 ? -axis : axis;
  }
  return axis;
}

}  // namespace

std::vector<Place> aboutMiddle(const std::vector<Point>& points) {
  std::vector<Place> out;
  for (const Point& point : points) out.emplace_back(point.x.si(), point.y.si());
  const Place middle = std::accumulate(out.begin(), out.end(), Place()) / static_cast<double>(out.size());
  double farthest = 0;
  for (Place& place : out) farthest = std::max(farthest, std::abs(place -= middle));
  if (farthest > 0)
    for (Place& place : out) place /= farthest;
  return out;
}

double numberingSense(const std::vector<Place>& places) {
  double area = 0;
  for (std::size_t i = 0; i < places.size(); ++i)
    area += (std::conj(places[i]) * places[(i + 1) % places.size()]).imag();
  return area > kNothing ? -1 : 1;
}

std::vector<std::size_t> goingRound(const std::vector<Place>& places) {
  const auto reference =
      std::find_if(places.begin(), places.end(), [](const Place& p) { return std::abs(p) > kNothing; });
  const Place from = reference == places.end() ? Place(0, 1) : *reference;
  const double sense = numberingSense(places);
  std::vector<std::tuple<long, double, std::size_t>> met;
  for (std::size_t i = 0; i < places.size(); ++i)
    met.emplace_back(turn(from, places[i], sense), -std::abs(places[i]), i);
  std::sort(met.begin(), met.end());
  std::vector<std::size_t> out;
  for (const auto& [angle, nearness, index] : met) out.push_back(index);
  return out;
}

Axes axesOf(const std::vector<Place>& places) {
  Place skew;  // sum of squares: its argument is twice the long axis' direction
  double size = 0;
  for (const Place& place : places) {
    skew += place * place;
    size += std::norm(place);
  }
  Axes axes;
  const bool isRound = std::abs(skew) < 0.02 * size;
  axes.along = isRound && places.size() > 1 ? places[1] - places[0] : std::sqrt(skew);
  axes.along = std::abs(axes.along) > 0 ? axes.along / std::abs(axes.along) : Place(1, 0);
  axes.along = awayFromFirst(axes.along, places);
  axes.across = awayFromFirst(axes.along * Place(0, 1), places);
  const double across = size - std::abs(skew);
  axes.aspect = across > kNothing * size ? std::sqrt((size + std::abs(skew)) / across)
                                         : std::numeric_limits<double>::infinity();
  return axes;
}

}  // namespace cw

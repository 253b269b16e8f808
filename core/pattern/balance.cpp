#include "core/pattern/balance.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

#include "core/pattern/balance_walk.h"

namespace cw {
namespace {

constexpr double kLong = 1.5;        // from this aspect on a layout is worked outward along its length
constexpr double kFilled = 0.35;     // a place nearer the middle than this makes a filled layout
constexpr double kOffCentre = 0.05;  // first moment from which a band's partner is due

/// The band of each place: equal reach from the middle, counted outward.
template <class Reach>
std::vector<std::size_t> bandsBy(Reach reach, std::size_t count) {
  const double tolerance = std::min(0.04, kPi / 2 / static_cast<double>(count));
  std::vector<std::size_t> outward(count), bands(count, 0);
  std::iota(outward.begin(), outward.end(), 0u);
  std::sort(outward.begin(), outward.end(), [&](auto a, auto b) { return reach(a) < reach(b); });
  for (std::size_t i = 1, band = 0; i < count; ++i) {
    if (reach(outward[i]) > reach(outward[i - 1]) + tolerance) ++band;
    bands[outward[i]] = band;
  }
  return bands;
}

/// Rounded so that equal geometry ties.
long steps(double value) {
  return std::lround(value * 1e6);
}

bool isFilled(const std::vector<Place>& places) {
  return places.size() >= 5 && std::any_of(places.begin(), places.end(),
                                           [](const Place& place) { return length(place) < kFilled; });
}

std::vector<std::size_t> spiral(const std::vector<Place>& places) {
  const auto bands = bandsBy([&](std::size_t i) { return length(places[i]); }, places.size());
  const auto round = goingRound(places);
  std::vector<std::vector<std::size_t>> turns(places.size());  // by band: when each of its places is met
  for (std::size_t met = 0; met < round.size(); ++met) turns[bands[round[met]]].push_back(met);
  std::vector<std::size_t> order;
  std::size_t last = 0;
  for (auto& turn : turns) {
    std::rotate(turn.begin(), std::lower_bound(turn.begin(), turn.end(), last), turn.end());
    for (const std::size_t met : turn) order.push_back(round[last = met]);
  }
  return order;
}

}  // namespace

std::vector<std::size_t> balancedAround(const std::vector<Place>& places, Leader leader) {
  return places.empty() ? std::vector<std::size_t>() : BalanceWalk(places, leader).walk();
}

std::vector<std::size_t> balancedRing(std::size_t n, Leader leader) {
  std::vector<Place> places;
  for (std::size_t i = 0; i < n; ++i)
    places.push_back(std::polar(1.0, kPi / 2 - 2 * kPi * static_cast<double>(i) / static_cast<double>(n)));
  return balancedAround(places, leader);
}

std::vector<std::size_t> balancedOutward(const std::vector<Place>& places) {
  const Axes axes = axesOf(places);
  const auto bands =
      bandsBy([&](std::size_t i) { return std::abs(on(axes.along, places[i])); }, places.size());
  std::vector<std::size_t> left(places.size()), order;
  std::iota(left.begin(), left.end(), 0u);
  Place sum;
  while (!left.empty()) {
    const bool restores = length(sum) > kOffCentre;
    const Place last = order.empty() ? Place() : places[order.back()];
    const auto merit = [&](std::size_t i) {
      const double along = on(axes.along, places[i]), across = on(axes.across, places[i]);
      return std::tuple(bands[i], restores ? steps(length(sum + places[i])) : 0, steps(std::abs(across)),
                        along < -1e-6, steps(length(places[i] - last)), -steps(across), i);
    };
    const auto next = std::min_element(left.begin(), left.end(),
                                       [&](std::size_t a, std::size_t b) { return merit(a) < merit(b); });
    order.push_back(*next);
    sum += places[*next];
    left.erase(next);
  }
  return order;
}

bool isLongLayout(const std::vector<Place>& places) {
  return places.size() > 2 && axesOf(places).aspect >= kLong;
}

std::vector<std::size_t> centreOutOrder(const std::vector<Place>& places) {
  return isLongLayout(places) ? balancedOutward(places) : spiral(places);
}

std::vector<std::size_t> balancedOrder(const std::vector<Place>& places) {
  const auto round = goingRound(places);
  const double most = worstImbalance(places, round) + 1e-9;
  if (isLongLayout(places) || isFilled(places))
    if (auto outward = balancedOutward(places); worstImbalance(places, outward) <= most) return outward;
  if (auto around = balancedAround(places, Leader::Spread); worstImbalance(places, around) <= most)
    return around;
  return round;
}

double worstImbalance(const std::vector<Place>& places, std::span<const std::size_t> order) {
  Place sum;
  double worst = 0;
  for (const std::size_t i : order) worst = std::max(worst, length(sum += places[i]));
  return worst;
}

}  // namespace cw

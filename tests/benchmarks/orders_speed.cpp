// How long an order of many free positions takes, against one plain look at every pair of them, and how
// that grows. Ratios only: they hold on any machine.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <ctime>
#include <random>

#include "core/pattern/order.h"

namespace cw {
namespace {

using Random = std::mt19937_64;

/// Places filling a square of 2 m.
std::vector<Point> scattered(std::size_t count, Random& random) {
  std::uniform_real_distribution<double> side(-1, 1);
  std::vector<Point> points;
  for (std::size_t i = 0; i < count; ++i) points.push_back({metres(side(random)), metres(side(random))});
  return points;
}

/// Places along a wavy ring.
std::vector<Point> around(std::size_t count, Random& random) {
  std::uniform_real_distribution<double> jitter(-0.3, 0.3), radius(0.7, 1);
  std::vector<Point> points;
  for (std::size_t i = 0; i < count; ++i) {
    const double angle = 2 * kPi * (static_cast<double>(i) + jitter(random)) / static_cast<double>(count);
    const Length r = metres(radius(random));
    points.push_back({r * std::sin(angle), r * std::cos(angle)});
  }
  return points;
}

/// The baseline: the nearest neighbour of every position, by looking at every pair.
double everyPair(const std::vector<Point>& points) {
  double sum = 0;
  for (const Point& a : points) {
    double nearest = 1e300;
    for (const Point& b : points) {
      const double x = (a.x - b.x).si(), y = (a.y - b.y).si();
      if (&a != &b) nearest = std::min(nearest, std::sqrt(x * x + y * y));
    }
    sum += nearest;
  }
  return sum;
}

/// The median of several runs, in seconds of processor time, so that other programs do not count.
template <class Work>
double typical(Work work) {
  std::vector<double> runs;
  for (int run = 0; run < 9; ++run) {
    const std::clock_t start = std::clock();
    work();
    runs.push_back(static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC);
  }
  std::nth_element(runs.begin(), runs.begin() + 4, runs.end());
  return runs[4];
}

struct Measured {
  double order = 0;
  double pairs = 0;
};

/// Seconds for one layout, over as many seeded layouts as make 2000 positions, so that none is learnt by
/// heart.
Measured measure(std::vector<Point> (*make)(std::size_t, Random&), std::size_t count) {
  Random random(7);
  std::vector<Layout> layouts;
  for (std::size_t i = 0; i < 2000 / count; ++i) layouts.push_back({FreePoints{make(count, random)}});
  std::size_t placed = 0;
  double sum = 0;
  Measured measured;
  measured.order = typical([&] {
    for (const Layout& layout : layouts)
      if (const auto made = tighteningOrder(layout, OrderRule::Balanced)) placed += made->positions.size();
  });
  measured.pairs = typical([&] {
    for (const Layout& layout : layouts) sum += everyPair(std::get<FreePoints>(layout.shape).points);
  });
  if (placed == 0 || sum == 0) fmt::print("nothing was measured\n");
  const auto each = static_cast<double>(layouts.size());
  return {measured.order / each, measured.pairs / each};
}

void report(const char* name, std::vector<Point> (*make)(std::size_t, Random&)) {
  const Measured few = measure(make, 100), many = measure(make, 1000);
  fmt::print("order of 1000 {} positions: {:.1f} times one look at every pair ({:.1f} ms)\n", name,
             many.order / many.pairs, many.order * 1e3);
  fmt::print(
      "growth from 100 to 1000 {} positions: {:.0f} times (every pair: {:.0f} times; n squared: 100)\n", name,
      many.order / few.order, many.pairs / few.pairs);
}

}  // namespace
}  // namespace cw

int main() {
  cw::report("scattered", cw::scattered);
  cw::report("around", cw::around);
}

// How long an order of many free positions takes, against one plain look at every pair of them, and how
// that grows. Ratios only: they hold on any machine.
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <random>

#include "core/pattern/order.h"

namespace cw {
namespace {

/// Seeded random places, so that every run orders the same ones: filling a square of 2 m ("scattered"), or
/// along a wavy ring ("around").
std::vector<Point> scattered(std::size_t count) {
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> side(-1, 1);
  std::vector<Point> points;
  for (std::size_t i = 0; i < count; ++i) points.push_back({metres(side(random)), metres(side(random))});
  return points;
}

std::vector<Point> around(std::size_t count) {
  std::mt19937_64 random(7);
  std::uniform_real_distribution<double> jitter(-0.3, 0.3), radius(0.7, 1);
  std::vector<Point> points;
  for (std::size_t i = 0; i < count; ++i) {
    const double angle = 2 * kPi * (static_cast<double>(i) + jitter(random)) / static_cast<double>(count);
    const Length r = metres(radius(random));
    points.push_back({r * std::sin(angle), r * std::cos(angle)});
  }
  return points;
}

/// The baseline: the nearest neighbour of every position, by looking at every pair once.
double everyPair(const std::vector<Point>& points) {
  double sum = 0;
  for (const Point& a : points) {
    double nearest = 1e300;
    for (const Point& b : points)
      if (&a != &b) nearest = std::min(nearest, std::hypot((a.x - b.x).si(), (a.y - b.y).si()));
    sum += nearest;
  }
  return sum;
}

/// The shortest of several runs, in seconds.
template <class Work>
double shortest(Work work) {
  double best = 1e300;
  for (int run = 0; run < 7; ++run) {
    const auto start = std::chrono::steady_clock::now();
    work();
    best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count());
  }
  return best;
}

struct Measured {
  double order;
  double pairs;
};

Measured measure(const std::vector<Point>& points) {
  const Layout layout{FreePoints{points}};
  std::size_t placed = 0;
  double sum = 0;
  const double order = shortest([&] {
    const auto made = tighteningOrder(layout, OrderRule::Balanced);
    placed += made ? made->positions.size() : 0;
  });
  const double pairs = shortest([&] { sum += everyPair(points); });
  if (placed == 0 || sum == 0) fmt::print("nothing was measured\n");
  return {order, pairs};
}

void report(const char* name, std::vector<Point> (*make)(std::size_t)) {
  const Measured few = measure(make(100)), many = measure(make(1000));
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

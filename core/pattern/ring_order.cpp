#include "core/pattern/ring_order.h"

#include <algorithm>
#include <numeric>

#include "core/pattern/balance.h"
#include "core/pattern/published_orders.h"

namespace cw {
namespace {

/// The offsets inside a quadrant of m seats: as far as can be from any tightened seat, then from the
/// offset before (around the quadrant), then the lowest.
Seats spreadOffsets(std::size_t m) {
  Seats offsets{0};
  Seats room(m);  // distance to the nearest seat tightened
  for (std::size_t o = 0; o < m; ++o) room[o] = std::min(o, m - o);
  while (offsets.size() < m) {
    const auto merit = [&, last = offsets.back()](std::size_t o) {
      const std::size_t apart = o > last ? o - last : last - o;
      return std::pair(room[o], std::min(apart, m - apart));
    };
    std::size_t best = 0;
    for (std::size_t o = 1; o < m; ++o)
      if (room[o] > 0 && (best == 0 || merit(o) > merit(best))) best = o;
    offsets.push_back(best);
    for (std::size_t o = 0; o < m; ++o) room[o] = std::min(room[o], o > best ? o - best : best - o);
  }
  return offsets;
}

/// The offsets inside a quadrant of m seats: the middle, then alternately below and above it.
Seats middleOffsets(std::size_t m) {
  Seats offsets{0};
  const std::size_t middle = (m + 1) / 2;
  for (std::size_t step = 0; offsets.size() < m; ++step) {
    if (step > 0 && middle > step) offsets.push_back(middle - step);
    if (middle + step < m) offsets.push_back(middle + step);
  }
  return offsets;
}

/// Each offset in the four quadrants: here, opposite, a quarter turn on, opposite that.
Seats quarterSets(const Seats& offsets) {
  const std::size_t m = offsets.size();
  Seats seats;
  for (const std::size_t o : offsets) seats.insert(seats.end(), {o, o + 2 * m, o + m, o + 3 * m});
  return seats;
}

Seats singleStarSeats(std::size_t n) {
  if (const auto printed = publishedException(OrderRule::Star, n)) return *printed;
  return n % 4 == 0 ? quarterSets(spreadOffsets(n / 4)) : balancedRing(n, Leader::Spread);
}

/// The first seat of quadrant q (0 to 3), or n for q = 4.
std::size_t quadrantStart(std::size_t q, std::size_t n) {
  return (q * n + 3) / 4;
}

}  // namespace

Seats starSeats(std::size_t n) {
  const std::size_t size = publishedGroupSize(n);
  return size > 1 ? groupedStarSeats(n, size) : singleStarSeats(n);
}

Seats laterStarSeats(std::size_t n) {
  return n % 4 == 0 ? quarterSets(middleOffsets(n / 4)) : balancedRing(n, Leader::Middle);
}

Seats groupedStarSeats(std::size_t n, std::size_t size) {
  const auto printed =
      size == publishedGroupSize(n) ? publishedException(OrderRule::StarGrouped, n) : std::nullopt;
  Seats seats;
  for (const std::size_t group : printed ? *printed : singleStarSeats((n + size - 1) / size))
    for (std::size_t seat = group * size; seat < std::min(n, (group + 1) * size); ++seat)
      seats.push_back(seat);
  return seats;
}

Seats quadrantSeats(std::size_t n) {
  Seats seats;
  for (std::size_t o = 0; seats.size() < n; ++o)
    for (const std::size_t q : {0u, 2u, 1u, 3u})
      if (const std::size_t seat = quadrantStart(q, n) + o; seat < quadrantStart(q + 1, n))
        seats.push_back(seat);
  return seats;
}

Seats circularSeats(std::size_t n) {
  Seats seats(n);
  std::iota(seats.begin(), seats.end(), 0u);
  return seats;
}

Seats circularAfterFourSeats(std::size_t n) {
  Seats seats = quadrantSeats(n);
  std::sort(seats.begin() + std::min<std::ptrdiff_t>(4, std::ssize(seats)), seats.end());
  return seats;
}

Seats wheelSeats(std::size_t n) {
  if (const auto printed = publishedException(OrderRule::Wheel, n)) return *printed;
  if (n % 2 == 0) return singleStarSeats(n);
  Seats seats;
  for (std::size_t i = 0; i < n; ++i) seats.push_back(i * ((n - 1) / 2) % n);
  return seats;
}

Seats pairSeats(std::size_t n) {
  Seats seats;
  for (std::size_t i = 0; i < (n + 1) / 2; ++i) {
    const std::size_t seat = (n - i) % n;
    seats.push_back(seat);
    if (seats.size() < n) seats.push_back((seat + n / 2) % n);
  }
  return seats;
}

}  // namespace cw

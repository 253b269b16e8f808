#pragma once
#include <cstddef>
#include <vector>

namespace cw {

/// Seats equally spaced on a circle, counted from 0 going round.
using Seats = std::vector<std::size_t>;

/// Opposite, a quarter turn, opposite; each next quarter set as far as possible from those before it.
/// ASME PCC-1 (2000), rotational order table; for n divisible by 4 in closed form, else by balance.
/// n >= 1 in all of these.
Seats starSeats(std::size_t n);

/// The later convention: quarter sets from the middle of the quadrant outward. ASME PCC-1 (2010 and on),
/// legacy cross-pattern table.
Seats laterStarSeats(std::size_t n);

/// The star over groups of `size` neighbours (the last group takes what is left), clockwise inside a group.
/// ASME PCC-1 (2000) for 36 (by 3) and 40 to 56 (by 4).
Seats groupedStarSeats(std::size_t n, std::size_t size);

/// From each quadrant by turns the next free seat, opposite quadrants after each other.
/// ASME PCC-1 (2010), appendix F.
Seats quadrantSeats(std::size_t n);

Seats circularSeats(std::size_t n);

/// Four seats a quarter apart, crosswise, then all others around. ASME PCC-1 (2010), appendix F.
Seats circularAfterFourSeats(std::size_t n);

/// Wheel studs. Odd n: every second stud where n is 5, in general a step of (n - 1) / 2; even n: the star.
Seats wheelSeats(std::size_t n);

/// Opposite pairs, each pair one seat before the last.
Seats pairSeats(std::size_t n);

}  // namespace cw

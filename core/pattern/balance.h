#pragma once
#include <cstddef>
#include <span>
#include <vector>

#include "core/pattern/plane.h"

namespace cw {

/// How a balanced order goes on each time the tightened set is in balance.
enum class Leader {
  Spread,    ///< farthest from every tightened place: the first star convention
  Middle,    ///< the middle of the quadrant, then outward: the later star convention
  Quadrant,  ///< the next place going round
  Pairs,     ///< opposite pairs only, then the next place going round
};

/// An order for places around a middle, from the first of them: each time the place that brings the centre
/// of the tightened set back to the middle, then its second moment to none (so that it resists tilt alike
/// about every axis); whenever the set is in balance, a leader. Agrees with the published stars on circles.
std::vector<std::size_t> balancedAround(const std::vector<Place>& places, Leader leader);

/// The same for n places equally spaced on a circle.
std::vector<std::size_t> balancedRing(std::size_t n, Leader leader);

/// An order for rows: bands of equal distance from the middle along the long axis, from the middle outward,
/// in each the partner that restores the centre. A line gives middle, right, left, right …; agrees with US
/// Army TM 5-3805-298-23-2 (line of 9) and the common order of engine heads.
std::vector<std::size_t> balancedOutward(const std::vector<Place>& places);

/// True if a layout is worked along its length: 1.5 times as long as it is wide, or a line, of
/// more than two.
bool isLongLayout(const std::vector<Place>& places);

/// From the middle outward: long layouts as above, all others in a spiral with the numbering.
std::vector<std::size_t> centreOutOrder(const std::vector<Place>& places);

/// The order of a free layout: outward for long or filled ones, around for all others; but one that meets a
/// worse imbalance than simply going round is not taken, which happens with few and scattered positions.
std::vector<std::size_t> balancedOrder(const std::vector<Place>& places);

/// The worst imbalance met while tightening: the largest distance of the sum of tightened places from the
/// middle, in units of the farthest place's distance. 0 for an empty order.
double worstImbalance(const std::vector<Place>& places, std::span<const std::size_t> order);

}  // namespace cw

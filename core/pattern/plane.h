#pragma once
#include <cmath>
#include <complex>
#include <vector>

#include "core/pattern/shape.h"

namespace cw {

/// A place about the middle of all, as a fraction of the farthest one's distance (1 at most); real part to
/// the right, imaginary part up.
using Place = std::complex<double>;

/// The distance of a place from the middle, or of two places from each other. Places are at most 1 long, so
/// that nothing is lost by squaring, and std::abs would cost four times as much.
inline double length(const Place& place) {
  return std::sqrt(std::norm(place));
}

/// The points about their mean. All zero if there is one point only.
std::vector<Place> aboutMiddle(const std::vector<Point>& points);

/// +1 if the numbering runs clockwise around the middle, -1 if anticlockwise; +1 where it does neither.
double numberingSense(const std::vector<Place>& places);

/// Indices in the order one meets them going round from the first place with the numbering; farther ones
/// first where several lie in one direction.
std::vector<std::size_t> goingRound(const std::vector<Place>& places);

/// The axes of a layout: the long one away from position 1, the other square to it and away from it too.
struct Axes {
  Place along;
  Place across;
  double aspect;  ///< extent along by extent across, as standard deviations; infinite on a line
};
Axes axesOf(const std::vector<Place>& places);

/// `place` measured on a unit vector.
inline double on(const Place& axis, const Place& place) {
  return axis.real() * place.real() + axis.imag() * place.imag();
}

}  // namespace cw

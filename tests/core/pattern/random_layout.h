#pragma once
#include <cmath>
#include <vector>

#include "core/pattern/shape.h"
#include "tests/support/sweep.h"

namespace cw {

/// A cover's edge: 3 to 40 positions around, unevenly.
inline std::vector<Point> randomCover(Random& random) {
  const int count = wholeBetween(3, 40, random);
  std::vector<Point> points;
  for (int i = 0; i < count; ++i) {
    const double angle = 2 * kPi * (i + between(-0.4, 0.4, random)) / count;
    const Length radius = millimetres(between(60, 140, random));
    points.push_back({radius * std::sin(angle), radius * std::cos(angle)});
  }
  return points;
}

/// Positions anywhere on a plate of random sides, numbered anyhow.
inline std::vector<Point> randomPlate(Random& random) {
  const int count = wholeBetween(3, 40, random);
  const double width = between(20, 400, random), height = between(20, 400, random);
  std::vector<Point> points;
  for (int i = 0; i < count; ++i)
    points.push_back(
        {millimetres(between(-width, width, random)), millimetres(between(-height, height, random))});
  return points;
}

inline std::vector<Point> randomPoints(Random& random) {
  return wholeBetween(0, 1, random) == 0 ? randomCover(random) : randomPlate(random);
}

}  // namespace cw

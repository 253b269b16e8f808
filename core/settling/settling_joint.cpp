#include "core/settling/settling_joint.h"

#include <cmath>

namespace cw {

std::vector<Point> boltPlaces(const SettlingBolts& bolts) {
  const auto* circle = std::get_if<BoltCircle>(&bolts.places);
  if (!circle) return std::get<std::vector<Point>>(bolts.places);
  std::vector<Point> places;
  for (int i = 0; i < circle->count; ++i) {
    const double angle = 2 * kPi * i / circle->count;
    places.push_back({circle->radius * std::cos(angle), circle->radius * std::sin(angle)});
  }
  return places;
}

int boltCount(const SettlingJoint& joint) {
  if (const auto* matrix = std::get_if<Flexibility>(&joint.body)) return matrix->size();
  if (const auto* circle = std::get_if<BoltCircle>(&joint.bolts.places)) return circle->count;
  return static_cast<int>(std::get<std::vector<Point>>(joint.bolts.places).size());
}

}  // namespace cw

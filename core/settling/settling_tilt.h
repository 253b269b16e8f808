#pragma once
#include <vector>

#include "core/settling/settling_springs.h"

namespace cw {

struct FaceState {
  Length gapDifference;  ///< widest less narrowest place between the faces
  Angle tilt;
};

/// Fits a plane to the approach of the faces at the bolts by least squares. Bolts in one line tilt along
/// it only; without places there is no tilt.
class FaceFit {
 public:
  explicit FaceFit(const std::vector<Point>& places);
  FaceState of(const SettlingSprings& springs) const;

 private:
  std::vector<double> m_slopeX;  ///< weight of every bolt's approach in the plane's slope along x, 1/m
  std::vector<double> m_slopeY;
};

}  // namespace cw

#include "core/settling/settling_tilt.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

namespace cw {

FaceFit::FaceFit(const std::vector<Point>& places) {
  if (places.empty()) return;
  Eigen::MatrixXd plane(static_cast<Eigen::Index>(places.size()), 3);
  for (Eigen::Index i = 0; i < plane.rows(); ++i) {
    const Point& place = places[static_cast<std::size_t>(i)];
    plane.row(i) << 1, place.x.si(), place.y.si();
  }
  const Eigen::MatrixXd fit = plane.completeOrthogonalDecomposition().pseudoInverse();
  for (Eigen::Index i = 0; i < plane.rows(); ++i) {
    m_slopeX.push_back(fit(1, i));
    m_slopeY.push_back(fit(2, i));
  }
}

FaceState FaceFit::of(const SettlingSprings& springs) const {
  std::vector<double> approach;
  for (int i = 0; i < springs.bolts(); ++i) approach.push_back(springs.approach(i).si());
  const auto [least, most] = std::minmax_element(approach.begin(), approach.end());
  FaceState state{metres(*most - *least), {}};
  double slopeX = 0;
  double slopeY = 0;
  for (std::size_t i = 0; i < m_slopeX.size(); ++i) {
    slopeX += m_slopeX[i] * approach[i];
    slopeY += m_slopeY[i] * approach[i];
  }
  state.tilt = radians(std::atan(std::hypot(slopeX, slopeY)));
  return state;
}

}  // namespace cw

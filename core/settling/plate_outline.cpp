#include "core/settling/plate_outline.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "core/settling/plate_basis.h"
#include "core/settling/plate_polygon.h"

namespace cw {
namespace {

using Eigen::Index;
using Eigen::MatrixXd;
using Eigen::VectorXd;

constexpr int kDegree = 16;

/// Products P(x)·Q(y) of Legendre polynomials over a box, up to a total degree.
class BoxBasis {
 public:
  explicit BoxBasis(const std::vector<Point>& corners) {
    const auto [left, right] = std::minmax_element(corners.begin(), corners.end(),
                                                   [](const Point& a, const Point& b) { return a.x < b.x; });
    const auto [bottom, top] = std::minmax_element(corners.begin(), corners.end(),
                                                   [](const Point& a, const Point& b) { return a.y < b.y; });
    m_x = {left->x.si(), right->x.si(), kDegree};
    m_y = {bottom->y.si(), top->y.si(), kDegree};
  }

  static Index size() { return (kDegree + 1) * (kDegree + 2) / 2; }

  /// All terms at a point, with their slopes along x and y.
  struct Terms {
    VectorXd value = VectorXd(size());
    VectorXd alongX = VectorXd(size());
    VectorXd alongY = VectorXd(size());
  };
  Terms at(double x, double y) const {
    VectorXd px(kDegree + 1);
    VectorXd dx(kDegree + 1);
    VectorXd qy(kDegree + 1);
    VectorXd dy(kDegree + 1);
    m_x.at(x, px.data(), dx.data());
    m_y.at(y, qy.data(), dy.data());
    Terms out;
    Index k = 0;
    for (int p = 0; p <= kDegree; ++p)
      for (int q = 0; p + q <= kDegree; ++q, ++k) {
        out.value[k] = px[p] * qy[q];
        out.alongX[k] = dx[p] * qy[q];
        out.alongY[k] = px[p] * dy[q];
      }
    return out;
  }

 private:
  LegendreBasis m_x;
  LegendreBasis m_y;
};

struct Sample {
  double x;
  double y;
  double weight;
};

/// Points that integrate polynomials exactly over the triangle, by Duffy's map from a square. The weight is
/// negative where the triangle runs clockwise.
void addTriangle(const Point& a, const Point& b, const Point& c, std::vector<Sample>& out) {
  const GaussRule rule = gaussRule(kDegree + 2, 0, 1);
  const double bx = (b.x - a.x).si();
  const double by = (b.y - a.y).si();
  const double cx = (c.x - b.x).si();
  const double cy = (c.y - b.y).si();
  const double twiceArea = bx * cy - by * cx;
  for (std::size_t i = 0; i < rule.points.size(); ++i)
    for (std::size_t j = 0; j < rule.points.size(); ++j) {
      const double s = rule.points[i];
      const double t = s * rule.points[j];
      out.push_back({a.x.si() + s * bx + t * cx, a.y.si() + s * by + t * cy,
                     rule.weights[i] * rule.weights[j] * s * twiceArea});
    }
}

/// A fan of triangles from the first corner; pieces outside the outline cancel, since polynomials go on
/// there.
std::vector<Sample> samplesOver(const std::vector<Point>& corners) {
  std::vector<Sample> samples;
  for (std::size_t i = 1; i + 1 < corners.size(); ++i)
    addTriangle(corners[0], corners[i], corners[i + 1], samples);
  double area = 0;
  for (const Sample& sample : samples) area += sample.weight;
  if (area < 0)
    for (Sample& sample : samples) sample.weight = -sample.weight;
  return samples;
}

/// Mindlin's plate in the fields w, βx, βy with γ = grad w + β.
MatrixXd plateStiffness(const Plate& plate, const BoxBasis& basis, const std::vector<Sample>& samples) {
  const double h = plate.thickness.si();
  const double nu = plate.poisson;
  const double bending = plate.modulus.si() * h * h * h / (12 * (1 - nu * nu));
  const double twisting = bending * (1 - nu) / 2;
  const double shear = 5.0 / 6 * plate.modulus.si() / (2 * (1 + nu)) * h;
  const Index n = BoxBasis::size();
  const auto count = static_cast<Index>(samples.size());
  MatrixXd v(n, count);
  MatrixXd x(n, count);
  MatrixXd y(n, count);
  VectorXd weights(count);
  for (Index i = 0; i < count; ++i) {
    const Sample& sample = samples[static_cast<std::size_t>(i)];
    const BoxBasis::Terms terms = basis.at(sample.x, sample.y);
    v.col(i) = terms.value;
    x.col(i) = terms.alongX;
    y.col(i) = terms.alongY;
    weights[i] = sample.weight;
  }
  const auto integral = [&](const MatrixXd& a, const MatrixXd& b) -> MatrixXd {
    return a * (weights.asDiagonal() * b.transpose());
  };
  const MatrixXd xx = integral(x, x);
  const MatrixXd yy = integral(y, y);
  const MatrixXd xy = integral(x, y);
  const MatrixXd vv = integral(v, v);
  MatrixXd k(3 * n, 3 * n);
  k.block(0, 0, n, n) = shear * (xx + yy);
  k.block(0, n, n, n) = shear * integral(x, v);
  k.block(0, 2 * n, n, n) = shear * integral(y, v);
  k.block(n, n, n, n) = bending * xx + twisting * yy + shear * vv;
  k.block(2 * n, 2 * n, n, n) = bending * yy + twisting * xx + shear * vv;
  k.block(n, 2 * n, n, n) = nu * bending * xy + twisting * xy.transpose();
  return k.selfadjointView<Eigen::Upper>();
}

VectorXd average(const PatchForm& form, const Patch& patch, const BoxBasis& basis) {
  const double c = std::cos(patch.turn.si());
  const double s = std::sin(patch.turn.si());
  VectorXd out = VectorXd::Zero(BoxBasis::size());
  for (const PatchSample& sample : form)
    out += sample.weight * basis
                               .at(patch.centre.x.si() + c * sample.along.si() - s * sample.across.si(),
                                   patch.centre.y.si() + s * sample.along.si() + c * sample.across.si())
                               .value;
  return out;
}

/// The gasket as many small patches, each a spring to its own points.
void addGasket(MatrixXd& k, const PlateOnGasket& plate, const BoxBasis& basis) {
  constexpr int kPieces = 120;
  const auto& path = std::get<GasketPath>(plate.gasket);
  Patches pieces;
  const double perLength = plate.gasketStiffness.si() / polygonLength(path.corners).si();
  for (const PathPiece& piece : pathPieces(path, kPieces, pieces))
    for (const PatchSample& sample : pieces.forms[static_cast<std::size_t>(piece.patch.form)]) {
      const VectorXd terms = average({{sample.along, sample.across, 1}}, piece.patch, basis);
      k.topLeftCorner(terms.size(), terms.size()) +=
          perLength * piece.length.si() * sample.weight * terms * terms.transpose();
    }
}

}  // namespace

std::vector<PathPiece> pathPieces(const GasketPath& path, int pieces, Patches& patches) {
  const double pitch = polygonLength(path.corners).si() / pieces;
  std::vector<PathPiece> out;
  for (std::size_t i = 0; i < path.corners.size(); ++i) {
    const Point& from = path.corners[i];
    const Point& to = path.corners[(i + 1) % path.corners.size()];
    const Length dx = to.x - from.x;
    const Length dy = to.y - from.y;
    const double length = std::hypot(dx.si(), dy.si());
    const int count = static_cast<int>(std::ceil(length / pitch));
    const int form = patches.add(rectangleForm(metres(length / count), path.width));
    for (int k = 0; k < count; ++k) {
      const double at = (k + 0.5) / count;
      const Point middle{from.x + at * dx, from.y + at * dy};
      out.push_back({{middle, radians(std::atan2(dy.si(), dx.si())), form}, metres(length / count)});
    }
  }
  return out;
}

Flexibility outlineFlexibility(const PlateOnGasket& plate, const Patches& patches) {
  const auto& corners = std::get<PolygonOutline>(plate.plate.shape).corners;
  const BoxBasis basis(corners);
  MatrixXd k = plateStiffness(plate.plate, basis, samplesOver(corners));
  addGasket(k, plate, basis);
  MatrixXd loads = MatrixXd::Zero(k.rows(), static_cast<Index>(patches.patches.size()));
  for (std::size_t i = 0; i < patches.patches.size(); ++i) {
    const Patch& patch = patches.patches[i];
    loads.col(static_cast<Index>(i)).head(BoxBasis::size()) =
        average(patches.forms[static_cast<std::size_t>(patch.form)], patch, basis);
  }
  Flexibility out(static_cast<int>(loads.cols()));
  Eigen::Map<MatrixXd>(out.data(), loads.cols(), loads.cols()) = loads.transpose() * k.llt().solve(loads);
  return out;
}

}  // namespace cw

#include "core/settling/plate_annulus.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "core/settling/plate_basis.h"

namespace cw {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

/// Patches of one form at one radius differ only in the angle at which they stand.
struct PatchClass {
  double radius = 0;
  int form = 0;
  std::vector<Eigen::Index> patches;
  std::vector<double> angles;
};

PatchClass& classFor(const Patch& patch, std::vector<PatchClass>& classes) {
  const double radius = std::hypot(patch.centre.x.si(), patch.centre.y.si());
  for (PatchClass& each : classes)
    if (each.form == patch.form && std::abs(each.radius - radius) < 1e-9 * (radius + 1e-3)) return each;
  return classes.emplace_back(PatchClass{radius, patch.form, {}, {}});
}

std::vector<PatchClass> classesOf(const std::vector<Patch>& patches) {
  std::vector<PatchClass> classes;
  for (std::size_t i = 0; i < patches.size(); ++i) {
    PatchClass& own = classFor(patches[i], classes);
    own.patches.push_back(static_cast<Eigen::Index>(i));
    own.angles.push_back(std::atan2(patches[i].centre.y.si(), patches[i].centre.x.si()));
  }
  return classes;
}

/// The radial Ritz problem of one Fourier term m: w = W cos mθ, βr = R cos mθ, βθ = T sin mθ.
class RadialPlate {
 public:
  RadialPlate(const PlateOnGasket& joint, int degree)
      : m_joint(joint),
        m_ring(std::get<Annulus>(joint.plate.shape)),
        m_gasket(std::get<Annulus>(joint.gasket)),
        m_basis{m_ring.inner.si(), m_ring.outer.si(), degree} {
    const double h = joint.plate.thickness.si();
    const double modulus = joint.plate.modulus.si();
    const double nu = joint.plate.poisson;
    m_bending = modulus * h * h * h / (12 * (1 - nu * nu));
    m_shear = 5.0 / 6 * modulus / (2 * (1 + nu)) * h;
    m_bed = joint.gasketStiffness.si() / gasketArea(m_gasket).si();
  }

  int terms() const { return m_basis.size(); }

  MatrixXd stiffness(int m) const {
    MatrixXd k = MatrixXd::Zero(3 * terms(), 3 * terms());
    const int points = terms() + 4;
    addPlate(k, m, gaussRule(points, m_ring.inner.si(), m_ring.outer.si()));
    addGasket(k, gaussRule(points, m_gasket.inner.si(), m_gasket.outer.si()));
    if (m != 1) addHub(k);  // the pipe follows a tilt
    return k * (m == 0 ? 2 * kPi : kPi);
  }

  /// What the term's movement averages to over a patch that stands at angle 0.
  VectorXd average(const PatchForm& form, double radius, int m) const {
    VectorXd out = VectorXd::Zero(3 * terms());
    VectorXd values(terms());
    VectorXd slopes(terms());
    for (const PatchSample& sample : form) {
      const double x = radius + sample.along.si();
      const double y = sample.across.si();
      m_basis.at(std::hypot(x, y), values.data(), slopes.data());
      out.head(terms()) += sample.weight * std::cos(m * std::atan2(y, x)) * values;
    }
    return out;
  }

 private:
  void addPlate(MatrixXd& k, int m, const GaussRule& rule) const {
    const int n = terms();
    const double nu = m_joint.plate.poisson;
    VectorXd values(n);
    VectorXd slopes(n);
    MatrixXd strain = MatrixXd::Zero(5, 3 * n);  // κr, κθ, κrθ, γr, γθ
    Eigen::Matrix<double, 5, 5> law = Eigen::Matrix<double, 5, 5>::Zero();
    law.topLeftCorner<2, 2>() << m_bending, nu * m_bending, nu * m_bending, m_bending;
    law.diagonal().tail<3>() << (1 - nu) / 2 * m_bending, m_shear, m_shear;
    for (std::size_t q = 0; q < rule.points.size(); ++q) {
      const double r = rule.points[q];
      m_basis.at(r, values.data(), slopes.data());
      const VectorXd over = values / r;
      strain.row(0).segment(n, n) = slopes;
      strain.row(1).segment(n, n) = over;
      strain.row(1).tail(n) = m * over;
      strain.row(2).segment(n, n) = -m * over;
      strain.row(2).tail(n) = slopes - over;
      strain.row(3).head(n) = slopes;
      strain.row(3).segment(n, n) = values;
      strain.row(4).head(n) = -m * over;
      strain.row(4).tail(n) = values;
      k.noalias() += rule.weights[q] * r * strain.transpose() * (law * strain);
    }
  }

  void addGasket(MatrixXd& k, const GaussRule& rule) const {
    VectorXd values(terms());
    VectorXd slopes(terms());
    for (std::size_t q = 0; q < rule.points.size(); ++q) {
      m_basis.at(rule.points[q], values.data(), slopes.data());
      k.topLeftCorner(terms(), terms()) +=
          m_bed * rule.weights[q] * rule.points[q] * values * values.transpose();
    }
  }

  void addHub(MatrixXd& k) const {
    VectorXd values(terms());
    VectorXd slopes(terms());
    m_basis.at(m_ring.inner.si(), values.data(), slopes.data());
    k.block(terms(), terms(), terms(), terms()) +=
        m_joint.hub.momentPerRadian.si() * m_ring.inner.si() * values * values.transpose();
  }

  const PlateOnGasket& m_joint;
  Annulus m_ring;
  Annulus m_gasket;
  LegendreBasis m_basis;
  double m_bending = 0;
  double m_shear = 0;
  double m_bed = 0;
};

double reach(const PatchForm& form) {
  double most = 0;
  for (const PatchSample& sample : form)
    most = std::max(most, std::hypot(sample.along.si(), sample.across.si()));
  return most;
}

/// Terms enough that the smallest patch is seen by several waves around, and several bends across.
struct Resolution {
  int waves;
  int degree;
};

Resolution resolutionFor(const Annulus& ring, const std::vector<PatchClass>& classes,
                         const Patches& patches) {
  double waves = 24;
  double degree = 10;
  for (const PatchClass& each : classes) {
    const double size = reach(patches.forms[static_cast<std::size_t>(each.form)]);
    waves = std::max(waves, 6 * each.radius / size);
    degree = std::max(degree, 2 * (ring.outer - ring.inner).si() / size);
  }
  return {static_cast<int>(std::min(waves, 400.0)), static_cast<int>(std::min(degree, 28.0))};
}

/// For every Fourier term, how much each class moves for a load of the term's form on each class.
std::vector<MatrixXd> amplitudesOf(const RadialPlate& radial, const std::vector<PatchClass>& classes,
                                   const Patches& patches, int waves) {
  MatrixXd averages(3 * radial.terms(), static_cast<Eigen::Index>(classes.size()));
  std::vector<MatrixXd> amplitudes;
  for (int m = 0; m <= waves; ++m) {
    for (std::size_t c = 0; c < classes.size(); ++c)
      averages.col(static_cast<Eigen::Index>(c)) =
          radial.average(patches.forms[static_cast<std::size_t>(classes[c].form)], classes[c].radius, m);
    amplitudes.push_back(averages.transpose() * radial.stiffness(m).ldlt().solve(averages));
  }
  return amplitudes;
}

/// cos mθ and sin mθ of every patch of a class, one patch a column.
MatrixXd turning(const PatchClass& patchClass, int waves) {
  MatrixXd out(2 * (waves + 1), static_cast<Eigen::Index>(patchClass.angles.size()));
  for (Eigen::Index i = 0; i < out.cols(); ++i)
    for (int m = 0; m <= waves; ++m) {
      const double angle = m * patchClass.angles[static_cast<std::size_t>(i)];
      out(2 * m, i) = std::cos(angle);
      out(2 * m + 1, i) = std::sin(angle);
    }
  return out;
}

VectorXd amplitudesBetween(const std::vector<MatrixXd>& amplitudes, std::size_t a, std::size_t b) {
  VectorXd out(2 * static_cast<Eigen::Index>(amplitudes.size()));
  for (std::size_t m = 0; m < amplitudes.size(); ++m)
    out.segment<2>(2 * static_cast<Eigen::Index>(m))
        .setConstant(amplitudes[m](static_cast<Eigen::Index>(a), static_cast<Eigen::Index>(b)));
  return out;
}

}  // namespace

Flexibility annulusFlexibility(const PlateOnGasket& plate, const Patches& patches) {
  const std::vector<PatchClass> classes = classesOf(patches.patches);
  const auto [waves, degree] = resolutionFor(std::get<Annulus>(plate.plate.shape), classes, patches);
  const std::vector<MatrixXd> amplitudes = amplitudesOf(RadialPlate(plate, degree), classes, patches, waves);
  std::vector<MatrixXd> turnings;
  for (const PatchClass& each : classes) turnings.push_back(turning(each, waves));

  // Φij = Σm a(m; class of i, class of j)·cos m(θi - θj): one matrix product for every two classes.
  Flexibility out(static_cast<int>(patches.patches.size()));
  Eigen::Map<MatrixXd> flexibility(out.data(), out.size(), out.size());
  for (std::size_t a = 0; a < classes.size(); ++a)
    for (std::size_t b = a; b < classes.size(); ++b) {
      const MatrixXd block =
          turnings[a].transpose() * (amplitudesBetween(amplitudes, a, b).asDiagonal() * turnings[b]);
      for (Eigen::Index i = 0; i < block.rows(); ++i)
        for (Eigen::Index j = 0; j < block.cols(); ++j) {
          const Eigen::Index row = classes[a].patches[static_cast<std::size_t>(i)];
          const Eigen::Index column = classes[b].patches[static_cast<std::size_t>(j)];
          flexibility(row, column) = flexibility(column, row) = block(i, j);
        }
    }
  return out;
}

}  // namespace cw

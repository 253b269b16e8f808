#include "core/settling/plate_rectangle.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "core/settling/plate_basis.h"

namespace cw {
namespace {

using Eigen::MatrixXd;
using Eigen::VectorXd;

/// Integrals of products of the basis along one direction: of values, of slope and value, of slopes.
struct Products {
  MatrixXd values;
  MatrixXd slopeValue;
  MatrixXd slopes;
};

Products products(const LegendreBasis& basis, double from, double to) {
  const int n = basis.size();
  Products out{MatrixXd::Zero(n, n), MatrixXd::Zero(n, n), MatrixXd::Zero(n, n)};
  const GaussRule rule = gaussRule(n, from, to);
  VectorXd value(n);
  VectorXd slope(n);
  for (std::size_t q = 0; q < rule.points.size(); ++q) {
    basis.at(rule.points[q], value.data(), slope.data());
    out.values += rule.weights[q] * value * value.transpose();
    out.slopeValue += rule.weights[q] * slope * value.transpose();
    out.slopes += rule.weights[q] * slope * slope.transpose();
  }
  return out;
}

/// Adds factor·(x ⊗ y) to the block of two of the three fields w, βx, βy.
void addProduct(MatrixXd& k, int rowField, int columnField, double factor, const MatrixXd& x,
                const MatrixXd& y) {
  const Eigen::Index ny = y.rows();
  const Eigen::Index field = x.rows() * ny;
  for (Eigen::Index p = 0; p < x.rows(); ++p)
    for (Eigen::Index q = 0; q < x.cols(); ++q)
      k.block(rowField * field + p * ny, columnField * field + q * ny, ny, ny) += factor * x(p, q) * y;
}

/// Mindlin's plate in the fields w, βx, βy with γ = grad w + β; only the upper blocks are filled.
MatrixXd plateStiffness(const Plate& plate, const Products& x, const Products& y) {
  const double h = plate.thickness.si();
  const double nu = plate.poisson;
  const double bending = plate.modulus.si() * h * h * h / (12 * (1 - nu * nu));
  const double twisting = bending * (1 - nu) / 2;
  const double shear = 5.0 / 6 * plate.modulus.si() / (2 * (1 + nu)) * h;
  const Eigen::Index n = 3 * x.values.rows() * y.values.rows();
  MatrixXd k = MatrixXd::Zero(n, n);
  addProduct(k, 0, 0, shear, x.slopes, y.values);
  addProduct(k, 0, 0, shear, x.values, y.slopes);
  addProduct(k, 0, 1, shear, x.slopeValue, y.values);
  addProduct(k, 0, 2, shear, x.values, y.slopeValue);
  addProduct(k, 1, 1, bending, x.slopes, y.values);
  addProduct(k, 1, 1, twisting, x.values, y.slopes);
  addProduct(k, 1, 1, shear, x.values, y.values);
  addProduct(k, 2, 2, bending, x.values, y.slopes);
  addProduct(k, 2, 2, twisting, x.slopes, y.values);
  addProduct(k, 2, 2, shear, x.values, y.values);
  addProduct(k, 1, 2, nu * bending, x.slopeValue, y.slopeValue.transpose());
  addProduct(k, 1, 2, twisting, x.slopeValue.transpose(), y.slopeValue);
  return k;
}

void addGasket(MatrixXd& k, const std::vector<Band>& bands, double bed, const LegendreBasis& x,
               const LegendreBasis& y) {
  for (const Band& band : bands)
    addProduct(k, 0, 0, band.sign * bed, products(x, band.fromX.si(), band.toX.si()).values,
               products(y, band.fromY.si(), band.toY.si()).values);
}

/// Column i: what every deflection term averages to over patch i.
MatrixXd averages(const Patches& patches, const LegendreBasis& x, const LegendreBasis& y) {
  MatrixXd out = MatrixXd::Zero(x.size() * y.size(), static_cast<Eigen::Index>(patches.patches.size()));
  VectorXd valueX(x.size());
  VectorXd valueY(y.size());
  VectorXd slope(std::max(x.size(), y.size()));
  for (std::size_t i = 0; i < patches.patches.size(); ++i) {
    const Patch& patch = patches.patches[i];
    const double c = std::cos(patch.turn.si());
    const double s = std::sin(patch.turn.si());
    auto column = out.col(static_cast<Eigen::Index>(i));
    for (const PatchSample& sample : patches.forms[static_cast<std::size_t>(patch.form)]) {
      x.at(patch.centre.x.si() + c * sample.along.si() - s * sample.across.si(), valueX.data(), slope.data());
      y.at(patch.centre.y.si() + s * sample.along.si() + c * sample.across.si(), valueY.data(), slope.data());
      for (int p = 0; p < x.size(); ++p)
        column.segment(p * y.size(), y.size()) += sample.weight * valueX[p] * valueY;
    }
  }
  return out;
}

/// The longer side gets up to 20 bends, the shorter one fewer in proportion.
int degreeFor(double side, double longest) {
  return std::clamp(static_cast<int>(std::lround(20 * std::sqrt(side / longest))), 10, 20);
}

LegendreBasis basisOver(double side, double longest) {
  return {-side / 2, side / 2, degreeFor(side, longest)};
}

}  // namespace

Flexibility rectangleFlexibility(const PlateOnGasket& plate, const Patches& patches) {
  const auto& shape = std::get<Rectangle>(plate.plate.shape);
  const double longest = std::max(shape.length, shape.width).si();
  const LegendreBasis x = basisOver(shape.length.si(), longest);
  const LegendreBasis y = basisOver(shape.width.si(), longest);
  const auto& bands = std::get<std::vector<Band>>(plate.gasket);
  const double bed = plate.gasketStiffness.si() / gasketArea(plate.gasket).si();

  MatrixXd k = plateStiffness(plate.plate, products(x, x.from, x.to), products(y, y.from, y.to));
  addGasket(k, bands, bed, x, y);
  const MatrixXd load = averages(patches, x, y);
  MatrixXd full = MatrixXd::Zero(k.rows(), load.cols());
  full.topRows(load.rows()) = load;
  const Eigen::LLT<MatrixXd, Eigen::Upper> factor(k);
  Flexibility out(static_cast<int>(load.cols()));
  Eigen::Map<MatrixXd>(out.data(), load.cols(), load.cols()) =
      load.transpose() * factor.solve(full).topRows(load.rows());
  return out;
}

}  // namespace cw

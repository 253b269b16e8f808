#pragma once
#include <vector>

namespace cw {

/// Points and weights of Gauss-Legendre quadrature.
struct GaussRule {
  std::vector<double> points;
  std::vector<double> weights;
};

/// The rule with `count` (at least 1) points on [from, to]; exact for polynomials of degree 2·count - 1.
/// Roots by Newton's method on the Legendre recurrence (Abramowitz & Stegun 25.4.29, from memory).
GaussRule gaussRule(int count, double from, double to);

/// Legendre polynomials of degree 0 … `degree`, stretched over [from, to], and their slopes there.
struct LegendreBasis {
  double from = -1;
  double to = 1;
  int degree = 0;

  int size() const { return degree + 1; }
  /// All values at `x`, written to `values`, and all derivatives d/dx to `slopes`; both hold size() numbers.
  void at(double x, double* values, double* slopes) const;
};

}  // namespace cw

#include "core/settling/plate_basis.h"

#include <cmath>

#include "core/units/quantity.h"

namespace cw {
namespace {

struct Root {
  double point;
  double slope;
};

Root legendreRoot(int count, double guess) {
  Root root{guess, 1};
  for (double step = 1; std::abs(step) > 1e-15;) {
    double before = 1;
    double value = root.point;
    for (int k = 2; k <= count; ++k) {
      const double next = ((2 * k - 1) * root.point * value - (k - 1) * before) / k;
      before = value;
      value = next;
    }
    root.slope = count * (root.point * value - before) / (root.point * root.point - 1);
    step = value / root.slope;
    root.point -= step;
    if (std::abs(root.point) < 1e-15) root.point = 0;
  }
  return root;
}

}  // namespace

GaussRule gaussRule(int count, double from, double to) {
  const double half = (to - from) / 2;
  if (count == 1) return {{from + half}, {2 * half}};
  GaussRule rule;
  for (int i = 0; i < count; ++i) {
    const Root root = legendreRoot(count, -std::cos(kPi * (i + 0.75) / (count + 0.5)));
    rule.points.push_back(from + half * (1 + root.point));
    rule.weights.push_back(2 * half / ((1 - root.point * root.point) * root.slope * root.slope));
  }
  return rule;
}

void LegendreBasis::at(double x, double* values, double* slopes) const {
  const double stretch = 2 / (to - from);
  const double t = (x - from) * stretch - 1;
  values[0] = 1;
  slopes[0] = 0;
  if (degree == 0) return;
  values[1] = t;
  slopes[1] = stretch;
  for (int k = 2; k <= degree; ++k) {
    values[k] = ((2 * k - 1) * t * values[k - 1] - (k - 1) * values[k - 2]) / k;
    slopes[k] = slopes[k - 2] + (2 * k - 1) * stretch * values[k - 1];
  }
}

}  // namespace cw

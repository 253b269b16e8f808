#pragma once
#include <vector>

#include "core/base/result.h"
#include "core/settling/plate_patch.h"

namespace cw {

/// How far each of n places moves towards the base for a force at each of them: a symmetric n × n matrix.
class Flexibility {
 public:
  explicit Flexibility(int size = 0)
      : m_size(size), m_values(static_cast<std::size_t>(size) * static_cast<std::size_t>(size)) {}

  int size() const { return m_size; }
  Compliance operator()(int row, int column) const { return metresPerNewton(m_values[index(row, column)]); }
  void set(int row, int column, Compliance value) { m_values[index(row, column)] = value.si(); }

  /// The values in m/N, column after column, for matrix algebra.
  double* data() { return m_values.data(); }
  const double* data() const { return m_values.data(); }

 private:
  std::size_t index(int row, int column) const {
    return static_cast<std::size_t>(column) * static_cast<std::size_t>(m_size) +
           static_cast<std::size_t>(row);
  }
  int m_size;
  std::vector<double> m_values;
};

/// A hub or pipe that resists the turning of the ring's bore, as moment per radian and length of the bore.
/// It is free to tilt as a whole.
struct Hub {
  Force momentPerRadian;  ///< N·m per rad and m

  /// A long thin cylinder whose end cannot widen: 2·β·D with β⁴ = 3(1 - ν²)/(r·t)², D = E·t³/12(1 - ν²)
  /// (thin shell theory; Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, §114, from memory).
  static Hub cylinder(Length meanRadius, Length wall, Stress modulus, double poisson);
};

/// A plate on a gasket that answers like even springs, both ways: what the flexibility is computed from.
struct PlateOnGasket {
  Plate plate;
  GasketShape gasket;
  Stiffness gasketStiffness;  ///< of the whole gasket, spread evenly over its face
  Hub hub = {};               ///< none where 0; rings only
  bool pair = false;          ///< two such plates face to face on one gasket; movements are approaches
};

/// Flexibility between the patches, from Mindlin's plate theory with shear factor 5/6 (physics) by Ritz's
/// method: Fourier terms around and Legendre polynomials across a ring or disc, Legendre products over a
/// rectangle or a free-form outline. Holes are not cut out; the base is rigid; gasket shear is left out.
/// Values that checkPlate refuses are the caller's mistake. Checked against finite elements and closed
/// forms in tests/published/settling_flange_test.cpp and plate_closed_form_test.cpp.
Flexibility plateFlexibility(const PlateOnGasket& plate, const Patches& patches);

/// Area of the gasket's face.
Area gasketArea(const GasketShape& gasket);

}  // namespace cw

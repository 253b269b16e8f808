#pragma once
#include <compare>

namespace cw {

/// A physical quantity: one double in coherent SI that only `si()` lets in or out by name.
/// Different kinds do not mix: torque + force does not compile, and torque is not energy.
template <class Tag>
class Quantity {
 public:
  constexpr Quantity() = default;
  static constexpr Quantity si(double value) { return Quantity(value); }
  constexpr double si() const { return m_value; }

  constexpr Quantity operator-() const { return Quantity(-m_value); }
  constexpr Quantity& operator+=(Quantity other) { return m_value += other.m_value, *this; }
  constexpr Quantity& operator-=(Quantity other) { return m_value -= other.m_value, *this; }
  friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.m_value + b.m_value); }
  friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.m_value - b.m_value); }
  friend constexpr Quantity operator*(Quantity a, double factor) { return Quantity(a.m_value * factor); }
  friend constexpr Quantity operator*(double factor, Quantity a) { return Quantity(a.m_value * factor); }
  friend constexpr Quantity operator/(Quantity a, double divisor) { return Quantity(a.m_value / divisor); }
  friend constexpr double operator/(Quantity a, Quantity b) { return a.m_value / b.m_value; }
  constexpr auto operator<=>(const Quantity&) const = default;

 private:
  constexpr explicit Quantity(double value) : m_value(value) {}
  double m_value = 0;
};

using Torque = Quantity<struct TorqueTag>;                                ///< N·m
using Force = Quantity<struct ForceTag>;                                  ///< N
using Length = Quantity<struct LengthTag>;                                ///< m
using Area = Quantity<struct AreaTag>;                                    ///< m²
using Stress = Quantity<struct StressTag>;                                ///< Pa; also pressure
using Angle = Quantity<struct AngleTag>;                                  ///< rad
using Stiffness = Quantity<struct StiffnessTag>;                          ///< N/m
using Compliance = Quantity<struct ComplianceTag>;                        ///< m/N
using Temperature = Quantity<struct TemperatureTag>;                      ///< K, a point on the scale
using TemperatureDifference = Quantity<struct TemperatureDifferenceTag>;  ///< K
using Mass = Quantity<struct MassTag>;                                    ///< kg
using Volume = Quantity<struct VolumeTag>;                                ///< m³
using Duration = Quantity<struct DurationTag>;                            ///< s

inline constexpr double kPi = 3.14159265358979323846;

constexpr Torque newtonMetres(double v) {
  return Torque::si(v);
}
constexpr Force newtons(double v) {
  return Force::si(v);
}
constexpr Force kilonewtons(double v) {
  return Force::si(v * 1e3);
}
constexpr Length metres(double v) {
  return Length::si(v);
}
constexpr Length millimetres(double v) {
  return Length::si(v * 1e-3);
}
constexpr Length inches(double v) {
  return Length::si(v * 0.0254);
}
constexpr Area squareMillimetres(double v) {
  return Area::si(v * 1e-6);
}
constexpr Area squareInches(double v) {
  return Area::si(v * 0.00064516);
}
constexpr Stress megapascals(double v) {
  return Stress::si(v * 1e6);
}
constexpr Stress gigapascals(double v) {
  return Stress::si(v * 1e9);
}
constexpr Angle radians(double v) {
  return Angle::si(v);
}
constexpr Angle degrees(double v) {
  return Angle::si(v * kPi / 180);
}
constexpr Stiffness newtonsPerMetre(double v) {
  return Stiffness::si(v);
}
constexpr Compliance metresPerNewton(double v) {
  return Compliance::si(v);
}
constexpr Duration seconds(double v) {
  return Duration::si(v);
}

constexpr double inMillimetres(Length v) {
  return v.si() * 1e3;
}
constexpr double inDegrees(Angle v) {
  return v.si() * 180 / kPi;
}
constexpr double inMegapascals(Stress v) {
  return v.si() * 1e-6;
}

constexpr Area operator*(Length a, Length b) {
  return Area::si(a.si() * b.si());
}
constexpr Force operator*(Stress stress, Area area) {
  return Force::si(stress.si() * area.si());
}
constexpr Force operator*(Area area, Stress stress) {
  return stress * area;
}
constexpr Stress operator/(Force force, Area area) {
  return Stress::si(force.si() / area.si());
}
constexpr Area operator/(Force force, Stress stress) {
  return Area::si(force.si() / stress.si());
}
constexpr Torque operator*(Force force, Length arm) {
  return Torque::si(force.si() * arm.si());
}
constexpr Torque operator*(Length arm, Force force) {
  return force * arm;
}
constexpr Force operator/(Torque torque, Length arm) {
  return Force::si(torque.si() / arm.si());
}
constexpr Length operator/(Torque torque, Force force) {
  return Length::si(torque.si() / force.si());
}
constexpr Stiffness operator/(Force force, Length length) {
  return Stiffness::si(force.si() / length.si());
}
constexpr Length operator/(Force force, Stiffness stiffness) {
  return Length::si(force.si() / stiffness.si());
}
constexpr Force operator*(Stiffness stiffness, Length length) {
  return Force::si(stiffness.si() * length.si());
}

}  // namespace cw

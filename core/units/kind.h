#pragma once
#include <string_view>

#include "core/units/quantity.h"

namespace cw {

/// How a kind of quantity is spoken of when something typed is refused, and whether it may be below zero.
struct Kind {
  std::string_view noun;     ///< "torque"
  std::string_view example;  ///< a clause for when there is no number either
  std::string_view instead;  ///< a clause with %1 for a number that lacks its unit
  bool mayBeNegative;
};

template <class Tag>
inline constexpr Kind kKindOf = {};

template <>
inline constexpr Kind kKindOf<TorqueTag>{"torque", "write a number and its unit, for example 60 in·lbf",
                                         "write %1 in·lbf, %1 ft·lbf or %1 N·m", false};
template <>
inline constexpr Kind kKindOf<ForceTag>{"force", "write a number and its unit, for example 17 kN",
                                        "write %1 kN or %1 lbf", false};
template <>
inline constexpr Kind kKindOf<LengthTag>{"length", "write a number and its unit, for example 12 mm",
                                         "write %1 mm or %1 in", true};
template <>
inline constexpr Kind kKindOf<AreaTag>{"area", "write a number and its unit, for example 58 mm2",
                                       "write %1 mm2 or %1 in2", false};
template <>
inline constexpr Kind kKindOf<StressTag>{
    "pressure or stress", "write a number and its unit, for example 640 MPa", "write %1 MPa or %1 psi", true};
template <>
inline constexpr Kind kKindOf<AngleTag>{"angle", "write a number and its unit, for example 90°",
                                        "write %1° or %1 rad", true};
template <>
inline constexpr Kind kKindOf<StiffnessTag>{"stiffness", "write a number and its unit, for example 400 kN/mm",
                                            "write %1 kN/mm or %1 N/m", false};
template <>
inline constexpr Kind kKindOf<TemperatureTag>{"temperature", "write a number and its unit, for example 20 °C",
                                              "write %1 °C or %1 °F", true};
template <>
inline constexpr Kind kKindOf<MassTag>{"mass", "write a number and its unit, for example 2 kg",
                                       "write %1 kg or %1 g", false};
template <>
inline constexpr Kind kKindOf<VolumeTag>{"volume", "write a number and its unit, for example 0.76 L",
                                         "write %1 L or %1 mL", false};
template <>
inline constexpr Kind kKindOf<DurationTag>{"time", "write a number and its unit, for example 20 min",
                                           "write %1 min, %1 h or %1 s", false};

}  // namespace cw

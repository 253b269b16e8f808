#pragma once

namespace cw::bounds {

// Text heights are those of capitals and figures, in millimetres on the glass.
inline constexpr double kNumber = 11;  ///< the torque and the position at the bench; our design
inline constexpr double kText = 5.8;   ///< bench text: 20 arc-minutes at 1 m, NUREG-0700 rev. 3, 11.4.1.5-1
inline constexpr double kSideLabel = 4.4;  ///< bench, beside the point; our design
inline constexpr double kDesk = 2.5;       ///< read at 45 cm: 19 arc-minutes; times the text scale

inline constexpr double kTextContrast = 7;     ///< WCAG 2.2, 1.4.6
inline constexpr double kControlContrast = 3;  ///< WCAG 2.2, 1.4.11

// Millimetres, at the bench.
inline constexpr double kMainHeight = 22, kMainWidth = 44;  ///< to sign and go on; our design, for gloves
inline constexpr double kTarget = 15, kGap = 4;             ///< anything else that is touched

inline constexpr double kSoftness = 0.13;  ///< millimetres, half a pixel at 96 dpi: rounding to pixels

}  // namespace cw::bounds

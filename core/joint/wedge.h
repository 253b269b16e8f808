#pragma once
#include "core/fastener/bearing_face.h"
#include "core/fastener/thread.h"

namespace cw {

// The screw as a wedge wound around a cylinder. Bare formulas without checks, for callers that have checked
// their input (checks.h); everything else in this room rests on them.

/// Friction coefficients between the threads and under the turned face.
struct Friction {
  double thread = 0;   ///< µt
  double bearing = 0;  ///< µb
  bool operator==(const Friction&) const = default;
};

inline constexpr Angle kFlank = degrees(30);              ///< half the thread angle of ISO 68-1 and ASME B1.1
inline constexpr double kTanFlank = 0.57735026918962576;  ///< tan 30°, also of the usual load cone

/// tan(φ+ρ′) with tan φ = P/(π·d2) and tan ρ′ = µt/cos α: the exact wedge.
/// Source: VDI 2230 part 1, eq. for MG; textbook power screw (α = 0 is a square thread).
double wedgeSlope(Length pitchDiameter, Length pitch, double threadFriction, Angle flank = kFlank);

/// tan(ρ′−φ): what must be overcome to turn the screw back. Negative if it runs back by itself.
double loosenSlope(Length pitchDiameter, Length pitch, double threadFriction, Angle flank = kFlank);

/// Torque in the threads per clamp load, (d2/2)·tan(φ+ρ′).
Length threadArm(const Thread& thread, double threadFriction);

/// Torque per clamp load in all, (d2/2)·tan(φ+ρ′) + µb·Db/2.
Length tighteningArm(const Thread& thread, Friction friction, Length meanBearing);

/// µt = µb that gives this torque per clamp load: root of the quadratic in tan ρ′. At or below zero if the
/// pitch alone costs more than that.
double commonFriction(const Thread& thread, Length arm, Length meanBearing);

/// Mean bearing diameter Db = (Do+dh)/2 (VDI 2230, ISO 16047).
Length meanBearingDiameter(const BearingFace& face);

/// Db = 1.25·d where the face is not known. Source: Shigley, Mechanical Engineering Design, 9th ed., eq.
/// 8-26.
Length assumedMeanBearing(const Thread& thread);

}  // namespace cw

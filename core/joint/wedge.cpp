#include "core/joint/wedge.h"

#include <cmath>

namespace cw {
namespace {

double leadSlope(Length pitchDiameter, Length pitch) {
  return pitch / (kPi * pitchDiameter);
}

double frictionSlope(double threadFriction, Angle flank) {
  return threadFriction / std::cos(flank.si());
}

}  // namespace

double wedgeSlope(Length pitchDiameter, Length pitch, double threadFriction, Angle flank) {
  const double lead = leadSlope(pitchDiameter, pitch);
  const double friction = frictionSlope(threadFriction, flank);
  return (lead + friction) / (1 - lead * friction);
}

double loosenSlope(Length pitchDiameter, Length pitch, double threadFriction, Angle flank) {
  const double lead = leadSlope(pitchDiameter, pitch);
  const double friction = frictionSlope(threadFriction, flank);
  return (friction - lead) / (1 + lead * friction);
}

Length threadArm(const Thread& thread, double threadFriction) {
  return thread.pitchDiameter / 2 * wedgeSlope(thread.pitchDiameter, thread.pitch, threadFriction);
}

Length tighteningArm(const Thread& thread, Friction friction, Length meanBearing) {
  return threadArm(thread, friction.thread) + meanBearing / 2 * friction.bearing;
}

double commonFriction(const Thread& thread, Length arm, Length meanBearing) {
  // With r = tan ρ′ and t = tan φ:  (d2/2)(t+r)/(1−t·r) + b·r = a,  b = (Db/2)·cos 30°,
  // hence  −b·t·r² + (d2/2 + b + a·t)·r + (d2/2)·t − a = 0; the smaller root is the physical one.
  const double half = thread.pitchDiameter.si() / 2;
  const double t = leadSlope(thread.pitchDiameter, thread.pitch);
  const double b = meanBearing.si() / 2 * std::cos(kFlank.si());
  const double linear = half + b + arm.si() * t;
  const double constant = half * t - arm.si();
  const double root = std::sqrt(linear * linear + 4 * b * t * constant);
  return -2 * constant / (linear + root) * std::cos(kFlank.si());
}

Length meanBearingDiameter(const BearingFace& face) {
  return (face.outer + face.hole) / 2;
}

Length assumedMeanBearing(const Thread& thread) {
  return thread.diameter * 1.25;
}

}  // namespace cw

#include "core/joint/long_form.h"

#include "core/joint/checks.h"

namespace cw {
namespace {

Result<void> check(Friction friction, const Thread& thread, Length meanBearing) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkFriction("thread friction", friction.thread));
  CW_CHECK(checkFriction("bearing friction", friction.bearing));
  return checkPositive("mean bearing diameter", meanBearing, kMillimetre);
}

Result<void> checkLoad(Force load, const Thread& thread) {
  CW_CHECK(checkNotNegative("clamp load", load, kKilonewton));
  return checkBearable("clamp load", text(load, kKilonewton, 4), load, thread);
}

}  // namespace

Result<Torque> torqueByFriction(Force load, Friction friction, const Thread& thread, Length meanBearing) {
  CW_CHECK(check(friction, thread, meanBearing));
  CW_CHECK(checkLoad(load, thread));
  return load * tighteningArm(thread, friction, meanBearing);
}

Result<Force> loadByFriction(Torque torque, Friction friction, const Thread& thread, Length meanBearing) {
  CW_CHECK(check(friction, thread, meanBearing));
  CW_CHECK(checkNotNegative("torque", torque, kNewtonMetre));
  const Force load = torque / tighteningArm(thread, friction, meanBearing);
  CW_CHECK(checkBearable("torque", text(torque, kNewtonMetre, 4), load, thread));
  return load;
}

Result<Torque> looseningTorque(Force load, Friction friction, const Thread& thread, Length meanBearing) {
  CW_CHECK(check(friction, thread, meanBearing));
  CW_CHECK(checkLoad(load, thread));
  const Length inThread =
      thread.pitchDiameter / 2 * loosenSlope(thread.pitchDiameter, thread.pitch, friction.thread);
  return load * (inThread + meanBearing / 2 * friction.bearing);
}

Result<double> nutFactorOf(Friction friction, const Thread& thread, Length meanBearing) {
  CW_CHECK(check(friction, thread, meanBearing));
  return tighteningArm(thread, friction, meanBearing) / thread.diameter;
}

Result<double> frictionBehind(double nutFactor, const Thread& thread, Length meanBearing) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkNutFactor("nut factor", nutFactor));
  CW_CHECK(checkPositive("mean bearing diameter", meanBearing, kMillimetre));
  const double friction = commonFriction(thread, nutFactor * thread.diameter, meanBearing);
  if (friction > 0) return friction;
  return fail(
      ErrorCode::OutOfRange, "nut factor", significant(nutFactor, 4),
      {"%1 is less than the pitch of %2 alone costs", {significant(nutFactor, 4), thread.designation}},
      "give a nut factor measured on such fasteners");
}

}  // namespace cw

#include "core/joint/nut_factor.h"

#include "core/joint/checks.h"

namespace cw {

Result<Torque> torqueByNutFactor(Force load, double nutFactor, const Thread& thread) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkNutFactor("nut factor", nutFactor));
  CW_CHECK(checkNotNegative("clamp load", load, kKilonewton));
  CW_CHECK(checkBearable("clamp load", text(load, kKilonewton, 4), load, thread));
  return nutFactor * load * thread.diameter;
}

Result<Force> loadByNutFactor(Torque torque, double nutFactor, const Thread& thread) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkNutFactor("nut factor", nutFactor));
  CW_CHECK(checkNotNegative("torque", torque, kNewtonMetre));
  const Force load = torque / (nutFactor * thread.diameter);
  CW_CHECK(checkBearable("torque", text(torque, kNewtonMetre, 4), load, thread));
  return load;
}

Result<double> nutFactorFrom(Torque torque, Force load, const Thread& thread) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkPositive("torque", torque, kNewtonMetre));
  CW_CHECK(checkPositive("clamp load", load, kKilonewton));
  return torque / (load * thread.diameter);
}

}  // namespace cw

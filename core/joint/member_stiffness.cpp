#include "core/joint/member_stiffness.h"

#include <cmath>

#include "core/joint/checks.h"
#include "core/joint/wedge.h"

namespace cw {
namespace {

Result<void> check(const Frustum& frustum, Length bolt) {
  CW_CHECK(checkPositive("thickness", frustum.thickness, kMillimetre));
  CW_CHECK(checkPositive("modulus", frustum.modulus, kGigapascal));
  CW_CHECK(checkPositive("bolt diameter", bolt, kMillimetre));
  CW_CHECK(checkFinite("cone diameter", frustum.start.si()));
  if (frustum.start > bolt) return {};
  return fail(ErrorCode::OutOfRange, "cone diameter", text(frustum.start, kMillimetre, 4),
              {"%1 is not larger than the bolt", {text(frustum.start, kMillimetre, 4)}},
              "give the diameter of the bearing face, often 1.5 bolt diameters");
}

}  // namespace

Result<Worked<Stiffness>> frustumStiffness(const Frustum& frustum, Length bolt) {
  CW_CHECK(check(frustum, bolt));
  const double d = bolt.si();
  const double start = frustum.start.si();
  const double wide = start + 2 * frustum.thickness.si() * kTanFlank;
  const double logarithm = std::log((wide - d) * (start + d) / ((wide + d) * (start - d)));
  const Stiffness stiffness = newtonsPerMetre(kPi * frustum.modulus.si() * d * kTanFlank / logarithm);
  Working working;
  working.formula = "k = π·E·d·tan30°/ln{[(2t·tan30°+D−d)(D+d)]/[(2t·tan30°+D+d)(D−d)]}";
  working.give("d", "bolt diameter", bolt, kMillimetre, "stated");
  working.give("D", "diameter at the narrow end", frustum.start, kMillimetre, "stated");
  working.give("t", "thickness", frustum.thickness, kMillimetre, "stated");
  working.give("E", "Young's modulus", frustum.modulus, kMegapascal, "stated");
  working.step("W", "D+2·t·tan(30°)", metres(wide), kMillimetre);
  working.step("k", "π·E·d·tan(30°)/ln((W-d)·(D+d)/((W+d)·(D-d)))/1000", stiffness, kKilonewtonPerMillimetre);
  working.validity = {"the parts are wide enough to hold the cone"};
  working.sources = {"Shigley, 9th ed., eq. 8-20, half angle 30°"};
  return Worked<Stiffness>{stiffness, std::move(working)};
}

Result<Stiffness> inSeries(const std::vector<Stiffness>& layers) {
  if (layers.empty())
    return fail(ErrorCode::InvalidInput, "layers", "", "there are no layers", "give at least one");
  double compliance = 0;
  for (Stiffness layer : layers) {
    CW_CHECK(checkPositive("layer stiffness", layer, kKilonewtonPerMillimetre));
    compliance += 1 / layer.si();
  }
  return newtonsPerMetre(1 / compliance);
}

Result<Worked<Stiffness>> memberStiffness(const MemberFit& fit, Stress modulus, Length bolt, Length grip) {
  CW_CHECK(checkPositive("modulus", modulus, kGigapascal));
  CW_CHECK(checkPositive("bolt diameter", bolt, kMillimetre));
  CW_CHECK(checkPositive("grip length", grip, kMillimetre));
  const Stiffness stiffness =
      newtonsPerMetre(modulus.si() * bolt.si() * fit.a * std::exp(fit.b * (bolt / grip)));
  Working working;
  working.formula = "km = E·d·A·exp(B·d/l)";
  working.give("E", "Young's modulus", modulus, kMegapascal, "stated");
  working.give("d", "bolt diameter", bolt, kMillimetre, "stated");
  working.give("l", "grip", grip, kMillimetre, "stated");
  working.give("A", "fit", fit.a, "Wileman, Choudhury & Green 1991");
  working.give("B", "fit", fit.b, "Wileman, Choudhury & Green 1991");
  working.step("km", "E·d·A·exp(B·d/l)/1000", stiffness, kKilonewtonPerMillimetre);
  working.validity = {"one material throughout, standard washer faces"};
  working.sources = {"Shigley, 9th ed., eq. 8-23"};
  return Worked<Stiffness>{stiffness, std::move(working)};
}

Result<Worked<double>> jointConstant(Stiffness bolt, Stiffness members) {
  CW_CHECK(checkPositive("bolt stiffness", bolt, kKilonewtonPerMillimetre));
  CW_CHECK(checkPositive("member stiffness", members, kKilonewtonPerMillimetre));
  const double constant = bolt / (bolt + members);
  Working working;
  working.formula = "C = kb/(kb + km)";
  working.give("kb", "bolt stiffness", bolt, kKilonewtonPerMillimetre, "stated");
  working.give("km", "member stiffness", members, kKilonewtonPerMillimetre, "stated");
  working.step("C", "kb/(kb+km)", constant);
  working.sources = {"Shigley, 9th ed., eq. 8-24"};
  return Worked<double>{constant, std::move(working)};
}

WorkingLoads underLoad(Force clamp, Force working, double jointConstant) {
  return {clamp + jointConstant * working, clamp - (1 - jointConstant) * working};
}

}  // namespace cw

#include "core/joint/adapter.h"

#include <cmath>

#include "core/joint/checks.h"

namespace cw {
namespace {

Length effectiveLength(const Lever& lever) {
  const bool square = std::abs(inDegrees(lever.angle) - 90) < 1e-9;
  return lever.wrench + lever.offset * (square ? 0 : std::cos(lever.angle.si()));
}

/// What a hand turns; anything else is a slip of the unit.
constexpr Length kShortest = millimetres(1), kLongest = metres(10);

Result<void> checkLength(const char* place, Length length, Length least) {
  CW_CHECK(checkFinite(place, length.si()));
  if (length >= least && length <= kLongest) return {};
  return fail(ErrorCode::OutOfRange, place, text(length, kMillimetre, 4),
              {"%1 is out of range", {text(length, kMillimetre, 4)}},
              {"give %1 mm to 10 m", {significant(inMillimetres(least), 2)}});
}

Result<void> check(const Lever& lever) {
  CW_CHECK(checkLength("wrench length", lever.wrench, kShortest));
  CW_CHECK(checkLength("adapter offset", lever.offset, Length()));
  CW_CHECK(checkFinite("adapter angle", lever.angle.si()));
  if (lever.angle < radians(0) || inDegrees(lever.angle) > 180 + 1e-9)
    return fail(ErrorCode::OutOfRange, "adapter angle", text(lever.angle, kDegree, 4),
                {"%1 is no angle of an adapter", {text(lever.angle, kDegree, 4)}},
                "give 0° in line, 90° square, up to 180° toward the handle");
  if (effectiveLength(lever).si() > 1e-9 * lever.wrench.si()) return {};
  return fail(ErrorCode::OutOfRange, "adapter offset", text(lever.offset, kMillimetre, 4),
              {"an adapter of %1 toward the handle of a %2 wrench turns nothing",
               {text(lever.offset, kMillimetre, 4), text(lever.wrench, kMillimetre, 4)}},
              "turn the adapter outward or square");
}

Working leverWorking(const Lever& lever) {
  Working working;
  working.formula = "TW = T·L/(L + E·cos θ)";
  working.give("L", "wrench, drive centre to hand", lever.wrench, kMillimetre, "stated");
  working.give("E", "adapter, drive centre to fastener", lever.offset, kMillimetre, "stated");
  working.give("θ", "angle from the wrench's axis", lever.angle, kDegree, "stated");
  working.step("Leff", "L+E·cos(θ°)", effectiveLength(lever), kMillimetre);
  working.validity = {"pulled at the point the length is measured to, in the plane of the adapter"};
  working.sources = {"US Army TM 9-254, figures 4-5 and 4-6"};
  return working;
}

}  // namespace

Result<Worked<Torque>> settingFor(Torque applied, const Lever& lever) {
  CW_CHECK(checkPositive("torque", applied, kNewtonMetre));
  CW_CHECK(check(lever));
  const Torque setting = applied * (lever.wrench / effectiveLength(lever));
  CW_CHECK(checkPositive("setting", setting, kNewtonMetre));
  Working working = leverWorking(lever);
  working.give("T", "torque at the fastener", applied, kNewtonMetre, "stated");
  working.step("TW", "T·L/Leff", setting, kNewtonMetre);
  return Worked<Torque>{setting, std::move(working)};
}

Result<Worked<Torque>> appliedBy(Torque setting, const Lever& lever) {
  CW_CHECK(checkPositive("setting", setting, kNewtonMetre));
  CW_CHECK(check(lever));
  const Torque applied = setting * (effectiveLength(lever) / lever.wrench);
  CW_CHECK(checkPositive("torque", applied, kNewtonMetre));
  Working working = leverWorking(lever);
  working.give("TW", "setting of the wrench", setting, kNewtonMetre, "stated");
  working.step("T", "TW·Leff/L", applied, kNewtonMetre);
  return Worked<Torque>{applied, std::move(working)};
}

}  // namespace cw

#include "core/joint/bolt_stiffness.h"

#include "core/joint/checks.h"

namespace cw {
namespace {

Result<void> check(const BoltGrip& grip) {
  CW_CHECK(checkNotNegative("plain length", grip.plain, kMillimetre));
  CW_CHECK(checkNotNegative("threaded length", grip.threaded, kMillimetre));
  CW_CHECK(checkPositive("grip length", grip.plain + grip.threaded, kMillimetre));
  CW_CHECK(checkPositive("shank area", grip.shank, kSquareMillimetre));
  CW_CHECK(checkPositive("stress area", grip.stressArea, kSquareMillimetre));
  return checkPositive("modulus", grip.modulus, kGigapascal);
}

}  // namespace

Result<Worked<Stiffness>> boltStiffness(const BoltGrip& grip) {
  CW_CHECK(check(grip));
  const double compliance =
      grip.threaded.si() / grip.stressArea.si() + grip.plain.si() / grip.shank.si();  // 1/m
  const Stiffness stiffness = newtonsPerMetre(grip.modulus.si() / compliance);
  Working working;
  working.formula = "kb = Ad·At·E/(Ad·lt + At·ld)";
  working.give("Ad", "shank area", grip.shank, kSquareMillimetre, "stated");
  working.give("At", "stress area", grip.stressArea, kSquareMillimetre, "stated");
  working.give("ld", "plain length in the grip", grip.plain, kMillimetre, "stated");
  working.give("lt", "threaded length in the grip", grip.threaded, kMillimetre, "stated");
  working.give("E", "Young's modulus", grip.modulus, kMegapascal, "stated");
  working.step("kb", "Ad·At·E/(Ad·lt+At·ld)/1000", stiffness, kKilonewtonPerMillimetre);
  working.validity = {"elastic; head and nut rigid"};
  working.sources = {"Shigley, 9th ed., eq. 8-17"};
  return Worked<Stiffness>{stiffness, std::move(working)};
}

}  // namespace cw

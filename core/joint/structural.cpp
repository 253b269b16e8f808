#include "core/joint/structural.h"

#include "core/joint/checks.h"

namespace cw {
namespace {

Result<double> inDiameters(const std::string& place, Length length, const Thread& thread, double most) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkPositive(place, length, kMillimetre));
  const double ratio = length / thread.diameter;
  if (ratio <= most) return ratio;
  return fail(ErrorCode::OutOfRange, place, text(length, kMillimetre, 4),
              {"%1 is more than %2 diameters of %3",
               {text(length, kMillimetre, 4), significant(most, 3), thread.designation}},
              "find the turn by a test on such bolts");
}

}  // namespace

Result<Force> structuralPretension(Stress tensile, const Thread& thread) {
  CW_CHECK(checkThread(thread));
  CW_CHECK(checkPositive("tensile strength", tensile, kMegapascal));
  return 0.7 * tensile * thread.stressArea;
}

Result<Angle> turnFromSnug(Length boltLength, const Thread& thread, SlopedFaces sloped) {
  CW_TRY(ratio, inDiameters("bolt length", boltLength, thread, 12));
  const double even = ratio <= 4 ? 120 : ratio <= 8 ? 180 : 240;
  return degrees(even + 60 * static_cast<int>(sloped));
}

Result<Angle> combinedMethodTurn(Length thickness, const Thread& thread) {
  CW_TRY(ratio, inDiameters("clamped thickness", thickness, thread, 10));
  return degrees(ratio < 2 ? 60 : ratio < 6 ? 90 : 120);
}

}  // namespace cw

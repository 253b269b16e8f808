#include "core/fastener/profile.h"

namespace cw {
namespace {

Length profileHeight(Length pitch) {
  constexpr double kHalfRootOfThree = 0.86602540378443864676;
  return kHalfRootOfThree * pitch;
}

Area circle(Length diameter) {
  return kPi / 4 * (diameter * diameter);
}

}  // namespace

Length pitchDiameter(Length diameter, Length pitch) {
  return diameter - 3.0 / 4 * profileHeight(pitch);
}

Length minorDiameter(Length diameter, Length pitch) {
  return diameter - 5.0 / 4 * profileHeight(pitch);
}

Length rootDiameter(ThreadSystem system, Length diameter, Length pitch) {
  return diameter - (system == ThreadSystem::Metric ? 17.0 / 12 : 11.0 / 8) * profileHeight(pitch);
}

Area stressAreaByFormula(ThreadSystem system, Length diameter, Length pitch) {
  if (system == ThreadSystem::Unified) return circle(diameter - 0.9743 * pitch);
  return circle((pitchDiameter(diameter, pitch) + rootDiameter(system, diameter, pitch)) / 2);
}

std::string stressAreaSource(const Thread& thread) {
  if (thread.stressAreaTabulated) return thread.provenance.source;
  return thread.system == ThreadSystem::Metric ? "formula of ISO 898-1, 9.1.6.1: π/4·((d2 + d3)/2)²"
                                               : "formula of ASME B1.1, appendix B: π/4·(d − 0.9743·P)²";
}

}  // namespace cw

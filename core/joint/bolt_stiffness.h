#pragma once
#include "core/base/result.h"
#include "core/joint/working.h"

namespace cw {

/// The part of a bolt that stretches between head and nut.
struct BoltGrip {
  Length plain;     ///< ld, unthreaded length in the grip; may be zero
  Length threaded;  ///< lt, threaded length in the grip; may be zero, not both
  Area shank;       ///< Ad
  Area stressArea;  ///< At
  Stress modulus;   ///< Young's modulus of the bolt
};

/// kb = Ad·At·E/(Ad·lt + At·ld). Lengths zero or more and not both zero, areas and modulus above zero:
/// OutOfRange naming the argument otherwise. Head and nut are taken as rigid.
/// Source: Shigley, Mechanical Engineering Design, 9th ed., eq. 8-17. Worked example: WorkedExamples.E26.
Result<Worked<Stiffness>> boltStiffness(const BoltGrip& grip);

}  // namespace cw

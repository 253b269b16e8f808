#pragma once
#include <string>

#include "core/base/provenance.h"
#include "core/units/quantity.h"

namespace cw {

enum class ThreadSystem { Metric, Unified };
enum class Hand { Right, Left };

/// Basic dimensions of a 60° screw thread (ISO 68-1 / ASME B1.1 profile). All lengths are positive and
/// rootDiameter < pitchDiameter < diameter.
struct Thread {
  std::string designation;  ///< "M8", "M8x1", "3/8-16 UNC", "#10-32 UNF"
  ThreadSystem system = ThreadSystem::Metric;
  Hand hand = Hand::Right;
  Length diameter;                   ///< d, nominal major diameter
  Length pitch;                      ///< P
  Length pitchDiameter;              ///< d2
  Length minorDiameter;              ///< D1, internal thread, basic
  Length rootDiameter;               ///< d3, external thread root (ISO 898-1; UNR for unified)
  Area stressArea;                   ///< As: tabulated where a table has it, else by formula
  bool stressAreaTabulated = false;  ///< false: by formula, see profile.h
  Provenance provenance;
  std::string note = {};  ///< "coarse", "fine" …
};

}  // namespace cw

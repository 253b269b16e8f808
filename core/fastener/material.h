#pragma once
#include <string>
#include <vector>

#include "core/fastener/thread.h"

namespace cw {

/// What a fastener is screwed into: the mother thread's material.
struct TappedMaterial {
  std::string name;      ///< "cast aluminium A356-T6", unique
  std::string family;    ///< "cast aluminium", "grey iron", "steel", "brass", "bronze", "plastic" …
  Stress shearStrength;  ///< minimum ultimate shear strength
  Stress modulus;        ///< Young's modulus
  std::string caution;   ///< shown wherever a result rests on it; empty if none
  Provenance provenance;
  std::vector<std::string> aliases = {};
  std::string note = {};
};

}  // namespace cw

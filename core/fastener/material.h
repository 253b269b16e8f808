#pragma once
#include <optional>
#include <string>

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
};

/// Ring on which a head or nut turns: bearing diameter Do outside, clearance hole dh inside.
struct BearingFace {
  std::string name;    ///< "hex ISO 4014", "hex flange ISO 15071", "socket head ISO 4762"
  std::string thread;  ///< designation it belongs to
  Length outer;        ///< Do (dw of the head)
  Length hole;         ///< dh (clearance hole, ISO 273 medium or ASME B18.2.8 normal)
  Provenance provenance;
};

}  // namespace cw

#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/fastener/thread.h"
#include "core/units/unit.h"

namespace cw {

/// Minimum strength of a bolt grade in one range of sizes. A grade whose strength depends on size has
/// several rows; `Catalogue::grade` picks the one that a thread falls in. Where two rows of a grade share a
/// border, the size on the border belongs to the row that ends there.
struct Grade {
  std::string name;                    ///< "8.8", "SAE 5", "ASTM A193 B7", "A2-70"
  Length from;                         ///< smallest nominal diameter
  Length upTo;                         ///< largest nominal diameter, included; from < upTo
  std::optional<Stress> proof;         ///< Sp; none where the standard states none
  Stress yield;                        ///< lower yield or 0.2 % proof stress, minimum
  Stress tensile;                      ///< Rm, minimum
  std::optional<ThreadSystem> system;  ///< none: used with both
  Provenance provenance;
  std::vector<std::string> aliases = {};  ///< other names it goes by: "grade 5"
  std::string note = {};
  const LengthUnit* sizeUnit = &kMillimetre;    ///< in which the source states sizes
  const StressUnit* stressUnit = &kMegapascal;  ///< in which the source states strength
};

}  // namespace cw

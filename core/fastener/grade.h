#pragma once
#include <optional>
#include <string>

#include "core/fastener/thread.h"

namespace cw {

/// Minimum strength of a bolt grade in one range of sizes. A grade whose strength depends on size has
/// several rows; `strengthOf` in the catalogue picks the one that a thread falls in.
struct Grade {
  std::string name;                    ///< "8.8", "SAE 5", "ASTM A193 B7", "A2-70"
  Length above;                        ///< sizes greater than this …
  Length upTo;                         ///< … up to and including this
  std::optional<Stress> proof;         ///< Sp; none where the standard states none
  Stress yield;                        ///< lower yield or 0.2 % proof stress, minimum
  Stress tensile;                      ///< Rm, minimum
  std::optional<ThreadSystem> system;  ///< none: used with both
  Provenance provenance;
};

}  // namespace cw

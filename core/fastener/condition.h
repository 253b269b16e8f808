#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/fastener/thread.h"

namespace cw {

/// low <= typical <= high.
struct Range {
  double low = 0;
  double typical = 0;
  double high = 0;
  bool operator==(const Range&) const = default;
};

/// State of threads and bearing face: what the nut factor or the friction depends on.
/// At least one of the three ranges is present. Dimensionless: nut factor within (0, 1], friction within
/// (0, 0.5].
struct Condition {
  std::string name;                       ///< "dry", "oiled", "moly paste"; unique, lower case
  std::string label;                      ///< as shown: "Steel, dry, as received"
  std::optional<Range> nutFactor;         ///< K of T = K·F·d
  std::optional<Range> threadFriction;    ///< µt
  std::optional<Range> bearingFriction;   ///< µb
  Provenance provenance;                  ///< sources of all ranges; seen only if each was
  std::vector<std::string> aliases = {};  ///< other names it goes by: "lubed"
  std::string note = {};
};

}  // namespace cw

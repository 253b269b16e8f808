#pragma once
#include <optional>
#include <string>

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
/// At least one of `nutFactor` and `friction` is present. Dimensionless; friction within (0, 0.5].
struct Condition {
  std::string name;                      ///< "dry", "oiled", "moly paste"; unique, lower case
  std::string label;                     ///< as shown: "Steel, dry, as received"
  std::optional<Range> nutFactor;        ///< K of T = K·F·d
  std::optional<Range> threadFriction;   ///< µt
  std::optional<Range> bearingFriction;  ///< µb
  Provenance provenance;
};

}  // namespace cw

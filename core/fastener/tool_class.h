#pragma once
#include <string>

#include "core/fastener/thread.h"
#include "core/units/quantity.h"

namespace cw {

/// What ISO 6789-1 allows a class of hand torque tools to be off, as a fraction of the setting or reading.
struct ToolClass {
  std::string type;         ///< "I" indicates, "II" is set
  std::string letter;       ///< "A" … "G"
  std::string description;  ///< "setting, fixed adjustment"
  double upToTenNewtonMetres = 0;
  double aboveTenNewtonMetres = 0;
  Provenance provenance;
  std::string note;

  double deviationAt(Torque torque) const {
    return torque <= newtonMetres(10) ? upToTenNewtonMetres : aboveTenNewtonMetres;
  }
};

}  // namespace cw

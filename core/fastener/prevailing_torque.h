#pragma once
#include <string>

#include "core/fastener/thread.h"
#include "core/units/stated.h"

namespace cw {

/// The least torque at which a locking fastener's own resistance still counts; below it the part is scrap.
struct PrevailingTorque {
  std::string thread;    ///< designation
  std::string fastener;  ///< "self-locking nut, reused"
  StatedTorque minimum;  ///< as printed
  Provenance provenance;
  std::string note;
};

}  // namespace cw

#pragma once
#include <optional>
#include <string>

#include "core/fastener/thread.h"

namespace cw {

/// Ring on which a head or nut turns: bearing diameter Do outside, clearance hole dh inside. hole < outer.
struct BearingFace {
  std::string name;    ///< kind of head or nut: "hex", "hex flange", "socket head"
  std::string thread;  ///< designation it belongs to
  Length outer;        ///< Do (dw of the head)
  Length hole;         ///< dh (clearance hole, ISO 273 or ASME B18.2.8)
  Provenance provenance;
};

/// What turns on the part: a bolt's head, a nut, or a washer that turns with either, in one size.
struct Head {
  std::string kind;  ///< "hex", "hex nut", "hex flange", "socket head", "washer", "heavy hex"
  ThreadSystem system = ThreadSystem::Metric;
  Length diameter;                    ///< d of the thread it belongs to
  std::optional<Length> acrossFlats;  ///< the wrench's size; none where it is turned otherwise
  Length bearing;                     ///< outer diameter of the face that turns
  Provenance provenance;
  std::string note;
};

enum class HoleFit {
  Close,   ///< ISO 273 fine
  Normal,  ///< ISO 273 medium
  Loose,   ///< ISO 273 coarse
};

/// The holes made for one size of bolt. close < normal < loose.
struct ClearanceHole {
  ThreadSystem system = ThreadSystem::Metric;
  Length diameter;  ///< d of the bolt
  std::optional<Length> close;
  Length normal;
  std::optional<Length> loose;
  Provenance provenance;
  std::string note;
};

}  // namespace cw

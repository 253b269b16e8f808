#pragma once
#include <optional>
#include <utility>
#include <vector>

#include "core/base/message.h"
#include "core/units/unit.h"

namespace cw {

/// A band on a scale, without a look. Places are shares of the scale's length: 0 at its start, 1 at its end.
struct BandDrawing {
  struct Mark {
    double at = 0;
    Message text;
  };
  double low = 0;
  double high = 0;
  std::vector<Mark> band;    ///< low, typical and high with their numbers
  std::vector<Mark> values;  ///< what is compared with the band: stated, proof, yield …
  std::vector<Mark> ticks;   ///< round numbers along the scale
  std::string unit;          ///< of the ticks
};

/// What is to be drawn. low ≤ typical ≤ high.
template <class Tag>
struct BandOf {
  Quantity<Tag> low, high;
  std::optional<Quantity<Tag>> typical{};
  std::vector<std::pair<Message, Quantity<Tag>>> values{};  ///< "%1" in the text is the value
};

/// The scale reaches from zero, or from near the band where that is narrow, past the largest value.
/// Defined for torque and force.
template <class Tag>
BandDrawing bandDrawing(const BandOf<Tag>& band, const Unit<Tag>& unit);

}  // namespace cw

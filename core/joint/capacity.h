#pragma once
#include <optional>

#include "core/joint/resistance.h"
#include "core/joint/stripping.h"

namespace cw {

/// A fastener where it is used, as far as that is known.
struct FastenerCase {
  Thread thread;
  std::optional<Grade> grade;
  std::optional<Condition> condition;  ///< none: the widest usual friction
  std::optional<BearingFace> face;     ///< none: Db = 1.25·d
  std::optional<TappedHole> hole;      ///< none: a nut of the bolt's own class
};

/// What bears least when the torque rises.
enum class Limit { BoltYield, ThreadStripping };

/// What a fastener bears, as torques.
struct Capacity {
  Torque low;  ///< band of torques that make sense for it
  Torque high;
  Torque typical;       ///< brings what bears least to its limit, at the typical friction
  Torque yieldTypical;  ///< brings the bolt to yield at the typical friction
  Torque yieldCertain;  ///< … even at the highest friction
  Limit limit = Limit::BoltYield;
};

/// Upper over lower edge of the band. N·m and in·lbf differ 8.85 times, ft·lbf and in·lbf 12 times: with any
/// ratio below that, no value in the band stays in it when these units are exchanged. 3 % are left for
/// rounded digits.
inline constexpr double kBandRatio = 8.6;

/// The band's upper edge is the torque that brings the bolt to yield (von Mises, plastic torsion) at the
/// highest friction of the condition, but at most 1.5 times that at the typical friction; where the thread
/// strips first, it is the torque that strips it at the typical friction. The lower edge is the upper one
/// over kBandRatio.
/// InvalidInput without a grade; errors of checkThread, checkGrade, resistanceOf and stripping.
/// Source: VDI 2230 part 1 for yield, FED-STD-H28/2B for stripping; the band itself is our own rule.
Result<Capacity> capacityOf(const FastenerCase& fastener);

/// How the band came about.
Result<Working> capacityWorking(const FastenerCase& fastener);

/// Torque → clamp load by the case's condition.
Result<ResistanceRange> resistanceOf(const FastenerCase& fastener);

}  // namespace cw

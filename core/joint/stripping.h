#pragma once
#include <optional>

#include "core/base/words.h"
#include "core/fastener/grade.h"
#include "core/fastener/material.h"
#include "core/joint/thread_limits.h"
#include "core/joint/working.h"

namespace cw {

/// Area that shears for each unit of length of full engagement; times the engagement it is an Area.
struct ShearPerLength {
  Length bolt;    ///< ASs/Le at the bolt's thread, sheared at the hole's minor diameter
  Length tapped;  ///< ASn/Le at the tapped thread, sheared at the bolt's major diameter
};

/// ASs/Le = (π/P)·Kn,max·[P/2 + 0.57735·(Es,min − Kn,max)], ASn/Le = (π/P)·Ds,min·[P/2 + 0.57735·(Ds,min −
/// En,max)]. OutOfRange for limits that leave nothing to shear.
/// Source: FED-STD-H28/2B; ASME B1.1 app. B. Worked examples: WorkedExamples.E23, E24.
Result<ShearPerLength> shearPerLength(const ThreadLimits& limits, Length pitch);

/// A tapped hole: what it is cut in and how many millimetres of full thread engage.
struct TappedHole {
  TappedMaterial material;
  Length engagement;
  std::optional<Length> threadLength = {};  ///< of the hole, if known: engagement must not exceed it
  std::optional<Fit> fit = {};              ///< the system's usual one if not stated
  std::optional<ThreadLimits> limits = {};  ///< tabulated or measured; else by the fit's formulas
};

enum class Failure { BoltBreaks, BoltThreadStrips, TappedThreadStrips };
template <>
struct Words<Failure> {
  static constexpr std::array<std::pair<Failure, std::string_view>, 3> kAll{
      {{Failure::BoltBreaks, "bolt-breaks"},
       {Failure::BoltThreadStrips, "bolt-thread-strips"},
       {Failure::TappedThreadStrips, "tapped-thread-strips"}}};
};

struct Stripping {
  Failure failure;  ///< what gives way first
  Force load;       ///< at which it does
  Force boltBreaks;
  Force boltStrips;
  Force tappedStrips;
  Length neededEngagement;  ///< from which on the bolt breaks before any thread strips
};

/// Shear strength of a steel bolt over its tensile strength (von Mises 0.577; 0.6 is customary, RP-1228).
inline constexpr double kShearShare = 0.6;

/// Which of bolt, bolt thread and tapped thread fails first at this engagement, and the engagement that lets
/// the bolt break first. OutOfRange for engagement under a hundredth of a turn, longer than the hole's thread
/// or than ten diameters, a grade of another size or system, or a fit of the other system.
/// Source: as shearPerLength. Worked examples: WorkedExamples.E23, E24; CastingLimitsSteelScrew.
Result<Worked<Stripping>> stripping(const Thread& thread, const Grade& grade, const TappedHole& hole);

/// Load at which the weaker of the two threads strips; what `stripping` finds, without working.
Result<Force> strippingLoad(const Thread& thread, const Grade& grade, const TappedHole& hole);

}  // namespace cw

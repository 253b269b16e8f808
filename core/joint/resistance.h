#pragma once
#include <optional>
#include <string>

#include "core/base/result.h"
#include "core/fastener/bearing_face.h"
#include "core/fastener/condition.h"
#include "core/joint/wedge.h"
#include "core/joint/working.h"

namespace cw {

/// What turning costs: the torque for each unit of clamp load, and the thread friction behind it (which
/// decides how much of the torque twists the shank).
struct Resistance {
  Length arm;  ///< T = arm·F
  Friction friction;
};

/// How torque and clamp load are tied together.
enum class Basis {
  NutFactor,  ///< T = K·F·d
  LongForm,   ///< the wedge, from friction
};

/// The spread of a condition on one thread and bearing face. `low` turns easiest, hence clamps hardest.
struct ResistanceRange {
  Resistance low;
  Resistance typical;
  Resistance high;
  Length meanBearing;
  Basis basis = Basis::LongForm;  ///< by nut factor, `friction` is what K amounts to with µt = µb
  bool stated = true;             ///< false: nobody has stated the condition
  std::string condition;          ///< its name; empty if bare numbers were given
  std::string source;             ///< of nut factor or friction
  std::string bearingSource;      ///< empty: no face was given and Db = 1.25·d is assumed
};

/// By the basis asked for; else by the condition's nut factor if it has one, else by its friction. Without a
/// bearing face Db = 1.25·d is assumed and the working says so. Friction outside (0, 0.5], nut factor outside
/// (0, 1], or values not in rising order: OutOfRange. InvalidInput if the condition lacks what is needed.
/// Source: T = K·F·d; VDI 2230 part 1. Worked examples: published tests Worked*, Vdi2230*.
Result<ResistanceRange> resistanceOf(const Condition& condition, const Thread& thread,
                                     const std::optional<BearingFace>& face,
                                     std::optional<Basis> basis = std::nullopt);

/// As above from a nut factor (range), whoever stated it.
Result<ResistanceRange> resistanceByNutFactor(const Range& nutFactor, const Thread& thread,
                                              const std::optional<BearingFace>& face,
                                              const std::string& source);

/// As above from friction in thread and bearing.
Result<ResistanceRange> resistanceByFriction(const Range& threadFriction, const Range& bearingFriction,
                                             const Thread& thread, const std::optional<BearingFace>& face,
                                             const std::string& source);

/// For a thread whose condition nobody has stated: µ from 0.08 to 0.24, typically 0.14, which is what
/// VDI 2230 table A1 spans (friction classes A to C).
Result<ResistanceRange> unstatedResistance(const Thread& thread, const std::optional<BearingFace>& face);

/// How the three arms came about: symbols a, a_lo, a_hi (mm), T = a·F. `end` is put behind each symbol of
/// the condition ("a2_lo"), so that two of them fit on one sheet.
Working workingOf(const ResistanceRange& range, const Thread& thread, const std::string& end = "");

}  // namespace cw

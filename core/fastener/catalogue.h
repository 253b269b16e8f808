#pragma once
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/fastener/row_index.h"

namespace cw {

/// An immutable library with lookups by name. Names are found whatever their letter case, blanks and
/// hyphens; aliases count. Every lookup that fails is NotFound (or OutOfRange for a size), one sentence that
/// names what there is instead.
class Catalogue {
 public:
  /// Conflict if two rows answer to one name, or the sizes of a grade's rows overlap.
  static Result<Catalogue> make(Library library);

  /// This catalogue and more rows; Conflict if one of them answers to a name already here.
  Result<Catalogue> with(const Library& more) const;

  /// "M8", "m8", "M8x1", "M8×1.25", "3/8-16", "3/8-16 UNC", "#10-32", "1 1/8-7"; "-LH" behind it is a
  /// left-hand thread. A metric size without a pitch is the coarse thread; a unified one is refused.
  Result<Thread> thread(std::string_view written) const;

  /// The row of that grade that holds for the thread's size: "8.8", "A2-70", "SAE 5", "ASTM A193 B7".
  /// OutOfRange if the grade is not made in that size or not for that thread system.
  Result<Grade> grade(std::string_view written, const Thread& thread) const;

  /// "dry", "oiled", "moly paste" …
  Result<Condition> condition(std::string_view written) const;

  /// "cast aluminium A356-T6", "grey iron", "brass" …
  Result<TappedMaterial> material(std::string_view written) const;

  /// The ring on which a "hex", "hex nut", "hex flange", "socket head", "washer" or "heavy hex" of this
  /// thread's size turns, over a clearance hole of that fit.
  Result<BearingFace> bearingFace(std::string_view kind, const Thread& thread,
                                  HoleFit fit = HoleFit::Normal) const;

  Result<Head> head(std::string_view kind, const Thread& thread) const;
  Result<ClearanceHole> clearanceHole(const Thread& thread) const;

  /// Tabulated limits of size; tolerance class "6g", "6H" or "2B".
  Result<SizeLimits> sizeLimits(const Thread& thread, std::string_view toleranceClass) const;

  /// Least prevailing torque; fastener "self-locking nut, reused" or another that the table names.
  Result<PrevailingTorque> prevailingTorque(const Thread& thread, std::string_view fastener) const;

  /// ISO 6789-1 type "I" or "II" and class letter.
  Result<ToolClass> toolClass(std::string_view type, std::string_view letter) const;

  /// Does a row of this kind answer to this folded key (see keysOf)?
  bool answers(RowKind kind, const std::string& key) const;

  const Library& rows() const { return m_library; }

 private:
  Library m_library;
  RowIndex m_index;
};

/// The library that comes with the program (resources/library), read once.
const Catalogue& shippedCatalogue();

}  // namespace cw

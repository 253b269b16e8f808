#pragma once
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/base/result.h"
#include "core/fastener/library.h"

namespace cw {

/// An immutable library with lookups by name. Names are found whatever their letter case and blanks;
/// aliases count. Every lookup that fails is NotFound (or OutOfRange for a size), one sentence that names
/// what was probably meant.
class Catalogue {
 public:
  /// Conflict if two rows answer to one name.
  static Result<Catalogue> make(Library library);

  /// "M8", "m8", "M8x1", "M8×1.25", "3/8-16", "3/8-16 UNC", "#10-32", "1 1/8-7"; "-LH" behind it is a
  /// left-hand thread. A size without a pitch is the coarse thread (metric) or refused (unified).
  Result<Thread> thread(std::string_view written) const;

  /// The row of that grade that holds for the thread's size: "8.8", "A2-70", "SAE 5", "ASTM A193 B7".
  /// OutOfRange if the grade is not made in that size or not for that thread system.
  Result<Grade> grade(std::string_view written, const Thread& thread) const;

  /// "dry", "oiled", "moly paste" …
  Result<Condition> condition(std::string_view written) const;

  const Library& rows() const { return m_library; }

 private:
  using Index = std::unordered_map<std::string, std::vector<std::size_t>>;

  Library m_library;
  Index m_threads;
  Index m_grades;
  Index m_conditions;
};

/// The library that comes with the program (resources/library), read once.
const Catalogue& shippedCatalogue();

}  // namespace cw

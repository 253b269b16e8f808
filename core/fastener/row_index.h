#pragma once
#include <array>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/base/result.h"
#include "core/fastener/tables.h"

namespace cw {

/// Finds rows of a library by what they answer to. Holds row numbers only, so the library must not be
/// reordered under it.
class RowIndex {
 public:
  /// Conflict, naming the row's table and changing nothing, if another row answers to one of its names. Rows
  /// of one grade share their names as long as their sizes do not overlap.
  Result<void> add(const Library& library, RowKind kind, std::size_t row);

  /// Row numbers in the order of adding; empty if none answers.
  const std::vector<std::size_t>& find(RowKind kind, const std::string& key) const;

 private:
  std::array<std::unordered_map<std::string, std::vector<std::size_t>>, kRowKinds.size()> m_rows;
};

}  // namespace cw

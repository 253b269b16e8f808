#pragma once
#include <string>
#include <vector>

#include "core/fastener/tables.h"

namespace cw {

/// One row of a library as a search sees it. `name` and `alias` find it again in the Catalogue.
struct SearchEntry {
  RowKind kind;
  std::size_t row;    ///< in the library's vector of that kind
  std::string name;   ///< designation of a thread or a part in one size, name of anything else
  std::string alias;  ///< what else it goes by, blank-separated phrases joined by "; "
  std::string note;   ///< label, family, size range, remark
};

/// One row; `row` counts from 0 and is there.
SearchEntry searchEntry(const Library& library, RowKind kind, std::size_t row);

/// All rows, kind by kind, in library order.
std::vector<SearchEntry> searchEntries(const Library& library);

}  // namespace cw

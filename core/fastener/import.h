#pragma once
#include <string_view>

#include "core/fastener/catalogue.h"

namespace cw {

/// What an import of one table would do, before anything is done.
struct ImportRehearsal {
  std::string_view table;  ///< "grades" …; empty if the columns are those of no table
  std::size_t rows = 0;    ///< rows in the file
  Findings findings;       ///< every row that is refused, with line and column; all Blocking
  Library library;         ///< the rows that were read

  bool clean() const { return findings.empty(); }
};

/// Reads a shop's table against the catalogue it shall join. Beyond what addTable refuses, each row must
/// name its author, must not answer to a name that the catalogue or an earlier row has (rows that came with
/// the program are never replaced: copy one under another name), and must name a known thread where it
/// belongs to one.
ImportRehearsal rehearseImport(const Catalogue& existing, std::string_view csv);

/// The catalogue with all rows of a clean rehearsal; its first finding as an error otherwise, so that no
/// table is ever half imported.
Result<Catalogue> imported(const Catalogue& existing, const ImportRehearsal& rehearsal);

}  // namespace cw

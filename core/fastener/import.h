#pragma once
#include <optional>
#include <string_view>

#include "core/fastener/catalogue.h"

namespace cw {

/// A row that was read: the line where it stands, and its cells as written, in the order of columnsOf.
struct TakenRow {
  std::size_t line = 0;
  std::string csv;
};

/// What an import of one table would do, before anything is done.
struct ImportRehearsal {
  std::optional<RowKind> kind;  ///< none if the columns are those of no table
  std::size_t rows = 0;         ///< rows in the file, the refused ones too
  std::vector<Error> refused;   ///< every bad row: place "line 3, yield", its value, what would be right
  Library library;              ///< the shop's rows, and behind them those that were read
  std::vector<TakenRow> taken;  ///< those that were read

  bool clean() const { return refused.empty() && kind.has_value(); }
};

/// Reads a shop's table against what came with the program and the shop's own rows, which it shall join.
/// Beyond what addTable refuses, each row must name its author, must not answer to a name that another row
/// has (rows that came with the program are never replaced: copy one under another name), must name a known
/// thread where it belongs to one, and has no cell that a spreadsheet would take for a formula.
ImportRehearsal rehearseImport(const Catalogue& shipped, std::string_view csv, Library own = {});

/// The catalogue with all rows of a clean rehearsal; its first refusal otherwise, so that no table is ever
/// half imported.
Result<Catalogue> imported(const Catalogue& shipped, const ImportRehearsal& rehearsal);

}  // namespace cw

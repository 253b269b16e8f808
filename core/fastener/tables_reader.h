#pragma once
#include "core/fastener/library_rows.h"
#include "core/fastener/tables.h"

namespace cw {

// The steps of addTable, for whoever looks at each row in between.

/// Which table a header belongs to; InvalidInput naming the columns of the likest one.
Result<RowKind> kindOf(const Csv& csv);

/// Appends one row.
Result<void> addRow(Library& library, RowKind kind, const CsvRecord& record);

/// A refused row as a finding that stops the import.
Finding blocking(const Error& error);

}  // namespace cw

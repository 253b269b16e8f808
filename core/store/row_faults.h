#pragma once
#include "core/base/finding.h"
#include "core/base/result.h"

namespace cw {

class Connection;

/// Rows whose columns hold what the program never writes there: another type, NULL, an id, digest, time or
/// page that cannot be read. Each is a finding of code "row" with table, row and column as place. Entries,
/// sheets' bytes and records are judged by their digests instead.
Result<Findings> rowFaults(Connection& connection);

}  // namespace cw

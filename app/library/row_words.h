#pragma once
#include <QString>

#include "core/fastener/tables.h"
#include "core/report/document.h"

namespace cw {

class Catalogue;

/// "Thread", "Bearing face" … for one row.
QString kindText(RowKind kind);

/// One row of a catalogue to read: its values in both systems of units, its limits and cautions, what else
/// the catalogue knows of that size, and where it is from.
Document rowDocument(const Catalogue& catalogue, RowKind kind, std::size_t row);

}  // namespace cw

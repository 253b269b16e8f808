#pragma once
#include <QString>

#include "core/fastener/import.h"
#include "core/report/document.h"

namespace cw {

/// What an import of that file would do: every bad row with line, column, value and what would be right, or
/// what is taken in.
Document rehearsalDocument(const ImportRehearsal& rehearsal, const QString& fileName);

}  // namespace cw

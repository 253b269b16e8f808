#pragma once
#include <string>

#include "core/base/result.h"

class QSqlError;

namespace cw {

/// What SQLite refused, as an Error about `file`: Locked, ReadOnly, DiskFull, Corrupt, Conflict (a row that
/// is there already), NotPermitted (one of the schema's triggers said no) or Storage.
Error storageError(const QSqlError& error, const std::string& file);

}  // namespace cw

#pragma once
#include <map>

#include "core/store/connection.h"

namespace cw {

/// The schema version that this program writes: the number of files in resources/schema.
int newestVersion();

/// Brings a database from its version to `target`, one numbered file after the other, each in a transaction
/// of its own together with its version number. The file's statements are separated by lines "-- next".
Result<void> migrate(Connection& connection, int target = newestVersion());

/// Every table, index and trigger of a database: its SQL text by its name.
Result<std::map<std::string, std::string>> schemaOf(Connection& connection);

}  // namespace cw

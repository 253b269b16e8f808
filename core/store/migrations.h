#pragma once
#include "core/store/connection.h"

namespace cw {

/// The schema version that this program writes: the number of files in resources/schema.
int newestVersion();

/// Brings a database from its version to `target`, one numbered file after the other, each in a transaction
/// of its own together with its version number. The file's statements are separated by lines "-- next".
Result<void> migrate(Connection& connection, int target = newestVersion());

/// Every table, index and trigger as a database made by this program has it: (name, SQL text), by name.
Result<std::vector<std::pair<std::string, std::string>>> schemaOf(Connection& connection);

}  // namespace cw

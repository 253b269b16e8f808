#pragma once
#include "app/command_line/command_line.h"

namespace cw {

struct Commands;

/// `record export`: nothing leaves that does not verify, unless as pages that say so.
void addRecordExport(Commands& commands, CLI::App* record);

}  // namespace cw

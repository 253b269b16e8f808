#pragma once
#include "app/command_line/command_line.h"
#include "core/record/verify.h"

namespace cw {

struct Commands;

/// `record verify`: a record, an addendum or a record's PDF, told apart by what they are.
void addRecordVerify(Commands& commands, CLI::App* record);

/// Adds every problem to a reply, which becomes no if there is one.
void addProblems(Reply& reply, const Verification& found);

}  // namespace cw

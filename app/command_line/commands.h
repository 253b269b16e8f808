#pragma once
#include "app/command_line/command_line.h"

namespace cw {

// Each adds one command of the program; its file is named after it.
Command addConvert(CLI::App& app);
Command addThread(CLI::App& app);

}  // namespace cw

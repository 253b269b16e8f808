#pragma once

namespace cw {

/// Opens the window on the shop file named by --shop, or on the one used last; returns the exit code.
int runWindow(int count, char** words);

}  // namespace cw

#pragma once
#include <string>

#include "core/report/content.h"

namespace cw {

/// Every tightening as RFC 4180 text, one row a position and a state of it (a correction stands below what
/// it corrects). Torques are the stated digits; `unit` is that of low, target and high, `tool_unit` that of
/// setting and reading. Times are RFC 3339. A text that a spreadsheet would take for a formula (first
/// character = + - @, tab or carriage return) gets an apostrophe before it.
std::string csvOfTightenings(const RecordContent& content);

}  // namespace cw

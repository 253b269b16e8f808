#pragma once
#include "core/base/json.h"
#include "core/pattern/layout.h"

namespace cw {

/// {"unit":"in","circle":{"count":8,"diameter":"7.5"}}: a layout as it stands in sheets and layout files.
/// Lengths and angles are digits in quotes: lengths in the layout's one unit, angles in degrees. What has
/// its usual value (labels 1, 2, 3 …; seen as drawn; nothing left out; no groups, no outline) is not written.
Json toJson(const Layout& layout);

/// Reads that form: exactly one of circle, rows, perimeter, line, circles, points, and what goes with it.
/// InvalidInput or OutOfRange naming the field, the errors of `positions` included. Members that it does not
/// know are left to the reader's `rest`; in the objects below they are refused.
Result<Layout> readLayout(JsonReader& reader);

/// Reads a file that holds a layout alone: the same members beside "format": "clampwright.layout" and
/// "version": 1. The errors of checkFormat and readLayout.
Result<Layout> readLayoutFile(std::string_view bytes);

/// The bytes of such a file.
std::string writeLayoutFile(const Layout& layout);

}  // namespace cw

#pragma once
#include <string>
#include <vector>

#include "core/pattern/layout.h"

namespace cw {

/// One label for each place. OutOfRange if own labels are too few, too many, empty, or any label repeats.
Result<std::vector<std::string>> labelsFor(const Labels& labels, const std::vector<Point>& places);

}  // namespace cw

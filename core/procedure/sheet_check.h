#pragma once
#include "core/base/result.h"
#include "core/procedure/sheet.h"

namespace cw {

/// What makes a sheet unusable, not merely poor: the first fault found, as InvalidInput or OutOfRange with
/// place and value. An id that stands twice, a reference to nothing, low <= aim <= high broken or in mixed
/// units, a position that the layout does not have, an order that does not list each label once, a
/// rule that is none, a field that a step of its kind needs or cannot have.
Result<void> checkSheet(const Sheet& sheet);

/// The labels of a joint's positions in the order that its rule gives. The layout's and the rule's errors.
Result<std::vector<std::string>> orderByRule(const Joint& joint);

}  // namespace cw

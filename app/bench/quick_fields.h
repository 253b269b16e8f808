#pragma once
#include <QString>

#include "core/procedure/quick_joint.h"

namespace cw {

/// A quick joint as it was typed, before any of it was read.
struct QuickFields {
  QString name, thread, grade, condition, printed, low, aim, high, document, page, revision;
  std::optional<Ungrounded> ungrounded;
  PassPlan passes;
  std::string by;
};

/// Reads them in the locale's numbers. The first field that cannot be read is the place of the error.
Result<QuickJoint> readQuickFields(const QuickFields& fields, Layout layout, bool drawnToScale);

}  // namespace cw

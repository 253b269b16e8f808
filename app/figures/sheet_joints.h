#pragma once
#include <QString>
#include <vector>

#include "core/settling/settling_examples.h"
#include "core/settling/settling_way.h"

namespace cw {

class Workspace;

/// A joint of one of the shop's sheets, as far as a prediction knows it.
struct SheetJoint {
  QString name;                   ///< "Gear case cover rev A: cover"
  QString made;                   ///< what of it is made up; empty if nothing is
  Result<SettlingExample> joint;  ///< or why it cannot be compared
  SettlingWay way;                ///< as the sheet has it tightened
};

/// The joints of all issued sheets and drafts; none without a shop. A sheet that cannot be read is one with
/// the reason.
std::vector<SheetJoint> sheetJoints(Workspace& workspace);

}  // namespace cw

#pragma once
#include <vector>

#include "core/fastener/bearing_face.h"
#include "core/fastener/condition.h"
#include "core/fastener/grade.h"
#include "core/fastener/material.h"
#include "core/fastener/prevailing_torque.h"
#include "core/fastener/size_limits.h"
#include "core/fastener/thread.h"
#include "core/fastener/tool_class.h"

namespace cw {

/// The rows of a fastener library as plain data, in file order. Catalogue looks things up in it.
struct Library {
  std::vector<Thread> threads;
  std::vector<Grade> grades;
  std::vector<Condition> conditions;
  std::vector<TappedMaterial> materials;
  std::vector<Head> heads;
  std::vector<ClearanceHole> holes;
  std::vector<SizeLimits> limits;
  std::vector<PrevailingTorque> prevailingTorques;
  std::vector<ToolClass> toolClasses;
};

}  // namespace cw

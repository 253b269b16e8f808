#pragma once
#include <vector>

#include "core/base/message.h"
#include "core/fastener/thread.h"
#include "core/pattern/layout.h"
#include "core/settling/settling_joint.h"

namespace cw {

/// A joint to compare orders on before one's own is known. Sizes and stiffnesses are illustrative: generic
/// flange sizes and orders of magnitude for gaskets, from memory, measured on nothing.
struct SettlingExample {
  Message name;
  SettlingJoint joint;
  Force target;
};

std::vector<SettlingExample> settlingExamples();

/// A cover with a sheet's bolts on a rigid casing: of steel, one and a half bolt diameters thick, with a rim
/// of two beyond the bolts and a fibre gasket along them, 345 MPa aimed at in the bolts. Places and thread
/// are the sheet's, all else is illustrative. Errors of `positions`; OutOfRange where the bolts do not stand
/// on one line round a middle, which is where the gasket lies, or are fewer than 4 or more than
/// kMostSettlingBolts.
Result<SettlingExample> coverWith(const Layout& layout, const Thread& thread, Message name);

}  // namespace cw

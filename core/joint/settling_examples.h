#pragma once
#include <vector>

#include "core/base/message.h"
#include "core/joint/settling_joint.h"

namespace cw {

/// A joint to compare orders on before one's own is known. Sizes and stiffnesses are illustrative: generic
/// flange sizes and orders of magnitude for gaskets, from memory, measured on nothing.
struct SettlingExample {
  Message name;
  SettlingJoint joint;
  Force target;
};

std::vector<SettlingExample> settlingExamples();

}  // namespace cw

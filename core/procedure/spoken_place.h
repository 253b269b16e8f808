#pragma once
#include <string>
#include <string_view>

namespace cw {

/// A place in a sheet as people count: "steps[2].cautions[0]" is "step 3, caution 1", and
/// "joints[0].positions[B].fastener" is "joint 1, position B, fastener". What is no such place stays as it
/// is.
std::string spokenPlace(std::string_view place);

}  // namespace cw

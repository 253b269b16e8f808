#pragma once
#include <string>

#include "core/base/result.h"
#include "core/report/drawing.h"
#include "core/store/output_place.h"

namespace cw {

/// A joint as a PNG picture in ink on white, for where no document goes. Needs a QGuiApplication. The errors
/// of writeFile.
Result<void> writeJointPicture(const JointDrawing& drawing, const std::string& path, Existing existing);

}  // namespace cw

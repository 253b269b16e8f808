#pragma once
#include "core/report/content.h"
#include "core/report/document.h"

namespace cw {

/// A joint's pages: its specification word for word and as read, the diagram, each reading on its tolerance.
Section jointSection(const JointContent& joint, const Wording& wording);

}  // namespace cw

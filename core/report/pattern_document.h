#pragma once
#include "core/pattern/pattern.h"
#include "core/report/document.h"
#include "core/report/wording.h"

namespace cw {

/// A pattern put into words: its rule, the order and the way from position to position, what each tool does
/// where there are several, and the passes. What is wrong with it stands first.
Document patternDocument(const Pattern& pattern, const Wording& wording);

}  // namespace cw

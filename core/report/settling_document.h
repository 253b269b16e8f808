#pragma once
#include "core/report/document.h"
#include "core/report/wording.h"
#include "core/settling/settling_way.h"

namespace cw {

/// The passes of one way in numbers, and what one full round more buys.
Document settlingDocument(const SettlingOutcome& outcome, const Wording& wording);

/// What the prediction is made from and what it leaves out; stands wherever one is shown.
std::vector<Message> settlingLimits();

}  // namespace cw

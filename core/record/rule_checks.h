#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/record/next.h"

namespace cw {

// Checks that several of the rules share.

/// What is to be done at a stage, as the end of "…; read its warnings and cautions".
Message doing(Stage stage);

/// A text with more than blanks; `missing` says what is not there.
Result<void> said(const std::string& text, std::string_view place, Message missing);

/// Every label is one of the step's joint's, and named once.
Result<void> knownPositions(const Job& job, std::size_t step, const std::vector<std::string>& labels,
                            std::string_view place);

/// A count of fasteners must be all of them.
Result<void> fullCount(int count, std::size_t wanted);

}  // namespace cw

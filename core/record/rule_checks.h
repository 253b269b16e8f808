#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/record/job.h"

namespace cw {

// Checks that several of the step rules share.

/// What is to be done at a stage, as the end of "…; read its warnings and cautions".
Message doing(Stage stage);

/// A reason with more than blanks; `what` names what it is for.
Result<void> reasonGiven(const std::string& reason, const char* what);

bool hasPosition(const std::vector<std::string>& order, const std::string& label);
Result<void> knownPositions(const std::vector<std::string>& order, const std::vector<std::string>& labels,
                            std::string_view place);

/// A count of fasteners must be all of them.
Result<void> fullCount(int count, std::size_t wanted);

}  // namespace cw

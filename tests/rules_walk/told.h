#pragma once
#include <string>

#include "core/record/job.h"

namespace cw::test {

/// All that a job knows, entries' fates included, so that two jobs can be compared.
std::string told(const Job& job);
/// How its steps are, without the entries.
std::string toldSteps(const Job& job);

}  // namespace cw::test

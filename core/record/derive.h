#pragma once
#include "core/record/fold.h"

namespace cw {

/// Sets every field of a body that the program works out. The body must speak of what the sheet has.
void deriveAll(Body& body, const Situation& at);

/// The first field of `said` that the program works out otherwise, or empty.
std::string fieldThatDoesNotFollow(const Body& said, const Situation& at);

}  // namespace cw

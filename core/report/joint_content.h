#pragma once
#include <span>
#include <vector>

#include "core/report/content.h"

namespace cw {

/// Each tighten step of a job with its readings, in the sheet's order.
std::vector<JointContent> jointsOf(const Job& job, std::span<const Person> people, const Wording& wording);

}  // namespace cw

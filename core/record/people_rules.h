#pragma once
#include "core/record/job.h"

namespace cw {

/// Everybody named vouches, in a way that they could: the author and an apprentice's supervisor by PIN, for
/// this entry or in this session; whoever works has learned a trade; only a pull or a wrench that is set names
/// a tool. NotPermitted or InvalidInput.
Result<void> checkPeople(const Job& job, const Entry& entry);

}  // namespace cw

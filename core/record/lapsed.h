#pragma once
#include <vector>

#include "core/record/job.h"
#include "core/record/shop_floor.h"

namespace cw {

/// What no longer holds of a job that lay still until `now`, in sentences: wrenches it used that are out of
/// calibration or out of service, packs that have expired, and, of a parked job, the joint that starts again.
/// Whether its sheet is still the issued one is the store's business.
std::vector<Message> lapsedBy(const Job& job, const ShopFloor& floor, const Moment& now);

}  // namespace cw

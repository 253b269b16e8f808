#pragma once
#include <string>
#include <vector>

#include "core/base/id.h"
#include "core/base/result.h"
#include "core/record/key.h"
#include "core/store/output_place.h"

namespace cw {

/// One job that the demo played.
struct DemoJob {
  Id job;
  std::string name;    ///< of its script below resources/demo: "pump_cover"
  std::string record;  ///< sealed bytes
};

/// All of it, and the key that seals.
struct DemoShop {
  SecretKey key;
  std::vector<DemoJob> jobs;
};

/// Makes the invented shop below `folder` ("demo.shop", its secret key, "key.json") and plays its jobs from
/// sheet to sealed record, on a clock of its own that starts on 25 November 2026. `existing`: what becomes of
/// a "key.json" that is there. AlreadyDone if the folder has a shop or its key; errors of the store.
Result<DemoShop> playDemo(const std::string& folder, Existing existing);

}  // namespace cw

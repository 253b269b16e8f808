#pragma once
#include <string>
#include <vector>

#include "core/base/id.h"
#include "core/base/result.h"

namespace cw {

/// One job that the demo played.
struct DemoJob {
  Id job;
  std::string name;    ///< of its script below resources/demo: "pump_cover"
  std::string record;  ///< sealed bytes
};

/// Makes the invented shop below `folder` ("demo.shop", its secret key, "key.json") and plays its jobs from
/// sheet to sealed record, on a clock of its own that starts on 25 November 2026. AlreadyDone if the folder
/// has a shop; errors of the store.
Result<std::vector<DemoJob>> playDemo(const std::string& folder);

}  // namespace cw

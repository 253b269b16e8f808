#pragma once
#include <optional>
#include <string>

#include "core/joint/adapter.h"

namespace CLI {
class App;
}

namespace cw {

/// The words that describe a wrench with an adapter on it.
struct LeverOptions {
  std::string length, offset, angle;
};

/// --length, --offset and --angle.
void addLeverOptions(CLI::App& app, LeverOptions& into);

/// The lever they describe, or none if there is no adapter. InvalidInput for half a lever.
Result<std::optional<Lever>> leverOf(const LeverOptions& given);

}  // namespace cw

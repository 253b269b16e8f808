#include "app/command_line/lever_options.h"

#include <CLI/CLI.hpp>

#include "app/command_line/typed_options.h"

namespace cw {

void addLeverOptions(CLI::App& app, LeverOptions& into) {
  app.add_option("--length", into.length, "Wrench, from the middle of its drive to where the hand pulls");
  app.add_option("--offset", into.offset, "Adapter, from the middle of the drive to that of the fastener");
  app.add_option("--angle", into.angle,
                 "Adapter's angle from the wrench: 0 in line, 90 square, 180 toward the handle");
}

Result<std::optional<Lever>> leverOf(const LeverOptions& given) {
  if (given.length.empty() && given.offset.empty() && given.angle.empty()) return std::optional<Lever>();
  if (given.length.empty() || given.offset.empty())
    return fail(ErrorCode::InvalidInput, given.length.empty() ? "--length" : "--offset", "",
                "the adapter is half described",
                "give the wrench's length with --length and the adapter's with --offset");
  CW_TRY(length, readStated<LengthTag>("--length", given.length));
  CW_TRY(offset, readStated<LengthTag>("--offset", given.offset));
  Lever lever{length.value(), offset.value(), {}};
  if (!given.angle.empty()) {
    CW_TRY(angle, readAngle("--angle", given.angle));
    lever.angle = angle;
  }
  return std::optional(lever);
}

}  // namespace cw

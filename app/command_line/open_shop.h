#pragma once
#include <memory>

#include "app/command_line/command_line.h"
#include "core/fastener/catalogue.h"
#include "core/store/shop.h"

namespace cw {

/// The shop file of this call. InvalidInput if no --shop was given; the errors of Shop::open.
Result<std::unique_ptr<Shop>> openShop(const Options& options, Clock& clock);

/// What names mean in this call: the shipped library, with --shop the shop's own rows too.
Result<Catalogue> catalogueOf(const Options& options);

/// A PIN for a sign-off on the command line: the first line of a file, or of standard input for "-", so that
/// it never stands in the list of processes.
Result<std::string> readPin(const std::string& file, Terminal& terminal);

/// Checks name and PIN as for any sign-off, and says who did it when.
Result<Deed> signedDeed(Shop& shop, Clock& clock, const std::string& sign, const std::string& pinFile,
                        Terminal& terminal);

}  // namespace cw

#pragma once
#include <iosfwd>

#include "app/command_line/command_line.h"
#include "core/store/shop.h"

namespace cw {

/// Enters each line of `lines` and answers it on `out` once it is durable: "signed 17 <hash>" or
/// "already 17 <hash>". Stops at the first that is refused, that is longer than 1 MiB, or whose answer cannot
/// be written (Storage), with its line as the place; what came before stays. Returns how many lines were
/// answered.
Result<int> enterLines(Shop& shop, const Id& job, std::istream& lines, std::ostream& out);

/// The command: file (- is standard input; a pipe will do) and job as given. InvalidInput if no entry is in
/// it.
Result<Reply> enterLines(const std::string& job, const std::string& file, const Options& options,
                         Terminal& terminal);

}  // namespace cw

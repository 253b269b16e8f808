#pragma once
#include <string>

#include "core/store/output_place.h"

namespace CLI {
class App;
}

namespace cw {

/// The file that a command writes: --out, and --force to replace one that is there.
struct OutputOptions {
  std::string file;  ///< empty: none was named
  bool force = false;

  bool named() const { return !file.empty(); }
  Existing existing() const { return force ? Existing::Replaced : Existing::Kept; }
};

enum class Wanted { Perhaps, Always };

/// Adds both to a command. `what`: the help of --out.
void addOutput(CLI::App* app, OutputOptions& options, const std::string& what,
               Wanted wanted = Wanted::Perhaps);

}  // namespace cw

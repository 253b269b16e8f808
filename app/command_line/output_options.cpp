#include "app/command_line/output_options.h"

#include <CLI/CLI.hpp>

namespace cw {

void addOutput(CLI::App* app, OutputOptions& options, const std::string& what, Wanted wanted) {
  CLI::Option* out = app->add_option("--out", options.file, what)->type_name("FILE");
  out->required(wanted == Wanted::Always);
  app->add_flag("--force", options.force, "Replace the file if there is one; never a shop file or a key")
      ->needs(out);
}

}  // namespace cw

#include <CLI/CLI.hpp>

#include "app/command_line/commands.h"
#include "core/store/inspect.h"

namespace cw {

void addInspect(Commands& commands) {
  CLI::App* app = commands.program.add_subcommand(
      "inspect", "Look over the whole shop file; exit 1 if something is wrong");
  commands.add(app, [](const Options& options, Terminal&) -> Result<Reply> {
    if (options.shopFile.empty())
      return fail(ErrorCode::InvalidInput, "--shop", "", "no shop file was named", "add --shop FILE");
    CW_TRY(findings, inspectFile(options.shopFile));
    Reply reply;
    Json::Array all;
    for (const Finding& finding : findings) {
      reply.lines.push_back(sentence(finding));
      all.push_back(Json(sentence(finding)));
    }
    if (findings.empty()) reply.lines = {"the shop file is whole: pages, guards, sheets, chains and records"};
    reply.yes = findings.empty();
    reply.json.set("whole", reply.yes).set("findings", std::move(all));
    return reply;
  });
}

}  // namespace cw

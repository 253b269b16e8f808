#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/open_shop.h"

namespace cw {

void addBackup(Commands& commands) {
  CLI::App* app = commands.program.add_subcommand("backup", "Make a verified copy of the shop file");
  auto file = std::make_shared<std::string>();
  app->add_option("file", *file, "Where the copy goes; never over a file that is there")->required();
  commands.add(app, [file](const Options& options, Terminal&) -> Result<Reply> {
    SystemClock clock;
    CW_TRY(shop, openShop(options, clock));
    CW_CHECK(shop->backUpTo(*file));
    Reply reply;
    reply.json.set("file", *file);
    reply.lines = {"copied and verified: " + *file, "the sealing key is not in it; keep that elsewhere"};
    return reply;
  });
}

}  // namespace cw

#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/open_shop.h"
#include "app/command_line/output_options.h"
#include "core/record/key.h"
#include "core/store/file_io.h"

namespace cw {

void addKey(Commands& commands) {
  CLI::App* key = commands.program.add_subcommand("key", "Hand out the key that records are verified with");
  key->require_subcommand(1);
  auto out = std::make_shared<OutputOptions>();
  CLI::App* app = key->add_subcommand("export", "Write the shop's public key");
  addOutput(app, *out, "Where to write it; without, it is printed");
  commands.add(app, [out](const Options& options, Terminal&) -> Result<Reply> {
    SystemClock clock;
    CW_TRY(shop, openShop(options, clock));
    const std::string text = writePublicKey(shop->identity().key);
    Reply reply;
    reply.json = *parseJson(text);
    if (!out->named()) {
      reply.lines = {text.substr(0, text.size() - 1)};
      return reply;
    }
    CW_CHECK(writeFile(out->file, text, out->existing()));
    reply.lines = {"wrote key " + keyId(shop->identity().key) + " to " + out->file};
    return reply;
  });
}

}  // namespace cw

#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/open_shop.h"
#include "core/store/file_io.h"
#include "core/store/found_shop.h"
#include "core/store/register_file.h"

namespace cw {
namespace {

struct InitOptions {
  std::string name, secret, registerFile;
};

Reply describe(const RegisterCounts& counts, const std::string& first) {
  Reply reply;
  reply.json.set("people", counts.people).set("tools", counts.tools).set("machines", counts.machines);
  if (!first.empty()) reply.lines.push_back(first);
  reply.lines.push_back("added " + std::to_string(counts.people) + " people, " +
                        std::to_string(counts.tools) + " tools, " + std::to_string(counts.machines) +
                        " machines");
  return reply;
}

Result<Reply> init(const InitOptions& init, const Options& options) {
  if (options.shopFile.empty())
    return fail(ErrorCode::InvalidInput, "--shop", "", "no shop file was named", "add --shop FILE");
  std::string registerBytes;
  if (!init.registerFile.empty()) {
    CW_TRY(bytes, readFile(init.registerFile));
    registerBytes = std::move(bytes);
  }
  const std::string secret = init.secret.empty() ? usualKeyFile(options.shopFile).string() : init.secret;
  SystemClock clock;
  CW_TRY(shop, foundShop(options.shopFile, init.name, secret, clock));
  RegisterCounts counts;
  if (!registerBytes.empty()) {
    auto added = addRegister(*shop, registerBytes, {"", clock.now(), "shop init"});
    if (!added) return fail(within(init.registerFile, added.error()));
    counts = *added;
  }
  Reply reply = describe(counts, "made " + options.shopFile + "; the sealing key is in " + secret +
                                     ": keep it apart from the shop file and its backups");
  reply.json.set("shop", shop->identity().id.text()).set("secret_key_file", secret);
  return reply;
}

}  // namespace

void addShop(Commands& commands) {
  CLI::App* shop =
      commands.program.add_subcommand("shop", "Make a shop file; add people, tools and machines");
  shop->require_subcommand(1);
  auto options = std::make_shared<InitOptions>();
  CLI::App* initApp = shop->add_subcommand("init", "Make a new shop file and its sealing key");
  initApp->add_option("--name", options->name, "Name of the shop")->required();
  initApp
      ->add_option("--secret", options->secret, "Where the secret key goes; by default beside the shop file")
      ->type_name("FILE");
  initApp->add_option("--register", options->registerFile, "People, tools and machines to begin with")
      ->type_name("FILE");
  commands.add(initApp, [options](const Options& all, Terminal&) { return init(*options, all); });

  auto file = std::make_shared<std::string>();
  auto by = std::make_shared<std::string>();
  auto pinFile = std::make_shared<std::string>("-");
  CLI::App* add = shop->add_subcommand("add", "Add people, tools and machines from a register file");
  add->add_option("file", *file, "Register file")->required();
  add->add_option("--by", *by, "Sign of a shop lead")->required();
  add->add_option("--pin-file", *pinFile, "File with the PIN; - reads standard input")->type_name("FILE");
  commands.add(add, [file, by, pinFile](const Options& all, Terminal& terminal) -> Result<Reply> {
    CW_TRY(bytes, readFile(*file));
    SystemClock clock;
    CW_TRY(opened, openShop(all, clock));
    CW_TRY(deed, signedDeed(*opened, clock, *by, *pinFile, terminal));
    return addRegister(*opened, bytes, deed).map([](const RegisterCounts& counts) {
      return describe(counts, "");
    });
  });
}

}  // namespace cw

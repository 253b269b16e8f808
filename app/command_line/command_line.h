#pragma once
#include <functional>
#include <iosfwd>
#include <string>
#include <vector>

#include "core/base/json.h"
#include "core/base/result.h"

namespace CLI {
class App;
}

namespace cw {

/// Where a command finds its input and leaves its reply.
struct Terminal {
  std::ostream& out;
  std::ostream& err;
  std::istream& in;
};

/// What a command found, for people as lines and for programs as JSON.
struct Reply {
  std::vector<std::string> lines;
  Json json = Json(Json::Object{});
  bool yes = true;  ///< false: the reply is no (findings, failed verification); exit 1
};

/// What is the same for every command of one call.
struct Options {
  std::string shopFile;  ///< --shop
  bool json = false;     ///< --json
};

/// Does the work after parsing.
using Run = std::function<Result<Reply>(const Options&, Terminal&)>;

/// What a command works with beside the store: fonts cost it a tenth of a second.
enum class Needs { Store, Fonts };

struct Command {
  CLI::App* app;
  Run run;
  Needs needs;
};

/// The commands of the program, each on the CLI11 object that its words select.
struct Commands {
  CLI::App& program;
  std::vector<Command> all;

  void add(CLI::App* app, Run run, Needs needs = Needs::Store) {
    all.push_back({app, std::move(run), needs});
  }
};

/// Exit 0 done, 1 the reply is no, 2 bad input, 3 file or storage trouble. Errors: one line on `err`.
int runCommandLine(int count, const char* const* words, Terminal terminal);

/// True if these words ask for a command rather than the window.
bool asksForCommand(int count, const char* const* words);

}  // namespace cw

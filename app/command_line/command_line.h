#pragma once
#include <functional>
#include <iosfwd>
#include <string>
#include <string_view>
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
  bool isScreen = false;  ///< somebody looks at `out` itself: nothing that steers a screen is written to it
};

/// What a command found, for people as lines and for programs as JSON.
struct Reply {
  std::vector<std::string> lines;  ///< written with what steers a screen escaped
  std::string file;  ///< bytes of a file, in place of lines: written as they are, but on a screen
  Json json = Json(Json::Object{});
  bool yes = true;  ///< false: the reply is no (findings, failed verification); exit 1
};

/// How many rows a list shows unless --limit says otherwise.
inline constexpr int kListed = 1000;
/// --limit, for a list that can be longer than anybody reads.
void addLimit(CLI::App* app, int& limit);
/// Says in lines and JSON of how many these are the first; `what`: "jobs".
void sayOfHowMany(Reply& reply, std::size_t shown, std::size_t total, std::string_view what);

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

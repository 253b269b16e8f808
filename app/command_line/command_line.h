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

/// Where a command finds its input and leaves its answer.
struct Terminal {
  std::ostream& out;
  std::ostream& err;
  std::istream& in;
};

/// What a command found, for people as lines and for programs as JSON.
struct Answer {
  std::vector<std::string> lines;
  Json json = Json(Json::Object{});
  bool yes = true;  ///< false: the answer is no (findings, failed verification); exit 1
};

/// What is the same for every command of one call.
struct Options {
  std::string shopFile;  ///< --shop
  bool json = false;     ///< --json
};

/// One command: named and described on `app`, its own options bound inside. `run` is called after parsing.
struct Command {
  std::function<Result<Answer>(const Options&, Terminal&)> run;
};

/// Adds one command to the program and says what runs it.
using AddCommand = Command (*)(CLI::App& app);

/// Exit 0 done, 1 the answer is no, 2 bad input, 3 file or storage trouble. Errors: one line on `err`.
int runCommandLine(int count, const char* const* words, Terminal terminal);

/// True if these words ask for a command rather than the window.
bool asksForCommand(int count, const char* const* words);

}  // namespace cw

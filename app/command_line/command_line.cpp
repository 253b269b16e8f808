#include "app/command_line/command_line.h"

#include <CLI/CLI.hpp>
#include <ostream>

#include "app/command_line/commands.h"

namespace cw {
namespace {

constexpr AddCommand kCommands[] = {addConvert, addThread};

/// The one line that CLI11 explains a slip with.
Error usageError(const CLI::ParseError& slip) {
  std::string what = slip.what();
  what = what.substr(0, what.find('\n'));
  return {ErrorCode::InvalidInput, "command line", "", Message(std::move(what)), "see clampwright --help"};
}

int refuse(const Error& error, Terminal& terminal) {
  terminal.err << "clampwright: " << sentence(error) << "\n";
  return exitCode(error.code);
}

int show(const Answer& answer, bool asJson, Terminal& terminal) {
  if (asJson)
    terminal.out << canonical(answer.json) << "\n";
  else
    for (const std::string& line : answer.lines) terminal.out << line << "\n";
  terminal.out.flush();
  if (!terminal.out)
    return refuse(
        {ErrorCode::Storage, "output", "", "the answer could not be written", "check where it goes"},
        terminal);
  return answer.yes ? 0 : 1;
}

}  // namespace

int runCommandLine(int count, const char* const* words, Terminal terminal) {
  CLI::App program("Clampwright: the right torque, in the right order, on the record.", "clampwright");
  program.set_version_flag("--version", "clampwright " CW_VERSION);
  program.fallthrough();
  Options options;
  program.add_option("--shop", options.shopFile, "Shop file to use")->type_name("FILE");
  program.add_flag("--json", options.json, "Answer in JSON: full precision, SI unless named");

  std::vector<std::pair<CLI::App*, Command>> commands;
  for (const AddCommand add : kCommands) {
    Command command = add(program);
    commands.emplace_back(program.get_subcommands([](CLI::App*) { return true; }).back(), std::move(command));
  }
  try {
    program.parse(count, words);
  } catch (const CLI::Success& wanted) {  // --help and --version
    return program.exit(wanted, terminal.out, terminal.err);
  } catch (const CLI::ParseError& slip) {
    return refuse(usageError(slip), terminal);
  }
  for (const auto& [app, command] : commands) {
    if (!app->parsed()) continue;
    const Result<Answer> answer = command.run(options, terminal);
    return answer ? show(*answer, options.json, terminal) : refuse(answer.error(), terminal);
  }
  return refuse(
      {ErrorCode::InvalidInput, "command line", "", "no command was given", "see clampwright --help"},
      terminal);
}

bool asksForCommand(int count, const char* const* words) {
  for (int i = 1; i < count; ++i) {
    const std::string_view word = words[i];
    if (word == "--shop")
      ++i;
    else if (!word.starts_with("--shop="))
      return true;
  }
  return false;
}

}  // namespace cw

#include "app/command_line/command_line.h"

#include <CLI/CLI.hpp>
#include <QCoreApplication>
#include <optional>
#include <ostream>
#include <sstream>

#include "app/command_line/commands.h"
#include "app/print/press.h"
#include "core/base/printable.h"

namespace cw {
namespace {

constexpr void (*kCommands[])(Commands&) = {
    addConvert, addThread, addClamp, addGuard, addRecondition, addSetting, addStrip,  addOrder,   addSettle,
    addShop,    addKey,    addSheet, addJob,   addRecord,      addDemo,    addBackup, addInspect, addLibrary};

/// The application object that the store or the fonts need while a command runs, unless there is one. Neither
/// needs a display.
class Application {
 public:
  explicit Application(Needs needs) {
    if (needs == Needs::Fonts)
      m_press.emplace();
    else if (QCoreApplication::instance() == nullptr)
      m_core.emplace(m_none, nullptr);
  }

 private:
  int m_none = 0;
  std::optional<QCoreApplication> m_core;
  std::optional<Press> m_press;
};

/// The one line that CLI11 explains a slip with.
Error usageError(const CLI::ParseError& slip) {
  std::string what = slip.what();
  what = what.substr(0, what.find('\n'));
  return {ErrorCode::InvalidInput, "command line", "", Message(std::move(what)), "see clampwright --help"};
}

int refuse(const Error& error, Terminal& terminal) {
  terminal.err << "clampwright: " << printable(sentence(error)) << "\n";
  return exitCode(error.code);
}

void showFile(const std::string& bytes, Terminal& terminal) {
  if (!terminal.isScreen) {
    terminal.out << bytes << (bytes.ends_with('\n') ? "" : "\n");
    return;
  }
  std::istringstream lines(bytes);
  for (std::string line; std::getline(lines, line);) terminal.out << printable(line) << "\n";
}

int show(const Reply& reply, bool asJson, Terminal& terminal) {
  if (asJson)
    terminal.out << printableJson(canonical(reply.json)) << "\n";
  else if (!reply.file.empty())
    showFile(reply.file, terminal);
  else
    for (const std::string& line : reply.lines) terminal.out << printable(line) << "\n";
  terminal.out.flush();
  if (!terminal.out)
    return refuse({ErrorCode::Storage, "output", "", "the reply could not be written", "check where it goes"},
                  terminal);
  return reply.yes ? 0 : 1;
}

int run(const Commands& commands, const Options& options, Terminal& terminal) {
  for (const auto& [app, work, needs] : commands.all) {
    if (!app->parsed()) continue;
    const Application application(needs);
    const Result<Reply> reply = work(options, terminal);
    return reply ? show(*reply, options.json, terminal) : refuse(reply.error(), terminal);
  }
  return refuse(
      {ErrorCode::InvalidInput, "command line", "", "no command was given", "see clampwright --help"},
      terminal);
}

}  // namespace

int runCommandLine(int count, const char* const* words, Terminal terminal) {
  CLI::App program("Clampwright: the right torque, in the right order, on the record.", "clampwright");
  program.set_version_flag("--version", "clampwright " CW_VERSION);
  program.fallthrough();
  Options options;
  program.add_option("--shop", options.shopFile, "Shop file to use")->type_name("FILE");
  program.add_flag("--json", options.json, "Reply in JSON: full precision, SI unless named");
  Commands commands{program, {}};
  for (const auto add : kCommands) add(commands);
  try {
    program.parse(count, words);
  } catch (const CLI::Success& wanted) {  // --help and --version
    return program.exit(wanted, terminal.out, terminal.err);
  } catch (const CLI::ParseError& slip) {
    return refuse(usageError(slip), terminal);
  }
  return run(commands, options, terminal);
}

void addLimit(CLI::App* app, int& limit) {
  app->add_option("--limit", limit, "At most so many")->check(CLI::Range(1, 10'000'000));
}

void sayOfHowMany(Reply& reply, std::size_t shown, std::size_t total, std::string_view what) {
  reply.json.set("total", static_cast<std::int64_t>(total));
  if (shown < total)
    reply.lines.push_back("first " + std::to_string(shown) + " of " + std::to_string(total) + " " +
                          std::string(what) + "; search more narrowly, or ask for more with --limit");
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

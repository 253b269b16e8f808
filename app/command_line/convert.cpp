#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "core/units/format.h"
#include "core/units/parse.h"

namespace cw {

void addConvert(Commands& commands) {
  CLI::App* app = commands.program.add_subcommand("convert", "Show a torque in every torque unit");
  auto torqueText = std::make_shared<std::string>();
  app->add_option("torque", *torqueText, "Value and unit, for example \"60 in.lbf\"")->required();
  commands.add(app, [torqueText](const Options&, Terminal&) -> Result<Reply> {
    auto torque = parse<TorqueTag>(*torqueText);
    if (!torque) return fail(within("torque", torque.error()));
    Reply reply;
    reply.json.set("given", codeText(*torque));
    for (const TorqueUnit* unit : unitsOf<TorqueTag>()) {
      const double value = convert(torque->number(), *torque->unit, *unit);
      reply.json.set(std::string(unit->code), Json::decimal(value));
      reply.lines.push_back(
          (unit == torque->unit ? text(*torque) : withSymbol(significant(value, 6), *unit)) + "  " +
          std::string(unit->words));
    }
    return reply;
  });
}

}  // namespace cw

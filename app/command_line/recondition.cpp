#include "core/joint/recondition.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/engine_reply.h"
#include "app/command_line/fastener_options.h"
#include "app/command_line/open_shop.h"
#include "app/command_line/typed_options.h"
#include "core/fastener/catalogue.h"
#include "core/joint/utilisation.h"

namespace cw {
namespace {

struct ReconditionOptions : FastenerOptions {
  std::string torque, from, to, basis;
  bool working = false;
};

Result<std::optional<Basis>> basisOf(const std::string& written) {
  if (written.empty()) return std::optional<Basis>();
  if (written == "nut-factor") return std::optional(Basis::NutFactor);
  if (written == "friction") return std::optional(Basis::LongForm);
  return fail(ErrorCode::InvalidInput, "--basis", written, {"“%1” is no basis", {shown(written)}},
              "write nut-factor or friction");
}

/// None where the specification does not state its condition.
Result<std::optional<Condition>> statedCondition(const std::string& written, const Catalogue& catalogue) {
  if (written.empty() || written == "unknown") return std::optional<Condition>();
  return named("--from", catalogue.condition(written)).map([](Condition condition) {
    return std::optional(std::move(condition));
  });
}

/// Says so where the torque as specified already takes the bolt to yield.
Result<void> cautionOnYield(Working& working, const Reconditioned& changed, const FastenerCase& fastener) {
  if (!fastener.grade) return {};
  CW_TRY(share, yieldFraction(changed.clampLoad, fastener.thread, *fastener.grade));
  if (share > 1)
    working.cautions.push_back({"the clamp load is %1 % of yield: look at the torque as specified again",
                                {significant(share * 100, 3)}});
  return {};
}

Result<Reply> change(const ReconditionOptions& given, const Catalogue& catalogue) {
  CW_TRY(fastener, fastenerCase(given, catalogue));
  CW_TRY(torque, readStated<TorqueTag>("--torque", given.torque));
  CW_TRY(from, statedCondition(given.from, catalogue));
  CW_TRY(to, named("--to", catalogue.condition(given.to)));
  CW_TRY(basis, basisOf(given.basis));
  CW_TRY(changed, recondition(torque.value(), from, to, fastener.thread, fastener.face, basis));
  CW_CHECK(cautionOnYield(changed.working, changed.value, fastener));
  const auto& [band, load, used] = changed.value;
  Reply reply;
  reply.json.set("torque_Nm", Json::decimal(band.typical.si()));
  reply.json.set("torque_low_Nm", Json::decimal(band.low.si()));
  reply.json.set("torque_high_Nm", Json::decimal(band.high.si()));
  reply.json.set("clamp_load_N", Json::decimal(load.si()));
  reply.json.set("basis", used == Basis::NutFactor ? "nut-factor" : "friction");
  reply.json.set("from", from->name).set("to", to.name);
  const TorqueUnit& unit = *torque.unit;
  reply.lines = {"first choice: bring the parts into the stated condition, “" + from->name + "”, and use " +
                     text(torque) + " as specified",
                 "as a deviation, with threads “" + to.name + "”:",
                 "torque      " + inShopUnits(band.typical, unit) + ", from " + text(band.low, unit) +
                     " to " + text(band.high, unit),
                 "clamp load  " + inShopUnits(load) + ", the same in both"};
  addWorking(reply, changed.working, given.working);
  return reply;
}

}  // namespace

void addRecondition(Commands& commands) {
  CLI::App* app = commands.program.add_subcommand("recondition",
                                                  "The torque for another condition at the same clamp load");
  auto given = std::make_shared<ReconditionOptions>();
  app->add_option("--torque", given->torque, "The torque as specified, with its unit")->required();
  addThreadOption(*app, *given);
  addGradeOption(*app, *given);
  app->add_option("--from", given->from, "The condition that the specification states");
  app->add_option("--to", given->to, "The condition the threads are in")->required();
  addFaceOption(*app, *given);
  app->add_option("--basis", given->basis,
                  "nut-factor or friction; the nut factor where both conditions have one");
  addWorkingFlag(*app, given->working);
  commands.add(app, [given](const Options& options, Terminal&) -> Result<Reply> {
    CW_TRY(catalogue, catalogueOf(options));
    return change(*given, catalogue);
  });
}

}  // namespace cw

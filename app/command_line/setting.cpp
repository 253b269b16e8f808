#include "core/joint/setting.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/engine_reply.h"
#include "app/command_line/lever_options.h"
#include "app/command_line/typed_options.h"
#include "core/joint/tool_fitness.h"

namespace cw {
namespace {

struct SettingOptions {
  LeverOptions lever;
  std::string torque, setting, prevailing, rule, tolerance, graduation, range, deviation;
  bool working = false;
};

Result<TorqueTarget> targetOf(const SettingOptions& given, Torque aim) {
  TorqueTarget target{aim, {aim, aim}, {}, PrevailingRule::None};
  if (!given.tolerance.empty()) {
    CW_TRY(share, readShare("--tolerance", given.tolerance));
    target.tolerance = {aim * (1 - share), aim * (1 + share)};
  }
  if (given.prevailing.empty() != given.rule.empty())
    return fail(ErrorCode::InvalidInput, given.rule.empty() ? "--prevailing-rule" : "--prevailing", "",
                "a prevailing torque and the rule for it go together",
                "give both; the rule is the one that the sheet names");
  if (given.prevailing.empty()) return target;
  CW_TRY(prevailing, readStated<TorqueTag>("--prevailing", given.prevailing));
  CW_TRY(rule, fromWord<PrevailingRule>(given.rule, "--prevailing-rule"));
  target.prevailing = prevailing.value();
  target.rule = rule;
  return target;
}

/// The setting before it meets the marks of a wrench.
Result<Worked<Torque>> exactSetting(const TorqueTarget& target, const std::optional<Lever>& lever) {
  CW_TRY(applied, withPrevailing(target.aim, target.prevailing, target.rule));
  if (lever) return settingFor(applied, *lever);
  Working working;
  working.formula = "TW = T + Tp";
  working.give("T", "torque aimed at", target.aim, kNewtonMetre, "stated");
  working.give("Tp", "prevailing torque that is added", applied - target.aim, kNewtonMetre, "stated");
  working.step("TW", "T+Tp", applied, kNewtonMetre);
  return Worked<Torque>{applied, std::move(working)};
}

void setSetting(Reply& reply, const StatedTorque& setting, Torque exact, Torque value) {
  reply.json.set("setting", codeText(setting)).set("setting_Nm", Json::decimal(value.si()));
  reply.json.set("exact_Nm", Json::decimal(exact.si()));
  reply.lines.push_back("set to           " + inShopUnits(setting) + "  (" + inWords(setting) + ")");
}

/// Is a wrench of that range and deviation fit for the setting?
Result<void> judgeTool(Reply& reply, const SettingOptions& given, const WrenchSetting& setting) {
  if (given.range.empty() && given.deviation.empty()) return {};
  if (given.range.empty() || given.deviation.empty())
    return fail(ErrorCode::InvalidInput, given.range.empty() ? "--tool-range" : "--tool-deviation", "",
                "the wrench is half described", "give its marked range and its permissible deviation");
  CW_TRY(range, readTorqueRange("--tool-range", given.range));
  CW_TRY(graduation, readStated<TorqueTag>("--graduation", given.graduation));
  TorqueTool tool;
  tool.id = "the wrench";
  tool.kind = "wrench";
  CW_TRY(deviation, readShare("--tool-deviation", given.deviation));
  tool.deviation = deviation;
  tool.scales = {{range.low, range.high, graduation}};
  CW_CHECK(check(tool));
  const ToolFitness fitness = toolFitness(tool, setting);
  reply.json.set("ratio", Json::decimal(fitness.ratio));
  reply.lines.push_back("tolerance to deviation of the wrench: " + significant(fitness.ratio, 2) + " : 1");
  addFindings(reply, fitness.findings);
  return {};
}

Result<Reply> onMarks(const SettingOptions& given, const TorqueTarget& target,
                      const std::optional<Lever>& lever) {
  CW_TRY(graduation, readStated<TorqueTag>("--graduation", given.graduation));
  if (given.tolerance.empty())
    return fail(ErrorCode::InvalidInput, "--tolerance", "",
                "the marks of a wrench need a tolerance to round in",
                "add the tolerance of the torque, for example --tolerance 5%");
  CW_TRY(found, wrenchSetting(target, lever, graduation));
  const WrenchSetting& setting = found.value;
  const TorqueUnit& unit = *graduation.unit;
  Reply reply;
  setSetting(reply, setting.setting, setting.exact, setting.setting.value());
  reply.json.set("applied_Nm", Json::decimal(setting.applied.si()));
  reply.json.set("setting_low_Nm", Json::decimal(setting.allowed.low.si()));
  reply.json.set("setting_high_Nm", Json::decimal(setting.allowed.high.si()));
  reply.lines.push_back("exact            " + inShopUnits(setting.exact, unit) + ", allowed from " +
                        text(setting.allowed.low, unit) + " to " + text(setting.allowed.high, unit));
  reply.lines.push_back("at the fastener  " + inShopUnits(setting.applied, unit));
  CW_CHECK(judgeTool(reply, given, setting));
  addWorking(reply, found.working, given.working);
  return reply;
}

Result<Reply> settingReply(const SettingOptions& given, const std::optional<Lever>& lever) {
  CW_TRY(torque, readStated<TorqueTag>("--torque", given.torque));
  CW_TRY(target, targetOf(given, torque.value()));
  if (!given.graduation.empty()) return onMarks(given, target, lever);
  if (!given.range.empty() || !given.deviation.empty())
    return fail(ErrorCode::InvalidInput, "--graduation", "", "the wrench is half described",
                "add the distance between its marks");
  CW_TRY(exact, exactSetting(target, lever));
  const StatedTorque shown{significant(in(*torque.unit, exact.value), 4), torque.unit};
  Reply reply;
  setSetting(reply, shown, exact.value, exact.value);
  reply.lines.push_back("at the fastener  " + inShopUnits(torque));
  addWorking(reply, exact.working, given.working);
  return reply;
}

/// Back from what the wrench was set to.
Result<Reply> appliedReply(const SettingOptions& given, const std::optional<Lever>& lever) {
  CW_TRY(setting, readStated<TorqueTag>("--setting", given.setting));
  if (!lever)
    return fail(ErrorCode::InvalidInput, "--length", "", "there is no adapter",
                "describe it with --length and --offset");
  CW_TRY(applied, appliedBy(setting.value(), *lever));
  const StatedTorque shown{significant(in(*setting.unit, applied.value), 4), setting.unit};
  Reply reply;
  reply.json.set("setting_Nm", Json::decimal(setting.value().si())).set("setting", codeText(setting));
  reply.json.set("applied_Nm", Json::decimal(applied.value.si())).set("applied", codeText(shown));
  reply.lines = {"set to           " + inShopUnits(setting), "at the fastener  " + inShopUnits(shown)};
  addWorking(reply, applied.working, given.working);
  return reply;
}

}  // namespace

void addSetting(Commands& commands) {
  CLI::App* app =
      commands.program.add_subcommand("setting", "What to set the wrench to, with an adapter on it");
  auto given = std::make_shared<SettingOptions>();
  CLI::Option_group* known = app->add_option_group("known", "what is known: one of these");
  known->add_option("--torque", given->torque, "Torque the fastener is to get, with its unit");
  known->add_option("--setting", given->setting, "What the wrench was set to: shows what the fastener got");
  known->require_option(1);
  addLeverOptions(*app, given->lever);
  app->add_option("--prevailing", given->prevailing, "Running torque of a locking fastener, with its unit");
  app->add_option("--prevailing-rule", given->rule, "always-add, add-from-one-third or none");
  app->add_option("--tolerance", given->tolerance, "Tolerance of the torque, to both sides: 5%");
  app->add_option("--graduation", given->graduation, "Distance between the wrench's marks: \"1 ft.lbf\"");
  app->add_option("--tool-range", given->range, "The wrench's marked range: \"5..25 ft.lbf\"");
  app->add_option("--tool-deviation", given->deviation, "The wrench's permissible deviation: 4%");
  addWorkingFlag(*app, given->working);
  commands.add(app, [given](const Options&, Terminal&) -> Result<Reply> {
    CW_TRY(lever, leverOf(given->lever));
    return given->torque.empty() ? appliedReply(*given, lever) : settingReply(*given, lever);
  });
}

}  // namespace cw

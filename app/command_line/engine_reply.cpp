#include "app/command_line/engine_reply.h"

#include <CLI/CLI.hpp>

#include "core/fastener/thread.h"
#include "core/procedure/spoken_place.h"
#include "core/units/format.h"

namespace cw {
namespace {

constexpr const TorqueUnit* kShopUnits[] = {&kNewtonMetre, &kPoundInch, &kPoundFoot};

std::string inOtherUnits(Torque torque, const TorqueUnit& first) {
  std::string out;
  for (const TorqueUnit* unit : kShopUnits)
    if (unit != &first) out += " = " + text(torque, *unit);
  return out;
}

Json texts(const std::vector<Message>& messages) {
  Json::Array out;
  for (const Message& message : messages) out.push_back(plain(message));
  return out;
}

}  // namespace

std::string inShopUnits(Torque torque, const TorqueUnit& first) {
  return text(torque, first) + inOtherUnits(torque, first);
}

std::string inShopUnits(const StatedTorque& torque) {
  return text(torque) + inOtherUnits(torque.value(), *torque.unit);
}

std::string inShopUnits(Force load) {
  return text(load, kKilonewton) + " = " + text(load, kPoundForce);
}

const TorqueUnit& usualUnit(const Thread& thread) {
  return thread.system == ThreadSystem::Unified ? kPoundFoot : kNewtonMetre;
}

Json toJson(const Working& working) {
  Json::Array given, steps;
  for (const auto& row : working.given)
    given.push_back(Json()
                        .set("symbol", row.symbol)
                        .set("meaning", plain(row.meaning))
                        .set("value", row.value)
                        .set("unit", row.unit)
                        .set("source", row.source));
  for (const auto& row : working.steps)
    steps.push_back(Json()
                        .set("symbol", row.symbol)
                        .set("formula", row.formula)
                        .set("value", row.value)
                        .set("unit", row.unit));
  Json out;
  out.set("formula", working.formula).set("given", std::move(given)).set("steps", std::move(steps));
  out.set("validity", texts(working.validity)).set("cautions", texts(working.cautions));
  return out.set("sources", Json::Array(working.sources.begin(), working.sources.end()));
}

Json toJson(const Findings& findings) {
  Json::Array out;
  for (const Finding& finding : findings)
    out.push_back(Json()
                      .set("severity", wordOf(finding.severity))
                      .set("code", finding.code)
                      .set("place", finding.place)
                      .set("where", spokenPlace(finding.place))
                      .set("problem", plain(finding.problem))
                      .set("cure", plain(finding.cure)));
  return out;
}

void addWorking(Reply& reply, const Working& working, bool withLines) {
  reply.json.set("working", toJson(working));
  if (!withLines) {
    for (const Message& caution : working.cautions) reply.lines.push_back("caution: " + plain(caution));
    return;
  }
  const std::vector<std::string> all = lines(working);
  reply.lines.insert(reply.lines.end(), all.begin(), all.end());
}

void addWorkingFlag(CLI::App& app, bool& into) {
  app.add_flag("--working", into, "Show how the result came about, to be recomputed with pen and paper");
}

void addFindings(Reply& reply, const Findings& findings) {
  for (const Finding& finding : findings)
    reply.lines.push_back(std::string(wordOf(finding.severity)) + ": " +
                          sentence(spokenPlace(finding.place), finding.problem, finding.cure));
  reply.json.set("findings", toJson(findings));
  reply.yes = reply.yes && !hasBlocking(findings);
}

}  // namespace cw

#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/engine_reply.h"
#include "app/command_line/fastener_options.h"
#include "app/command_line/lever_options.h"
#include "app/command_line/open_shop.h"
#include "app/command_line/typed_options.h"
#include "core/joint/agreement.h"
#include "core/joint/guard.h"

namespace cw {
namespace {

struct GuardOptions : FastenerOptions {
  std::string torque, also, part, prevailing;
  LeverOptions lever;
  bool working = false;
};

constexpr std::pair<std::string_view, Ungrounded> kParts[] = {
    {"plug", Ungrounded::Plug},
    {"bearing-preload", Ungrounded::BearingPreload},
    {"unmarked", Ungrounded::UnmarkedFastener},
    {"gasket-limited", Ungrounded::LimitedByGasket},
    {"plastic-limited", Ungrounded::LimitedByPlastic}};

Result<std::optional<Ungrounded>> ungroundedBy(const std::string& part) {
  if (part.empty()) return std::optional<Ungrounded>();
  for (const auto& [name, reason] : kParts)
    if (name == part) return std::optional(reason);
  return fail(ErrorCode::InvalidInput, "--part", part, {"“%1” is no part known here", {shown(part)}},
              "write plug, bearing-preload, unmarked, gasket-limited or plastic-limited");
}

Result<Judgement> judged(const GuardOptions& given, const StatedTorque& torque, const GuardSubject& subject) {
  CW_TRY(lever, leverOf(given.lever));
  if (!lever && given.prevailing.empty()) return judge(torque, subject);
  Torque prevailing;
  if (!given.prevailing.empty()) {
    CW_TRY(stated, readStated<TorqueTag>("--prevailing", given.prevailing));
    prevailing = stated.value();
  }
  return judgeSetting(torque, lever, prevailing, subject);
}

/// The same digits in a unit that would fit.
StatedTorque inUnit(const Judgement& judgement, const TorqueUnit* unit) {
  return {judgement.torque.digits, unit};
}

void addNumbers(Reply& reply, const Judgement& judgement) {
  const bool isJudged = judgement.verdict != Verdict::NotJudged;
  const auto torque = [&](Torque value) { return isJudged ? Json::decimal(value.si()) : Json(); };
  reply.json.set("verdict", wordOf(judgement.verdict));
  reply.json.set("torque_Nm", Json::decimal(judgement.torque.value().si()));
  reply.json.set("band_low_Nm", torque(judgement.low)).set("band_high_Nm", torque(judgement.high));
  reply.json.set("yield_typical_Nm", torque(judgement.yieldTypical));
  reply.json.set("yield_certain_Nm", torque(judgement.yieldCertain));
  reply.json.set("utilisation", isJudged ? Json::decimal(judgement.utilisation) : Json());
  reply.json.set("limit", !isJudged                             ? Json()
                          : judgement.limit == Limit::BoltYield ? Json("bolt-yield")
                                                                : Json("thread-stripping"));
  Json::Array fits;
  for (const TorqueUnit* unit : judgement.fits) fits.push_back(codeText(inUnit(judgement, unit)));
  reply.json.set("suggestion", fits.empty() ? Json() : fits.front()).set("suggestions", std::move(fits));
}

void addWords(Reply& reply, const Judgement& judgement) {
  Json::Array said;
  reply.lines.push_back(std::string(wordOf(judgement.verdict)));
  for (const Message& message : explain(judgement)) {
    reply.lines.push_back(plain(message));
    said.push_back(plain(message));
  }
  reply.json.set("explanation", std::move(said));
  if (judgement.verdict == Verdict::NotJudged) return;
  const TorqueUnit& unit = *judgement.torque.unit;
  reply.lines.push_back("judged  " + inShopUnits(judgement.torque));
  reply.lines.push_back("from    " + inShopUnits(judgement.low, unit));
  reply.lines.push_back("to      " + inShopUnits(judgement.high, unit));
}

/// Holds the second printed column against the first.
Result<void> compareColumns(Reply& reply, const std::string& also, const StatedTorque& first) {
  if (also.empty()) return {};
  CW_TRY(second, readStated<TorqueTag>("--also", also));
  CW_TRY(found, named("--also", columnsAgree(first, second)));
  reply.json.set("agreement", wordOf(found.agreement));
  reply.lines.push_back(plain(explain(found, first, second)));
  reply.yes = reply.yes && found.agreement != Agreement::Disagrees;
  return {};
}

Result<Reply> guard(const GuardOptions& given, const Catalogue& catalogue) {
  CW_TRY(torque, readStated<TorqueTag>("--torque", given.torque));
  GuardSubject subject;
  CW_TRY(fastener, fastenerCase(given, catalogue));
  static_cast<FastenerCase&>(subject) = fastener;
  CW_TRY(ungrounded, ungroundedBy(given.part));
  subject.ungrounded = ungrounded;
  CW_TRY(judgement, judged(given, torque, subject));
  Reply reply;
  reply.yes = judgement.verdict == Verdict::InBand || judgement.verdict == Verdict::NotJudged;
  addNumbers(reply, judgement);
  addWords(reply, judgement);
  CW_CHECK(compareColumns(reply, given.also, torque));
  Working working;
  if (judgement.verdict != Verdict::NotJudged) {
    CW_TRY(band, capacityWorking(subject));
    working = band;
  }
  addWorking(reply, working, given.working);
  return reply;
}

}  // namespace

void addGuard(Commands& commands) {
  CLI::App* app = commands.program.add_subcommand("guard", "Judge a torque by what its fastener can bear");
  auto given = std::make_shared<GuardOptions>();
  addThreadOption(*app, *given);
  addGradeOption(*app, *given);
  app->add_option("--torque", given->torque, "The torque to judge, with its unit")->required();
  app->add_option("--also", given->also, "The second printed column, in another unit");
  addConditionOptions(*app, *given);
  addFaceOption(*app, *given);
  addHoleOptions(*app, *given);
  app->add_option("--part", given->part,
                  "Why the bolt's strength says nothing: plug, bearing-preload, unmarked, gasket-limited, "
                  "plastic-limited");
  addLeverOptions(*app, given->lever);
  app->add_option("--prevailing", given->prevailing, "Running torque of a locking fastener, with its unit");
  addWorkingFlag(*app, given->working);
  commands.add(app, [given](const Options& options, Terminal&) -> Result<Reply> {
    CW_TRY(catalogue, catalogueOf(options));
    return guard(*given, catalogue);
  });
}

}  // namespace cw

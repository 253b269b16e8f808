#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/engine_reply.h"
#include "app/command_line/fastener_options.h"
#include "app/command_line/open_shop.h"
#include "app/command_line/typed_options.h"
#include "core/joint/clamp_band.h"
#include "core/joint/prevailing.h"
#include "core/joint/utilisation.h"

namespace cw {
namespace {

struct ClampOptions : FastenerOptions {
  std::string torque, load, proof, yield, utilisation;
  std::string toolDeviation, prevailing;
  bool working = false;
};

/// A fastener with the numbers that tie its torque to its clamp load.
struct ClampQuestion {
  FastenerCase fastener;
  ResistanceRange resistance;
  double toolDeviation = 0;
  Torque prevailing;

  const Thread& thread() const { return fastener.thread; }
};

Result<ClampQuestion> questionOf(const ClampOptions& given, const Catalogue& catalogue) {
  CW_TRY(fastener, fastenerCase(given, catalogue));
  if (!fastener.condition)
    return fail(ErrorCode::InvalidInput, "condition", "", "the condition of the threads is not stated",
                "add --condition, --friction or --nut-factor");
  CW_TRY(resistance, resistanceOf(fastener));
  ClampQuestion out{fastener, resistance, 0, {}};
  if (!given.toolDeviation.empty()) {
    CW_TRY(deviation, readShare("--tool-deviation", given.toolDeviation));
    out.toolDeviation = deviation;
  }
  if (!given.prevailing.empty()) {
    CW_TRY(prevailing, readStated<TorqueTag>("--prevailing", given.prevailing));
    out.prevailing = prevailing.value();
  }
  return out;
}

Result<const Grade*> gradeOf(const ClampQuestion& at) {
  if (at.fastener.grade) return &*at.fastener.grade;
  return fail(ErrorCode::InvalidInput, "--grade", "", "a share of the strength needs the grade",
              "add --grade");
}

/// The clamp load that is aimed at, with its working where it follows from the strength.
Result<Worked<Force>> loadWanted(const ClampOptions& given, const ClampQuestion& at) {
  if (!given.load.empty()) {
    CW_TRY(load, readStated<ForceTag>("--load", given.load));
    return Worked<Force>{load.value(), {}};
  }
  CW_TRY(grade, gradeOf(at));
  if (!given.proof.empty()) {
    CW_TRY(share, readShare("--proof", given.proof));
    return loadAtProof(share, at.thread(), *grade);
  }
  if (!given.yield.empty()) {
    CW_TRY(share, readShare("--yield", given.yield));
    return loadAtYield(share, at.thread(), *grade);
  }
  CW_TRY(share, readShare("--utilisation", given.utilisation));
  return loadAtUtilisation(share, at.resistance.typical.friction.thread, at.thread(), *grade);
}

void cautionOnBand(Working& working, const ClampQuestion& at) {
  const auto& range = at.resistance;
  if (at.toolDeviation == 0 && range.low.arm == range.high.arm)
    working.cautions.push_back(
        "friction and tool are taken as exact, so the band has no width; real ones scatter");
}

/// How hard the bolt works at the clamp load; null where the grade does not say.
Result<void> addStrength(Reply& reply, Working& working, const ClampQuestion& at, const ClampBand& band) {
  reply.json.set("proof_fraction", Json()).set("yield_fraction", Json()).set("utilisation", Json());
  if (!at.fastener.grade) return {};
  const Grade& grade = *at.fastener.grade;
  const double friction = at.resistance.typical.friction.thread;
  const auto percent = [](double share) { return significant(share * 100, 3) + " %"; };
  std::string line = "            ";
  if (grade.proof) {
    CW_TRY(proof, proofFraction(band.typical, at.thread(), grade));
    reply.json.set("proof_fraction", Json::decimal(proof));
    line += percent(proof) + " of proof, ";
  }
  CW_TRY(yield, yieldFraction(band.typical, at.thread(), grade));
  CW_TRY(twisted, utilisation(band.typical, friction, at.thread(), grade));
  CW_TRY(atMost, utilisation(band.high, at.resistance.low.friction.thread, at.thread(), grade));
  reply.json.set("yield_fraction", Json::decimal(yield)).set("utilisation", Json::decimal(twisted));
  reply.lines.push_back(line + percent(yield) + " of yield, " + percent(twisted) +
                        " while the wrench still twists it");
  if (twisted > 1)
    working.cautions.push_back("this is past yield: the clamp load no longer rises with the torque as shown");
  else if (atMost > 1)
    working.cautions.push_back("where friction is low and the tool reads low, the bolt is past yield");
  return {};
}

std::string bandLine(const ClampBand& band) {
  return "clamp load  " + inShopUnits(band.typical) + ", from " + text(band.low, kKilonewton) + " to " +
         text(band.high, kKilonewton);
}

void setBand(Json& json, const ClampBand& band) {
  json.set("clamp_load_N", Json::decimal(band.typical.si()));
  json.set("clamp_load_low_N", Json::decimal(band.low.si()));
  json.set("clamp_load_high_N", Json::decimal(band.high.si()));
}

/// Names the prevailing torque that stands between the wrench and what tightens.
void givePrevailing(Working& working, const ClampQuestion& at, Torque atWrench) {
  if (at.prevailing == Torque()) return;
  working.give("Tp", "prevailing torque, which never clamps", at.prevailing, kNewtonMetre, "stated");
  working.step("Tw", "T+Tp", atWrench, kNewtonMetre);
}

Result<Reply> fromTorque(const ClampOptions& given, const ClampQuestion& at) {
  CW_TRY(torque, readStated<TorqueTag>("--torque", given.torque));
  CW_TRY(tightening, tighteningPart(torque.value(), at.prevailing));
  CW_TRY(band, clampFromTorque(tightening, at.resistance, at.toolDeviation, at.thread()));
  Reply reply;
  reply.json.set("torque_Nm", Json::decimal(torque.value().si()));
  setBand(reply.json, band.value);
  reply.lines = {"torque      " + inShopUnits(torque), bandLine(band.value)};
  givePrevailing(band.working, at, torque.value());
  cautionOnBand(band.working, at);
  CW_CHECK(addStrength(reply, band.working, at, band.value));
  addWorking(reply, band.working, given.working);
  return reply;
}

Result<Reply> fromLoad(const ClampOptions& given, const ClampQuestion& at) {
  CW_TRY(load, loadWanted(given, at));
  CW_TRY(torque, torqueFromClamp(load.value, at.resistance, at.toolDeviation, at.thread()));
  CW_TRY(band, clampFromTorque(torque.value.typical, at.resistance, at.toolDeviation, at.thread()));
  const RequiredTorque atWrench{torque.value.low + at.prevailing, torque.value.typical + at.prevailing,
                                torque.value.high + at.prevailing};
  const TorqueUnit& unit = usualUnit(at.thread());
  Reply reply;
  reply.json.set("torque_Nm", Json::decimal(atWrench.typical.si()));
  reply.json.set("torque_low_Nm", Json::decimal(atWrench.low.si()));
  reply.json.set("torque_high_Nm", Json::decimal(atWrench.high.si()));
  setBand(reply.json, band.value);
  reply.lines = {"torque      " + inShopUnits(atWrench.typical, unit) + ", from " + text(atWrench.low, unit) +
                     " to " + text(atWrench.high, unit),
                 bandLine(band.value)};
  load.working.include(torque.working);
  load.working.formula = torque.working.formula;
  givePrevailing(load.working, at, atWrench.typical);
  cautionOnBand(load.working, at);
  CW_CHECK(addStrength(reply, load.working, at, band.value));
  addWorking(reply, load.working, given.working);
  return reply;
}

}  // namespace

void addClamp(Commands& commands) {
  CLI::App* app = commands.program.add_subcommand("clamp", "Torque to clamp load, or clamp load to torque");
  auto given = std::make_shared<ClampOptions>();
  addThreadOption(*app, *given);
  addGradeOption(*app, *given);
  addConditionOptions(*app, *given);
  addFaceOption(*app, *given);
  CLI::Option_group* known = app->add_option_group("known", "what is known: one of these");
  known->add_option("--torque", given->torque, "Torque at the wrench, with its unit");
  known->add_option("--load", given->load, "Clamp load, with its unit");
  known->add_option("--proof", given->proof, "Clamp load as a share of proof load: 75%");
  known->add_option("--yield", given->yield, "Clamp load as a share of yield, axial stress alone: 70%");
  known->add_option("--utilisation", given->utilisation,
                    "Clamp load as a share of yield with the wrench's twist (von Mises): 90%");
  known->require_option(1);
  app->add_option("--tool-deviation", given->toolDeviation, "Permissible deviation of the torque tool: 4%");
  app->add_option("--prevailing", given->prevailing, "Running torque of a locking fastener, with its unit");
  addWorkingFlag(*app, given->working);
  commands.add(app, [given](const Options& options, Terminal&) -> Result<Reply> {
    CW_TRY(catalogue, catalogueOf(options));
    CW_TRY(at, questionOf(*given, catalogue));
    return given->torque.empty() ? fromLoad(*given, at) : fromTorque(*given, at);
  });
}

}  // namespace cw

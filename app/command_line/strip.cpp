#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/engine_reply.h"
#include "app/command_line/fastener_options.h"
#include "app/command_line/open_shop.h"
#include "core/joint/stripping.h"

namespace cw {
namespace {

struct StripOptions : FastenerOptions {
  bool working = false;
};

std::string_view wordsOf(Failure failure) {
  switch (failure) {
    case Failure::BoltBreaks:
      return "the bolt breaks first";
    case Failure::BoltThreadStrips:
      return "the bolt's thread strips first";
    case Failure::TappedThreadStrips:
      break;
  }
  return "the tapped thread strips first";
}

std::string inBoth(Length length) {
  return text(length, kMillimetre) + " = " + text(length, kInch);
}

Result<Reply> strip(const StripOptions& given, const Catalogue& catalogue) {
  CW_TRY(fastener, fastenerCase(given, catalogue));
  CW_TRY(found, stripping(fastener.thread, *fastener.grade, *fastener.hole));
  const Stripping& strips = found.value;
  Reply reply;
  reply.json.set("failure", wordOf(strips.failure)).set("load_N", Json::decimal(strips.load.si()));
  reply.json.set("needed_engagement_mm", Json::decimal(inMillimetres(strips.neededEngagement)));
  reply.json.set("bolt_breaks_N", Json::decimal(strips.boltBreaks.si()));
  reply.json.set("bolt_thread_strips_N", Json::decimal(strips.boltStrips.si()));
  reply.json.set("tapped_thread_strips_N", Json::decimal(strips.tappedStrips.si()));
  reply.lines = {std::string(wordsOf(strips.failure)) + ", at " + inShopUnits(strips.load),
                 "bolt breaks          " + inShopUnits(strips.boltBreaks),
                 "bolt thread strips   " + inShopUnits(strips.boltStrips),
                 "tapped thread strips " + inShopUnits(strips.tappedStrips),
                 "from " + inBoth(strips.neededEngagement) + " of full threads on the bolt breaks first"};
  addWorking(reply, found.working, given.working);
  return reply;
}

}  // namespace

void addStrip(Commands& commands) {
  CLI::App* app =
      commands.program.add_subcommand("strip", "What fails first in a tapped hole, and at what load");
  auto given = std::make_shared<StripOptions>();
  addThreadOption(*app, *given);
  addGradeOption(*app, *given);
  addHoleOptions(*app, *given);
  for (const char* needed : {"--grade", "--engagement", "--tapped"}) app->get_option(needed)->required();
  addWorkingFlag(*app, given->working);
  commands.add(app, [given](const Options& options, Terminal&) -> Result<Reply> {
    CW_TRY(catalogue, catalogueOf(options));
    return strip(*given, catalogue);
  });
}

}  // namespace cw

#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/open_shop.h"
#include "core/fastener/catalogue.h"
#include "core/units/format.h"

namespace cw {
namespace {

Reply geometryOf(const Thread& thread) {
  const double area = in(kSquareMillimetre, thread.stressArea);
  Reply reply;
  reply.json.set("designation", thread.designation);
  reply.json.set("hand", thread.hand == Hand::Left ? "left" : "right");
  reply.json.set("diameter_mm", Json::decimal(in(kMillimetre, thread.diameter)));
  reply.json.set("pitch_mm", Json::decimal(in(kMillimetre, thread.pitch)));
  reply.json.set("pitch_diameter_mm", Json::decimal(in(kMillimetre, thread.pitchDiameter)));
  reply.json.set("minor_diameter_mm", Json::decimal(in(kMillimetre, thread.minorDiameter)));
  reply.json.set("root_diameter_mm", Json::decimal(in(kMillimetre, thread.rootDiameter)));
  reply.json.set("stress_area_mm2", Json::decimal(area));
  reply.json.set("source", thread.provenance.source);
  reply.json.set("seen", thread.provenance.seen);
  reply.lines = {thread.designation + (thread.hand == Hand::Left ? " (left hand)" : ""),
                 "diameter d         " + text(thread.diameter, kMillimetre, 5),
                 "pitch P            " + text(thread.pitch, kMillimetre, 5),
                 "pitch diameter d2  " + text(thread.pitchDiameter, kMillimetre, 5),
                 "minor diameter D1  " + text(thread.minorDiameter, kMillimetre, 5),
                 "root diameter d3   " + text(thread.rootDiameter, kMillimetre, 5),
                 "stress area As     " + significant(area, 4) + kUnitSpace + "mm²",
                 "source: " + thread.provenance.source +
                     (thread.provenance.seen ? "" : " (from memory, check your edition)")};
  return reply;
}

}  // namespace

void addThread(Commands& commands) {
  CLI::App* app = commands.program.add_subcommand("thread", "Show the geometry of a screw thread");
  auto designation = std::make_shared<std::string>();
  app->add_option("designation", *designation, "M8, M8x1, 3/8-16 UNC, #10-32, M8-LH …")->required();
  commands.add(app, [designation](const Options& options, Terminal&) -> Result<Reply> {
    CW_TRY(catalogue, catalogueOf(options));
    return catalogue.thread(*designation).map(geometryOf);
  });
}

}  // namespace cw

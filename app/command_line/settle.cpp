#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/engine_reply.h"
#include "core/pattern/share_text.h"
#include "core/settling/settling_course.h"
#include "core/settling/settling_file.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

struct SettleOptions {
  std::string file;
  bool steps = false;
};

constexpr const char* kLimits =
    "A prediction, not a measurement: plate, gasket and bolts as springs; no creep, no yielding, no "
    "difference "
    "in friction. It never stands in a record as a bolt's load.";

Json loadsJson(const std::vector<Force>& loads) {
  Json::Array out;
  for (const Force load : loads) out.push_back(Json::decimal(load.si()));
  return out;
}

Json matrixJson(const Flexibility& matrix) {
  Json::Array rows;
  for (int i = 0; i < matrix.size(); ++i) {
    Json::Array row;
    for (int j = 0; j < matrix.size(); ++j) row.push_back(Json::decimal(matrix(i, j).si()));
    rows.push_back(std::move(row));
  }
  return rows;
}

Json passJson(const SettlingSummary& pass) {
  Json out;
  out.set("share", Json::decimal(pass.share)).set("loads_N", loadsJson(pass.loads));
  out.set("mean_N", Json::decimal(pass.mean.si())).set("min_N", Json::decimal(pass.least.si()));
  out.set("max_N", Json::decimal(pass.most.si())).set("spread", Json::decimal(pass.spread));
  out.set("deviation", Json::decimal(pass.deviation));
  out.set("worst_tilt_rad", Json::decimal(pass.worstTilt.si()));
  return out.set("worst_gap_difference_m", Json::decimal(pass.worstGapDifference.si()));
}

Json stepsJson(const SettlingCourse& course) {
  Json::Array out;
  for (const SettlingStep& step : course.steps)
    out.push_back(Json()
                      .set("pass", step.pass)
                      .set("bolt", step.bolt)
                      .set("moved", step.moved)
                      .set("loads_N", loadsJson(step.loads))
                      .set("tilt_rad", Json::decimal(step.tilt.si()))
                      .set("gap_difference_m", Json::decimal(step.gapDifference.si())));
  return out;
}

std::string loadsLine(const std::vector<Force>& loads) {
  std::string out = "  bolts in kN:";
  for (std::size_t i = 0; i < loads.size(); ++i)
    out += "  " + std::to_string(i + 1) + " " + significant(in(kKilonewton, loads[i]), 3);
  return out;
}

void addPassLines(Reply& reply, std::size_t number, const SettlingSummary& pass) {
  reply.lines.push_back("after pass " + std::to_string(number) + " at " + percent(pass.share) + ": mean " +
                        inShopUnits(pass.mean) + ", from " + text(pass.least, kKilonewton) + " to " +
                        text(pass.most, kKilonewton) + ", spread " + significant(pass.spread * 100, 2) +
                        " % of the mean");
  reply.lines.push_back(loadsLine(pass.loads));
  reply.lines.push_back("  while tightening, the gap between the faces differed by up to " +
                        text(pass.worstGapDifference, kMicrometre, 2));
}

Result<SettlingCase> readCase(const std::string& path) {
  CW_TRY(bytes, readFile(path));
  auto found = readSettlingFile(bytes);
  if (!found) return fail(within(path, found.error()));
  return found;
}

Result<Reply> settleReply(const SettleOptions& given) {
  CW_TRY(joint, readCase(given.file));
  CW_TRY(model, settlingModel(joint.joint));
  CW_TRY(course, settle(model, joint.tightening));
  CW_TRY(flexibility, boltFlexibility(joint.joint));
  Reply reply;
  Json::Array passes;
  for (const SettlingSummary& pass : course.passes) {
    passes.push_back(passJson(pass));
    addPassLines(reply, passes.size(), pass);
  }
  reply.json.set("passes", std::move(passes)).set("flexibility_m_per_N", matrixJson(flexibility));
  if (given.steps) reply.json.set("steps", stepsJson(course));
  reply.json.set("limits", kLimits);
  reply.lines.emplace_back(kLimits);
  return reply;
}

}  // namespace

void addSettle(Commands& commands) {
  CLI::App* app =
      commands.program.add_subcommand("settle", "Predict every bolt's clamp load after every pass");
  auto given = std::make_shared<SettleOptions>();
  app->add_option("file", given->file, "Joint, target and passes: see DEVELOPERS.md")->required();
  app->add_flag("--steps", given->steps, "With --json: the loads after every single step too");
  commands.add(app, [given](const Options&, Terminal&) { return settleReply(*given); });
}

}  // namespace cw

#include <CLI/CLI.hpp>
#include <filesystem>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/demo_shop.h"
#include "app/print/joint_picture.h"
#include "app/print/record_pdf.h"
#include "core/base/resource.h"
#include "core/record/verify.h"
#include "core/report/csv.h"
#include "core/report/record_document.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

/// Every joint as it stood at the end, each a picture.
Result<void> writePictures(const std::string& folder, const Job& job, const std::string& prefix,
                           std::vector<std::string>& names) {
  for (std::size_t i = 0; i < job.sheet.steps.size(); ++i) {
    const Step& step = job.sheet.steps[i];
    if (step.kind != StepKind::Tighten) continue;
    names.push_back(prefix + "joint_" + step.joint + ".png");
    CW_CHECK(writeJointPicture(drawingOf(job, i), folder + "/" + names.back()));
  }
  return {};
}

Result<std::vector<std::string>> writeJob(const std::string& folder, const DemoJob& job,
                                          const std::string& prefix) {
  CW_TRY(record, readRecord(job.record));
  const RecordContent content = contentOf(record, {}, plain);
  std::string text;
  for (const std::string& line : lines(recordDocument(content, plain))) text += line + "\n";
  const std::pair<std::string, std::string> files[] = {
      {prefix + "record.json", job.record},
      {prefix + "tightenings.csv", csvOfTightenings(content)},
      {prefix + "record.txt", text},
      {prefix + "sheet.json", record.job.sheetBytes},
      {prefix + "lines.jsonl", std::string(resource("demo/" + job.name + ".jsonl"))}};
  std::vector<std::string> out{prefix + "record.pdf"};
  CW_CHECK(writeRecordPdf(content, {job.record, {}}, folder + "/" + out.front(), PageSize::A4));
  CW_CHECK(writePictures(folder, record.job, prefix, out));
  for (const auto& [name, bytes] : files) {
    CW_CHECK(writeFile(folder + "/" + name, bytes));
    out.push_back(name);
  }
  return out;
}

Result<Reply> demo(const std::string& folder) {
  std::error_code trouble;
  std::filesystem::create_directories(folder, trouble);
  if (trouble)
    return fail(ErrorCode::Storage, "--out", folder, {"the folder cannot be made: %1", {trouble.message()}},
                "name another");
  CW_TRY(jobs, playDemo(folder));
  Reply reply;
  reply.lines = {
      "Invented data, not for use.",
      "shop file: " + folder + "/demo.shop (PINs: mira 2468, tomas 3579, bea 4680, ines 1357, wim 5791)"};
  Json::Array all;
  for (std::size_t i = 0; i < jobs.size(); ++i) {
    CW_TRY(files, writeJob(folder, jobs[i], i == 0 ? "" : jobs[i].name + "_"));
    std::string line = jobs[i].name + ": job " + jobs[i].job.text() + " sealed;";
    for (const std::string& file : files) line += " " + file;
    reply.lines.push_back(line);
    all.push_back(Json(jobs[i].job.text()));
  }
  reply.lines.push_back("verify: clampwright record verify " + folder + "/record.json --key " + folder +
                        "/key.json");
  reply.json.set("shop", folder + "/demo.shop").set("jobs", std::move(all));
  return reply;
}

}  // namespace

void addDemo(Commands& commands) {
  CLI::App* app =
      commands.program.add_subcommand("demo", "Play the demo shop's jobs from sheet to sealed record");
  auto folder = std::make_shared<std::string>("clampwright-demo");
  app->add_option("--out", *folder, "Folder for its files")->type_name("DIR");
  commands.add(
      app, [folder](const Options&, Terminal&) { return demo(*folder); }, Needs::Fonts);
}

}  // namespace cw

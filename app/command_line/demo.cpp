#include <CLI/CLI.hpp>
#include <filesystem>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/demo_shop.h"
#include "app/print/joint_picture.h"
#include "app/print/record_pdf.h"
#include "core/base/resource.h"
#include "core/record/pdf_seal.h"
#include "core/record/verify.h"
#include "core/report/csv.h"
#include "core/report/record_document.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

struct Target {
  std::string folder;
  Existing existing;
};

/// A folder of its own, so that the demo is there whole or not at all.
Result<void> checkFolder(const Target& target) {
  std::error_code trouble;
  std::filesystem::create_directories(target.folder, trouble);
  const std::filesystem::directory_iterator first(target.folder, trouble);
  if (trouble)
    return fail(ErrorCode::Storage, "--out", target.folder,
                {"the folder cannot be made: %1", {trouble.message()}}, "name another");
  if (target.existing == Existing::Replaced || first == std::filesystem::directory_iterator()) return {};
  return fail(ErrorCode::AlreadyDone, "--out", target.folder,
              {"the folder is not empty: %1 is in it", {first->path().filename().string()}},
              "name a new one, or add --force to replace files of the demo in it");
}

/// Every joint as it stood at the end, each a picture.
Result<void> writePictures(const Target& target, const Job& job, const std::string& prefix,
                           std::vector<std::string>& names) {
  for (std::size_t i = 0; i < job.sheet.steps.size(); ++i) {
    const Step& step = job.sheet.steps[i];
    if (step.kind != StepKind::Tighten) continue;
    names.push_back(prefix + "joint_" + step.joint + ".png");
    CW_CHECK(writeJointPicture(drawingOf(job, i), target.folder + "/" + names.back(), target.existing));
  }
  return {};
}

Result<std::vector<std::string>> writeJob(const Target& target, const DemoJob& job, const SecretKey& key,
                                          const std::string& prefix) {
  CW_TRY(record, readRecord(job.record));
  const RecordContent content = contentOf(record, {}, plain);
  std::string text;
  for (const std::string& line : lines(recordDocument(content, plain))) text += line + "\n";
  const std::pair<std::string, std::string> files[] = {
      {prefix + "record.pdf", sealPdf(recordPdf(content, {job.record, {}}, PageSize::A4).toStdString(), key)},
      {prefix + "record.json", job.record},
      {prefix + "tightenings.csv", csvOfTightenings(content)},
      {prefix + "record.txt", text},
      {prefix + "sheet.json", record.job.sheetBytes},
      {prefix + "lines.jsonl", std::string(resource("demo/" + job.name + ".jsonl"))}};
  std::vector<std::string> out;
  for (const auto& [name, bytes] : files) {
    CW_CHECK(writeFile(target.folder + "/" + name, bytes, target.existing));
    out.push_back(name);
  }
  CW_CHECK(writePictures(target, record.job, prefix, out));
  return out;
}

Result<Reply> demo(const Target& target) {
  CW_CHECK(checkFolder(target));
  const std::string& folder = target.folder;
  CW_TRY(shop, playDemo(folder, target.existing));
  const std::vector<DemoJob>& jobs = shop.jobs;
  Reply reply;
  reply.lines = {
      "Invented data, not for use.",
      "shop file: " + folder + "/demo.shop (PINs: mira 2468, tomas 3579, bea 4680, ines 1357, wim 5791)"};
  Json::Array all;
  for (std::size_t i = 0; i < jobs.size(); ++i) {
    CW_TRY(files, writeJob(target, jobs[i], shop.key, i == 0 ? "" : jobs[i].name + "_"));
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
  auto force = std::make_shared<bool>(false);
  app->add_option("--out", *folder, "Folder for its files, a new or an empty one")->type_name("DIR");
  app->add_flag("--force", *force, "A folder that is not empty: replace files of the demo, never its shop");
  commands.add(
      app,
      [folder, force](const Options&, Terminal&) {
        return demo({*folder, *force ? Existing::Replaced : Existing::Kept});
      },
      Needs::Fonts);
}

}  // namespace cw

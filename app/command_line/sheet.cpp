#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/engine_reply.h"
#include "app/command_line/open_shop.h"
#include "app/command_line/output_options.h"
#include "app/print/document_pdf.h"
#include "core/fastener/catalogue.h"
#include "core/procedure/bench_limits.h"
#include "core/procedure/review_rules.h"
#include "core/procedure/sheet_file.h"
#include "core/procedure/spoken_place.h"
#include "core/report/paper_sheet.h"
#include "core/store/file_io.h"
#include "core/store/promote.h"
#include "core/store/sheet_review.h"

namespace cw {
namespace {

Reply describe(const Findings& findings) {
  Reply reply;
  addFindings(reply, findings);
  if (findings.empty()) reply.lines.push_back("nothing is wrong with it");
  reply.json.set("blocking", !reply.yes);
  return reply;
}

/// With the file, and the place in it as people count: "pump.json, step 3, caution 1".
tl::unexpected<Error> inFile(const std::string& file, Error error) {
  error.place = error.place.empty() ? file : file + ", " + spokenPlace(error.place);
  return fail(std::move(error));
}

Result<Sheet> readSheetFile(const std::string& file) {
  CW_TRY(bytes, readFile(file));
  auto sheet = readSheet(bytes);
  if (!sheet) return inFile(file, sheet.error());
  return sheet;
}

/// Judged against the shop's people and tools where one is named, else by itself.
Result<Reply> check(const std::string& file, const Options& options) {
  CW_TRY(sheet, readSheetFile(file));
  if (options.shopFile.empty()) return describe(review(sheet, {shippedCatalogue(), std::nullopt, "", false}));
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  return reviewAgainst(*shop, sheet, "").map([](const Findings& findings) { return describe(findings); });
}

Reply describe(const SheetRow& row) {
  Reply reply;
  reply.json.set("sheet", row.sheet.text()).set("revision", row.revision).set("title", row.title);
  reply.json.set("status", wordOf(row.status)).set("digest", row.digest);
  reply.lines = {row.sheet.text() + "  rev " + row.revision + "  " + std::string(wordOf(row.status)) + "  " +
                 row.title};
  return reply;
}

/// A draft is taken in whatever its fields are called, but nobody is left to think that they are read.
Reply withPassedOver(Reply reply, const Sheet& sheet) {
  Findings findings;
  reviewFields(sheet, {shippedCatalogue(), std::nullopt, "", false}, findings);
  if (findings.empty()) return reply;
  addFindings(reply, findings);
  reply.yes = true;
  return reply;
}

struct Signed {
  std::string target, revision, by, pinFile = "-", paper = "a4";
  OutputOptions out;
  bool submit = false;
};

Result<Reply> importSheet(const Signed& given, const Options& options, Terminal& terminal) {
  CW_TRY(bytes, readFile(given.target));
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(deed, signedDeed(*shop, clock, given.by, given.pinFile, terminal));
  auto row = shop->sheets().saveDraft(bytes, deed);
  if (!row) return inFile(given.target, row.error());
  if (given.submit) CW_CHECK(shop->sheets().submit(row->sheet, row->revision, deed));
  CW_TRY(now, shop->sheets().find(row->sheet, row->revision));
  CW_TRY(sheet, readSheet(bytes));
  return withPassedOver(describe(now), sheet);
}

/// The draft that a sealed quick joint becomes.
Result<Reply> promote(const Signed& given, const Options& options, Terminal& terminal) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(job, Id::parse(given.target));
  CW_TRY(deed, signedDeed(*shop, clock, given.by, given.pinFile, terminal));
  return promoteQuickJoint(*shop, job, deed).map([](const SheetRow& row) { return describe(row); });
}

/// A sheet with blocking findings is not issued: the reply is no, and they are listed.
Result<Reply> issueSheet(const Signed& given, const Options& options, Terminal& terminal) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(id, Id::parse(given.target));
  CW_TRY(row, shop->sheets().find(id, given.revision));
  CW_TRY(bytes, shop->sheets().bytes(row.digest));
  CW_TRY(sheet, readSheet(bytes));
  CW_TRY(findings, reviewAgainst(*shop, sheet, given.by));
  if (hasBlocking(findings)) return describe(findings);
  CW_TRY(deed, signedDeed(*shop, clock, given.by, given.pinFile, terminal));
  CW_CHECK(issueReviewed(*shop, id, given.revision, deed));
  return shop->sheets().find(id, given.revision).map([](const SheetRow& now) { return describe(now); });
}

Result<Reply> exportSheet(const Signed& given, const Options& options) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(id, Id::parse(given.target));
  CW_TRY(row, given.revision.empty() ? shop->sheets().issued(id) : shop->sheets().find(id, given.revision));
  CW_TRY(bytes, shop->sheets().bytes(row.digest));
  CW_CHECK(writeFile(given.out.file, bytes, given.out.existing()));
  Reply reply = describe(row);
  reply.lines = {"wrote " + given.out.file};
  return reply;
}

/// The sheet on paper, for the day without a screen.
Result<Reply> printSheet(const Signed& given) {
  CW_TRY(bytes, readFile(given.target));
  auto sheet = readSheet(bytes);
  if (!sheet) return inFile(given.target, sheet.error());
  if (const auto can = checkBenchCan(*sheet); !can) return inFile(given.target, can.error());
  CW_CHECK(writeDocumentPdf(backupSheet(*sheet, hex(sha256(bytes)), plain), given.out.file,
                            *pageSizeFrom(given.paper), given.out.existing()));
  Reply reply;
  reply.json.set("sheet", sheet->id.text()).set("revision", sheet->revision);
  reply.lines = {"wrote " + given.out.file};
  return reply;
}

Result<Reply> listSheets(const Options& options) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(rows, shop->sheets().all());
  Reply reply;
  Json::Array all;
  for (const SheetRow& row : rows) {
    Reply one = describe(row);
    reply.lines.push_back(one.lines.front());
    all.push_back(one.json);
  }
  reply.json.set("sheets", std::move(all));
  return reply;
}

void addSigner(CLI::App* app, const std::shared_ptr<Signed>& given) {
  app->add_option("--by", given->by, "Sign of the person who says so")->required();
  app->add_option("--pin-file", given->pinFile, "File with the PIN; - reads standard input")
      ->type_name("FILE");
}

void addPrint(Commands& commands, CLI::App* sheet, const std::shared_ptr<Signed>& given) {
  CLI::App* app = sheet->add_subcommand(
      "print", "Print a sheet file to PDF with room to write, for the day without a screen");
  app->add_option("file", given->target, "Sheet file")->required();
  addOutput(app, given->out, "PDF to write", Wanted::Always);
  app->add_option("--paper", given->paper, "a4 or letter")->check(CLI::IsMember({"a4", "letter"}));
  commands.add(
      app, [given](const Options&, Terminal&) { return printSheet(*given); }, Needs::Fonts);
}

}  // namespace

void addSheet(Commands& commands) {
  CLI::App* sheet =
      commands.program.add_subcommand("sheet", "Check, import, issue, export and print procedure sheets");
  sheet->require_subcommand(1);
  auto given = std::make_shared<Signed>();
  CLI::App* checkApp =
      sheet->add_subcommand("check", "Review a sheet file; exit 1 if something blocks its issue");
  checkApp->add_option("file", given->target, "Sheet file")->required();
  commands.add(checkApp,
               [given](const Options& options, Terminal&) { return check(given->target, options); });

  CLI::App* importApp = sheet->add_subcommand("import", "Take a sheet file in as a draft");
  importApp->add_option("file", given->target, "Sheet file")->required();
  importApp->add_flag("--submit", given->submit, "Hand it in for review at once");
  addSigner(importApp, given);
  commands.add(importApp, [given](const Options& options, Terminal& terminal) {
    return importSheet(*given, options, terminal);
  });

  CLI::App* promoteApp = sheet->add_subcommand("promote", "Make a draft of a quick joint that is sealed");
  promoteApp->add_option("job", given->target, "Id of the quick joint's job")->required();
  addSigner(promoteApp, given);
  commands.add(promoteApp, [given](const Options& options, Terminal& terminal) {
    return promote(*given, options, terminal);
  });

  CLI::App* issueApp =
      sheet->add_subcommand("issue", "Issue a revision that is in review, by somebody who did not write it");
  issueApp->add_option("sheet", given->target, "Id of the sheet")->required();
  issueApp->add_option("--revision", given->revision, "Revision")->required();
  addSigner(issueApp, given);
  commands.add(issueApp, [given](const Options& options, Terminal& terminal) {
    return issueSheet(*given, options, terminal);
  });

  CLI::App* exportApp =
      sheet->add_subcommand("export", "Write a sheet's file, byte for byte as it was taken in");
  exportApp->add_option("sheet", given->target, "Id of the sheet")->required();
  exportApp->add_option("--revision", given->revision, "Revision; without, the issued one");
  addOutput(exportApp, given->out, "Where to write it", Wanted::Always);
  commands.add(exportApp,
               [given](const Options& options, Terminal&) { return exportSheet(*given, options); });

  addPrint(commands, sheet, given);
  commands.add(sheet->add_subcommand("list", "List every revision"),
               [](const Options& options, Terminal&) { return listSheets(options); });
}

}  // namespace cw

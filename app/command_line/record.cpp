#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/open_shop.h"
#include "app/print/record_pdf.h"
#include "core/record/verify.h"
#include "core/report/csv.h"
#include "core/report/record_document.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

struct RecordOptions {
  std::string file, key, job, words, out, format = "json", paper = "a4", by, pinFile = "-", text, secret;
};

Reply describe(const Verification& found, const std::string& what) {
  Reply reply;
  reply.yes = found.good();
  Json::Array problems;
  for (const Finding& finding : found.problems) {
    reply.lines.push_back("no: " + sentence(finding));
    problems.push_back(Json(sentence(finding)));
  }
  reply.json.set("verified", reply.yes)
      .set("problems", std::move(problems))
      .set("count", found.count)
      .set("head", found.head);
  if (found.firstBadEntry) reply.json.set("first_bad_entry", *found.firstBadEntry);
  if (reply.yes)
    reply.lines = {"yes: " + what + " is as it was sealed with key " + found.keyId + ", " +
                   std::to_string(found.count) + (found.head.empty() ? "" : " entries, head " + found.head)};
  return reply;
}

Result<PublicKey> readKey(const std::string& file) {
  CW_TRY(text, readFile(file, 4096));
  auto key = readPublicKey(text);
  if (!key) return fail(within(file, key.error()));
  return key;
}

Result<Reply> verify(const RecordOptions& given) {
  CW_TRY(key, readKey(given.key));
  CW_TRY(bytes, readFile(given.file));
  return describe(verifyRecord(bytes, key), given.file);
}

Result<Reply> list(const RecordOptions& given, const Options& options) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  JobQuery query;
  query.words = given.words;
  query.state = JobState::Sealed;
  CW_TRY(rows, shop->findJobs(query));
  Reply reply;
  Json::Array all;
  for (const JobRow& row : rows) {
    Json one;
    one.set("job", row.job.text())
        .set("work_order", row.workOrder)
        .set("machine", row.machine)
        .set("serial", row.serial);
    one.set("sheet", row.title).set("revision", row.revision).set("head", row.head).set("count", row.entries);
    one.set("addenda", row.addenda);
    reply.lines.push_back(row.job.text() + "  " + row.workOrder + "  " + row.machine + "  " + row.title +
                          " rev " + row.revision);
    all.push_back(std::move(one));
  }
  reply.json.set("records", std::move(all));
  return reply;
}

Result<std::vector<Addendum>> addendaOf(Shop& shop, const Id& job) {
  CW_TRY(files, shop.records().addenda(job));
  std::vector<Addendum> out;
  for (const std::string& bytes : files) {
    CW_TRY(addendum, readAddendum(bytes));
    out.push_back(std::move(addendum));
  }
  return out;
}

Result<RecordContent> sealedContent(Shop& shop, const Id& job, const std::string& bytes) {
  CW_TRY(record, readRecord(bytes));
  CW_TRY(addenda, addendaOf(shop, job));
  return contentOf(record, addenda, plain);
}

/// The record as file, table or text, from one content model.
Result<std::string> textOf(Shop& shop, const Id& job, const std::string& format) {
  CW_TRY(bytes, shop.records().bytes(job));
  if (format == "json") return bytes;
  CW_TRY(content, sealedContent(shop, job, bytes));
  if (format == "csv") return csvOfTightenings(content);
  std::string out;
  for (const std::string& line : lines(recordDocument(content, plain))) out += line + "\n";
  return out;
}

Result<void> exportPdf(Shop& shop, const Id& job, const RecordOptions& given) {
  if (given.out.empty())
    return fail(ErrorCode::InvalidInput, "--out", "", "a PDF is not printed here", "name a file with --out");
  CW_TRY(bytes, shop.records().bytes(job));
  CW_TRY(content, sealedContent(shop, job, bytes));
  CW_TRY(addenda, shop.records().addenda(job));
  return writeRecordPdf(content, {bytes, addenda}, given.out, *pageSizeFrom(given.paper));
}

Result<Reply> exportRecord(const RecordOptions& given, const Options& options) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(job, Id::parse(given.job));
  Reply reply;
  if (given.format == "pdf") {
    CW_CHECK(exportPdf(*shop, job, given));
    reply.json.set("job", job.text()).set("format", given.format);
    reply.lines = {"wrote " + given.out};
    return reply;
  }
  CW_TRY(text, textOf(*shop, job, given.format));
  reply.json.set("job", job.text()).set("format", given.format).set("bytes", text.size());
  if (given.out.empty()) {
    if (text.ends_with('\n')) text.pop_back();
    reply.lines = {std::move(text)};
    return reply;
  }
  CW_CHECK(writeFile(given.out, text));
  reply.lines = {"wrote " + given.out};
  return reply;
}

Result<Reply> addAddendum(const RecordOptions& given, const Options& options, Terminal& terminal) {
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(job, Id::parse(given.job));
  CW_TRY(secretText, readFile(given.secret.empty() ? options.shopFile + ".secret-key" : given.secret, 4096));
  CW_TRY(secret, readSecretKey(secretText));
  CW_TRY(pin, readPin(given.pinFile, terminal));
  CW_TRY(bytes, shop->records().addAddendum(job, given.by, pin, given.text, secret));
  CW_TRY(addendum, readAddendum(bytes));
  Reply reply;
  reply.json.set("job", job.text()).set("number", addendum.number);
  reply.lines = {"sealed addendum " + std::to_string(addendum.number)};
  return reply;
}

}  // namespace

void addRecord(Commands& commands) {
  CLI::App* record = commands.program.add_subcommand("record", "List, verify and hand over sealed records");
  record->require_subcommand(1);
  auto given = std::make_shared<RecordOptions>();

  CLI::App* verifyApp = record->add_subcommand("verify", "Is this record as it was sealed? Exit 1 if not");
  verifyApp->add_option("file", given->file, "Record file")->required();
  verifyApp->add_option("--key", given->key, "Public key of the shop, from the shop itself")
      ->required()
      ->type_name("FILE");
  commands.add(verifyApp, [given](const Options&, Terminal&) { return verify(*given); });

  CLI::App* listApp = record->add_subcommand("list", "List sealed records");
  listApp->add_option("--find", given->words,
                      "Beginnings of words of work order, machine, model, serial or title");
  commands.add(listApp, [given](const Options& options, Terminal&) { return list(*given, options); });

  CLI::App* exportApp =
      record->add_subcommand("export", "Write a record as PDF, JSON (the sealed bytes), CSV or text");
  exportApp->add_option("--job", given->job, "Id of the job")->required();
  exportApp->add_option("--format", given->format, "pdf, json, csv or text")
      ->check(CLI::IsMember({"pdf", "json", "csv", "text"}));
  exportApp->add_option("--paper", given->paper, "Paper of a PDF: a4 or letter")
      ->check(CLI::IsMember({"a4", "letter"}));
  exportApp->add_option("--out", given->out, "Where to write it; without, it is printed")->type_name("FILE");
  commands.add(
      exportApp, [given](const Options& options, Terminal&) { return exportRecord(*given, options); },
      Needs::Fonts);

  CLI::App* addApp = record->add_subcommand(
      "addendum", "Seal what turned out later; it is shown and printed with the record");
  addApp->add_option("--job", given->job, "Id of the job")->required();
  addApp->add_option("--text", given->text, "What turned out, and what it is now")->required();
  addApp->add_option("--by", given->by, "Sign of the person who says so")->required();
  addApp->add_option("--pin-file", given->pinFile, "File with the PIN; - reads standard input")
      ->type_name("FILE");
  addApp->add_option("--secret", given->secret, "Secret key file; by default beside the shop file")
      ->type_name("FILE");
  commands.add(addApp, [given](const Options& options, Terminal& terminal) {
    return addAddendum(*given, options, terminal);
  });
}

}  // namespace cw

#include "app/command_line/record_export.h"

#include <CLI/CLI.hpp>
#include <memory>

#include "app/command_line/commands.h"
#include "app/command_line/open_shop.h"
#include "app/command_line/output_options.h"
#include "app/command_line/record_verify.h"
#include "app/print/record_pdf.h"
#include "core/record/pdf_seal.h"
#include "core/report/csv.h"
#include "core/report/record_document.h"
#include "core/store/file_io.h"
#include "core/store/found_shop.h"

namespace cw {
namespace {

struct ExportOptions {
  std::string job, format = "json", paper = "a4", secret;
  OutputOptions out;
  bool unsound = false;
};

/// A record and its addenda as they lie in the shop, and what the shop's own public key says of them.
struct JudgedRecord {
  std::string record;
  std::vector<std::string> addenda;
  Verification found;

  Stamp stamp() const { return found.good() ? Stamp{} : unsoundStamp(found, plain); }
};

Result<JudgedRecord> judgedRecord(Shop& shop, const Id& job) {
  CW_TRY(files, shop.records().files(job));
  Verification found = verifySealed(files.record, files.addenda, shop.identity().key);
  return JudgedRecord{std::move(files.record), std::move(files.addenda), std::move(found)};
}

Result<RecordContent> contentOf(const JudgedRecord& judged) {
  CW_TRY(record, readRecord(judged.record));
  std::vector<Addendum> addenda;
  for (const std::string& bytes : judged.addenda) {
    CW_TRY(addendum, readAddendum(bytes));
    addenda.push_back(std::move(addendum));
  }
  return contentOf(record, addenda, plain);
}

/// Data goes out as it was sealed or not at all; pages may say of themselves that they are unsound.
bool hasPages(const ExportOptions& given) {
  return given.format == "pdf" || given.format == "text";
}

Result<void> checkOptions(const ExportOptions& given) {
  if (given.unsound && !hasPages(given))
    return fail(ErrorCode::InvalidInput, "--unsound", given.format,
                {"%1 has no page that could say that it does not verify", {given.format}},
                "export pdf or text, or leave --unsound out");
  if (given.format == "pdf" && !given.out.named())
    return fail(ErrorCode::InvalidInput, "--out", "", "a PDF is not printed here", "name a file with --out");
  if (given.format != "pdf" && !given.secret.empty())
    return fail(ErrorCode::InvalidInput, "--secret", given.format, "only the pages of a PDF are signed here",
                "leave --secret out");
  return {};
}

Reply refusal(const JudgedRecord& judged, const ExportOptions& given) {
  Reply reply;
  addProblems(reply, judged.found);
  reply.json.set("exported", false);
  reply.lines = {"no: nothing was exported, it does not verify: " + sentence(firstFault(judged.found))};
  if (hasPages(given)) reply.lines.push_back("--unsound prints it with that across every page");
  return reply;
}

/// What signs the pages of a PDF, or why they go unsigned.
struct PageSigner {
  std::optional<SecretKey> key;
  std::string whyNot;
};

Result<SecretKey> shopKeyIn(const std::string& file, const ShopIdentity& shop) {
  CW_TRY(text, readFile(file, 4096));
  auto key = readSecretKey(text);
  if (!key) return fail(within(file, key.error()));
  if (publicOf(*key) == shop.key) return key;
  return fail(ErrorCode::NotPermitted, file, keyId(publicOf(*key)),
              {"this is the key %1, not that of %2", {keyId(publicOf(*key)), shop.name}},
              {"bring the shop's key, %1", {keyId(shop.key)}});
}

/// A key that was named must be right; where none was, the one beside the shop file is used if it is there.
Result<PageSigner> signerOf(const ExportOptions& given, const Options& options, const JudgedRecord& judged,
                            const ShopIdentity& shop) {
  if (!judged.found.good()) return PageSigner{std::nullopt, "the record does not verify."};
  if (!given.secret.empty()) {
    CW_TRY(key, shopKeyIn(given.secret, shop));
    return PageSigner{key, ""};
  }
  const auto key = shopKeyIn(usualKeyFile(options.shopFile).string(), shop);
  return key ? PageSigner{*key, ""} : PageSigner{std::nullopt, sentence(key.error())};
}

Result<Reply> exportPdf(const JudgedRecord& judged, const ExportOptions& given, const PageSigner& signer) {
  CW_TRY(content, contentOf(judged));
  std::string pdf =
      recordPdf(content, {judged.record, judged.addenda}, *pageSizeFrom(given.paper), judged.stamp())
          .toStdString();
  if (signer.key) pdf = sealPdf(std::move(pdf), *signer.key);
  CW_CHECK(writeFile(given.out.file, pdf, given.out.existing()));
  Reply reply;
  reply.json.set("pages_signed", signer.key.has_value());
  reply.lines = {"wrote " + given.out.file};
  if (signer.key)
    reply.lines.push_back("every byte of it is signed with key " + keyId(publicOf(*signer.key)));
  else
    reply.lines.push_back("its pages are not signed, only the data inside is: " + signer.whyNot);
  return reply;
}

/// The record as file, table or text, from one content model.
Result<std::string> textOf(const JudgedRecord& judged, const std::string& format) {
  if (format == "json") return judged.record;
  CW_TRY(content, contentOf(judged));
  if (format == "csv") return csvOfTightenings(content);
  Document document = recordDocument(content, plain);
  document.stamp = judged.stamp();
  std::string out;
  for (const std::string& line : lines(document)) out += line + "\n";
  return out;
}

Result<Reply> exportText(const JudgedRecord& judged, const ExportOptions& given) {
  CW_TRY(text, textOf(judged, given.format));
  Reply reply;
  reply.json.set("bytes", text.size());
  if (given.out.named()) {
    CW_CHECK(writeFile(given.out.file, text, given.out.existing()));
    reply.lines = {"wrote " + given.out.file};
    return reply;
  }
  if (text.ends_with('\n')) text.pop_back();
  reply.lines = {std::move(text)};
  return reply;
}

Result<Reply> exportRecord(const ExportOptions& given, const Options& options) {
  CW_CHECK(checkOptions(given));
  SystemClock clock;
  CW_TRY(shop, openShop(options, clock));
  CW_TRY(job, Id::parse(given.job));
  CW_TRY(judged, judgedRecord(*shop, job));
  if (!judged.found.good() && !given.unsound) return refusal(judged, given);
  Result<Reply> reply;
  if (given.format == "pdf") {
    CW_TRY(signer, signerOf(given, options, judged, shop->identity()));
    reply = exportPdf(judged, given, signer);
  } else {
    reply = exportText(judged, given);
  }
  if (reply)
    reply->json.set("job", job.text()).set("format", given.format).set("verified", judged.found.good());
  return reply;
}

}  // namespace

void addRecordExport(Commands& commands, CLI::App* record) {
  auto given = std::make_shared<ExportOptions>();
  CLI::App* app = record->add_subcommand(
      "export", "Write a record as PDF, JSON (the sealed bytes), CSV or text; exit 1 if it does not verify");
  app->add_option("--job", given->job, "Id of the job")->required();
  app->add_option("--format", given->format, "pdf, json, csv or text")
      ->check(CLI::IsMember({"pdf", "json", "csv", "text"}));
  app->add_option("--paper", given->paper, "Paper of a PDF: a4 or letter")
      ->check(CLI::IsMember({"a4", "letter"}));
  addOutput(app, given->out, "Where to write it; without, it is printed");
  app->add_flag("--unsound", given->unsound,
                "Print it, as PDF or text, even if it does not verify; every page says so");
  app->add_option("--secret", given->secret,
                  "Secret key that signs a PDF; by default the one beside the shop file, if it is there")
      ->type_name("FILE");
  commands.add(
      app, [given](const Options& options, Terminal&) { return exportRecord(*given, options); },
      Needs::Fonts);
}

}  // namespace cw

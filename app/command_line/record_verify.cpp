#include "app/command_line/record_verify.h"

#include <CLI/CLI.hpp>
#include <map>
#include <memory>

#include "app/command_line/commands.h"
#include "app/pdf/attached_files.h"
#include "core/record/pdf_seal.h"
#include "core/store/file_io.h"

namespace cw {
namespace {

struct VerifyOptions {
  std::string file, key, record;
};

/// The sealed files that a record's PDF carries.
struct CarriedFiles {
  std::vector<std::string> records;    ///< one, in a PDF of ours
  std::map<int, std::string> addenda;  ///< by the number in their name
};

Result<PublicKey> readKey(const std::string& file) {
  CW_TRY(text, readFile(file, 4096));
  auto key = readPublicKey(text);
  if (!key) return fail(within(file, key.error()));
  return key;
}

/// Also one whose first bytes were altered, if the line at its end is still there.
bool isPdf(std::string_view bytes, const PublicKey& key) {
  return bytes.substr(0, 1024).find("%PDF-") != std::string_view::npos ||
         readPdfSeal(bytes, key).state != PdfState::Unsigned;
}

/// "clampwright.record", "clampwright.addendum" …; empty for what says nothing of itself.
std::string formatOf(std::string_view bytes) {
  const auto json = parseJson(bytes);
  const Json* format = json && json->object() != nullptr ? json->find("format") : nullptr;
  return format == nullptr || format->string() == nullptr ? std::string() : *format->string();
}

CarriedFiles carriedIn(const std::vector<AttachedFile>& attached) {
  constexpr std::string_view kBefore = "addendum-", kAfter = ".json";
  CarriedFiles out;
  for (const AttachedFile& file : attached) {
    if (file.name == "torque-record.json") out.records.push_back(file.bytes);
    if (!file.name.starts_with(kBefore) || !file.name.ends_with(kAfter)) continue;
    const int number = std::atoi(file.name.c_str() + kBefore.size());
    if (number > 0) out.addenda.emplace(number, file.bytes);
  }
  return out;
}

std::string soundness(const Verification& found, std::size_t addenda) {
  std::string out = std::to_string(found.count) + " entries, head " + found.head;
  if (addenda > 0) out += ", addenda: " + std::to_string(addenda);
  if (found.trial) out += ". " + plain(trialNotice());
  return out;
}

Reply verifyRecordFile(const VerifyOptions& given, std::string_view bytes, const PublicKey& key) {
  const Verification found = verifyRecord(bytes, key);
  Reply reply;
  reply.json.set("kind", "record").set("count", found.count).set("head", found.head);
  addProblems(reply, found);
  if (reply.yes)
    reply.lines = {"yes: " + given.file + " is the record as it was sealed with key " + found.keyId + ", " +
                   soundness(found, 0)};
  return reply;
}

/// The record that an addendum is held against, which may come inside its PDF.
Result<std::string> recordToHoldAgainst(const VerifyOptions& given, const PublicKey& key) {
  if (given.record.empty())
    return fail(ErrorCode::InvalidInput, "--record", "",
                {"%1 is an addendum, to be held against its record", {given.file}},
                "name the record with --record FILE");
  CW_TRY(bytes, readFile(given.record));
  if (!isPdf(bytes, key)) return std::move(bytes);
  const auto attached = attachedFiles(bytes);
  CarriedFiles carried = carriedIn(attached.value_or(std::vector<AttachedFile>()));
  if (carried.records.size() == 1) return std::move(carried.records.front());
  return fail(ErrorCode::InvalidInput, "--record", given.record, "there is no record in this PDF",
              "name the record or its PDF");
}

Result<Reply> verifyAddendumFile(const VerifyOptions& given, std::string_view bytes, const PublicKey& key) {
  CW_TRY(record, recordToHoldAgainst(given, key));
  const Verification sealed = verifyRecord(record, key), found = verifyAddendum(record, bytes, key);
  Reply reply;
  reply.json.set("kind", "addendum").set("number", found.count);
  addProblems(reply, sealed);
  for (std::string& line : reply.lines) line = "no: of the record, " + line.substr(4);
  addProblems(reply, found);
  if (!reply.yes) return reply;
  std::string line = "yes: " + given.file + " is addendum " + std::to_string(found.count) +
                     " to that record as it was sealed with key " + found.keyId;
  if (found.count > 1) line += "; the addenda before it were not there to be judged";
  reply.lines = {std::move(line)};
  return reply;
}

/// How the bytes of the PDF stand, for programs and for people.
struct PageState {
  const char* word;
  std::string words;
};

PageState pageState(const PdfSeal& seal) {
  switch (seal.state) {
    case PdfState::AsGivenOut:
      return {"as-given-out", "is the file that was given out, every byte signed with key " + seal.keyId};
    case PdfState::Changed:
      return {"changed", "is not the file that was given out: it was changed after it was signed"};
    case PdfState::OtherKey:
      return {"other-key", "names the key “" + shown(seal.keyId) +
                               "”: without that public key it cannot be told "
                               "whether it is the file that was given out"};
    case PdfState::Unsigned:
      break;
  }
  return {
      "unsigned",
      "is not the file that was given out, or was given out unsigned: it has no line that signs its bytes"};
}

/// What is wrong with the data inside; nothing if it is sound.
Reply verifyCarried(std::string_view bytes, const PublicKey& key) {
  Reply reply;
  const auto attached = attachedFiles(bytes);
  const CarriedFiles carried = carriedIn(attached.value_or(std::vector<AttachedFile>()));
  if (carried.records.size() != 1) {
    reply.yes = false;
    reply.lines = {!attached                 ? "no: nothing inside it can be read"
                   : carried.records.empty() ? "no: there is no record inside it"
                                             : "no: there is more than one record inside it"};
    reply.json.set("problems", Json::Array{Json(reply.lines.front().substr(4))}).set("verified", false);
    return reply;
  }
  std::vector<std::string> addenda;
  for (const auto& [number, addendum] : carried.addenda) addenda.push_back(addendum);
  const Verification found = verifySealed(carried.records.front(), addenda, key);
  reply.json.set("count", found.count).set("head", found.head);
  addProblems(reply, found);
  for (std::string& line : reply.lines) line = "no: inside it, " + line.substr(4);
  if (reply.yes) reply.lines = {soundness(found, addenda.size())};
  return reply;
}

Reply verifyPdfFile(const VerifyOptions& given, std::string_view bytes, const PublicKey& key) {
  const PdfSeal seal = readPdfSeal(bytes, key);
  const PageState pages = pageState(seal);
  Reply reply = verifyCarried(bytes, key);
  const bool sound = reply.yes;
  reply.yes = sound && seal.state == PdfState::AsGivenOut;
  reply.json.set("kind", "pdf").set("pages", pages.word).set("data_sound", sound).set("verified", reply.yes);
  const std::string line =
      (seal.state == PdfState::AsGivenOut ? "yes: " : "no: ") + given.file + " " + pages.words;
  if (sound)
    reply.lines = {line + "; its data inside is sound: " + reply.lines.front()};
  else
    reply.lines.insert(reply.lines.begin(), line);
  return reply;
}

Result<Reply> verifyFile(const VerifyOptions& given) {
  CW_TRY(key, readKey(given.key));
  CW_TRY(bytes, readFile(given.file));
  const std::string format = formatOf(bytes);
  if (format == "clampwright.addendum") return verifyAddendumFile(given, bytes, key);
  if (!given.record.empty())
    return fail(ErrorCode::InvalidInput, "--record", given.record, {"%1 is no addendum", {given.file}},
                "leave --record out");
  if (isPdf(bytes, key)) return verifyPdfFile(given, bytes, key);
  if (format.empty() || format == "clampwright.record") return verifyRecordFile(given, bytes, key);
  Reply reply;
  reply.yes = false;
  reply.json.set("kind", "other").set("verified", false).set("format", format);
  reply.lines = {"no: " + given.file + " is no record, addendum or PDF; its format is “" + shown(format) +
                 "”"};
  return reply;
}

}  // namespace

void addProblems(Reply& reply, const Verification& found) {
  Json::Array problems;
  if (const Json* before = reply.json.find("problems")) problems = *before->array();
  for (const Finding& finding : found.problems) {
    reply.lines.push_back("no: " + sentence(finding));
    problems.push_back(Json(sentence(finding)));
  }
  reply.yes = reply.yes && found.good();
  reply.json.set("verified", reply.yes).set("problems", std::move(problems));
  if (found.firstBadEntry) reply.json.set("first_bad_entry", *found.firstBadEntry);
  if (found.firstBadAddendum) reply.json.set("first_bad_addendum", *found.firstBadAddendum);
}

void addRecordVerify(Commands& commands, CLI::App* record) {
  auto given = std::make_shared<VerifyOptions>();
  CLI::App* app = record->add_subcommand(
      "verify", "Is this record, addendum or PDF as it was sealed and given out? Exit 1 if not");
  app->add_option("file", given->file, "Record, addendum or PDF")->required();
  app->add_option("--key", given->key, "Public key of the shop, from the shop itself")
      ->required()
      ->type_name("FILE");
  app->add_option("--record", given->record,
                  "With an addendum: the record it belongs to, or that record's PDF")
      ->type_name("FILE");
  commands.add(app, [given](const Options&, Terminal&) { return verifyFile(*given); });
}

}  // namespace cw

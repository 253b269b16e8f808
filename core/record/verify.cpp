#include "core/record/verify.h"

#include <fmt/format.h>

#include "core/record/record_file.h"
#include "core/record/rules.h"

namespace cw {
namespace {

void problem(Verification& out, std::string code, std::string place, Message what, Message cure = {}) {
  out.problems.push_back(
      {Severity::Blocking, std::move(code), std::move(place), std::move(what), std::move(cure)});
}

void badEntry(Verification& out, std::string code, int sequence, Message what, Message cure = {}) {
  if (!out.firstBadEntry) out.firstBadEntry = sequence;
  problem(out, std::move(code), fmt::format("entry {}", sequence), std::move(what), std::move(cure));
}

/// Whole and unaltered bytes: canonical form and signature. The parsed file, or nothing if it is no JSON
/// object.
std::optional<Json> checkEnvelope(Verification& out, std::string_view bytes, std::string_view tag,
                                  const PublicKey& key) {
  auto json = parseJson(bytes);
  if (!json || json->object() == nullptr) {
    problem(out, "not-json", json ? "" : json.error().place, "the file is damaged and cannot be read",
            "take the file from a backup");
    return std::nullopt;
  }
  if (canonical(*json) != bytes)
    problem(out, "not-canonical", "", "the file is not byte for byte what the program wrote",
            "take the untouched file");
  const Json* signature = json->find("signature");
  const Json* id = json->find("key");
  if (id != nullptr && id->string() != nullptr) out.keyId = *id->string();
  if (out.keyId != keyId(key))
    problem(out, "other-key", "key", {"it names the key “%1”, not the one given", {shown(out.keyId)}},
            {"bring the public key %1, or suspect the file", {shown(out.keyId)}});
  const auto given = signature != nullptr && signature->string() != nullptr
                         ? signatureFromHex(*signature->string())
                         : Result<Signature>(fail({}));
  if (!given || !verifies(std::string(tag) + signedPart(*json), *given, key))
    problem(out, "bad-signature", "signature", "the signature does not fit the contents",
            "the file was altered after sealing");
  return *std::move(json);
}

/// Walks the entries from the genesis; stops at the first that the chain, the reader or the rules refuse.
void checkEntries(Verification& out, const RecordFile& file) {
  auto job = emptyJob(file.shop, file.job, file.sheet);
  if (!job)
    return problem(out, "bad-sheet", "sheet", {"the sheet cannot be read: %1", {sentence(job.error())}});
  const ShopFloor floor{file.people, file.tools};
  int sequence = 0;
  for (const RecordFile::Row& row : file.rows) {
    ++sequence;
    if (hex(entryHash(job->head, canonical(row.entry))) != row.hash)
      return badEntry(out, "broken-chain", sequence, "its hash does not follow from the entry before it",
                      "it, or one before it, was altered, removed or moved");
    auto entry = entryFromJson(row.entry, fmt::format("entry {}", sequence));
    if (!entry)
      return badEntry(out, "unreadable-entry", sequence,
                      {"it cannot be read: %1", {sentence(entry.error())}});
    if (canonical(entryToJson(*entry)) != canonical(row.entry))
      return badEntry(out, "odd-entry", sequence, "it is not written as the program writes entries");
    if (auto allowed = mayAppend(*job, *entry, floor); !allowed)
      return badEntry(out, "not-allowed", sequence,
                      {"it was not allowed here: %1", {sentence(allowed.error())}});
    apply(*job, *std::move(entry));
  }
  if (hex(job->head) != file.head)
    problem(out, "wrong-head", "head", "the head is not the hash of the last entry",
            "entries at the end are missing or added");
  if (!job->finished)
    problem(out, "not-finished", "entries", "the job was never finished", "entries at the end are missing");
}

}  // namespace

Verification verifyRecord(std::string_view bytes, const PublicKey& key) {
  Verification out;
  const auto json = checkEnvelope(out, bytes, kRecordTag, key);
  if (!json) return out;
  const auto file = readRecordFile(*json);
  if (!file) {
    problem(out, "unreadable", file.error().place, {"it cannot be read: %1", {sentence(file.error())}});
    return out;
  }
  out.count = static_cast<int>(file->rows.size());
  out.head = file->head;
  if (file->count != out.count)
    problem(out, "wrong-count", "count",
            {"it says %1 entries and holds %2", {std::to_string(file->count), std::to_string(out.count)}},
            "entries were removed or added");
  checkEntries(out, *file);
  return out;
}

Result<SealedRecord> readRecord(std::string_view bytes) {
  CW_TRY(json, parseJson(bytes));
  CW_TRY(file, readRecordFile(json));
  SealedRecord out;
  CW_TRY(job, emptyJob(file.shop, file.job, file.sheet));
  out.job = std::move(job);
  const ShopFloor floor{file.people, file.tools};
  for (const RecordFile::Row& row : file.rows) {
    const std::string place = fmt::format("entry {}", out.job.count() + 1);
    CW_TRY(entry, entryFromJson(row.entry, place));
    if (auto allowed = mayAppend(out.job, entry, floor); !allowed) {
      Error error = within(place, allowed.error());
      error.code = ErrorCode::Corrupt;
      return fail(std::move(error));
    }
    apply(out.job, std::move(entry));
  }
  out.shopName = file.shopName, out.program = file.program, out.sealed = file.sealed;
  out.people = std::move(file.people), out.tools = std::move(file.tools);
  out.keyId = file.keyId, out.signature = file.signature;
  return out;
}

Result<Addendum> readAddendum(std::string_view bytes) {
  CW_TRY(json, parseJson(bytes, {1u << 20, 8, 100}));
  CW_TRY(reader, JsonReader::of(json, "addendum"));
  CW_TRY(format, reader.text("format"));
  if (format != "clampwright.addendum")
    return fail(ErrorCode::InvalidInput, "addendum.format", format, {"“%1” is no addendum", {shown(format)}},
                "an addendum file");
  Addendum out;
  CW_TRY(number, reader.integer("number", 1, 100'000));
  CW_TRY(time, reader.text("time"));
  CW_TRY(moment, parseRfc3339(time));
  CW_TRY(text, reader.nonEmpty("text"));
  CW_TRY(person, reader.object("by"));
  CW_TRY(sign, person.nonEmpty("sign"));
  CW_TRY(name, person.nonEmpty("name"));
  out.number = static_cast<int>(number), out.time = moment, out.text = text, out.by = sign, out.name = name;
  return out;
}

Verification verifyAddenda(std::string_view record, const std::vector<std::string>& addenda,
                           const PublicKey& key) {
  Verification out;
  std::string_view previous = record;
  int number = 0;
  for (const std::string& bytes : addenda) {
    ++number;
    const auto json = checkEnvelope(out, bytes, kAddendumTag, key);
    if (!json) return out;
    const auto links = [&](std::string_view field, std::string_view to) {
      const Json* value = json->find(field);
      return value != nullptr && value->string() != nullptr && *value->string() == hex(sha256(to));
    };
    const auto read = readAddendum(bytes);
    if (!read || read->number != number || !links("record", record) || !links("previous", previous))
      problem(out, "broken-addenda", fmt::format("addendum {}", number),
              "it does not follow from the record and the addendum before it",
              "one was altered, removed or moved");
    previous = bytes;
  }
  out.count = number;
  return out;
}

}  // namespace cw

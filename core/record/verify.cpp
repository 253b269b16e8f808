#include "core/record/verify.h"

#include <fmt/format.h>

#include <iterator>
#include <map>

#include "core/record/record_file.h"

namespace cw {
namespace {

void problem(Verification& out, std::string code, std::string place, Message what, Message cure = {}) {
  out.problems.push_back(
      {Severity::Blocking, std::move(code), std::move(place), std::move(what), std::move(cure)});
}

std::string entryPlace(int sequence) {
  return fmt::format("entry {}", sequence);
}

void badEntry(Verification& out, std::string code, int sequence, Message what, Message cure = {}) {
  if (!out.firstBadEntry) out.firstBadEntry = sequence;
  problem(out, std::move(code), entryPlace(sequence), std::move(what), std::move(cure));
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
  if (out.keyId != keyId(key)) {
    problem(
        out, "other-key", "key",
        {"it names the key “%1”, not the one given, so its signature cannot be checked", {shown(out.keyId)}},
        {"bring the public key %1, or suspect the file", {shown(out.keyId)}});
    return *std::move(json);
  }
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
    if (file.version > 1 && entry->version <= kTrialVersion)
      return badEntry(out, "odd-entry", sequence, "it is of an older version than the record");
    auto judged = judge(*job, *std::move(entry), From::Chain);
    if (!judged)
      return badEntry(out, "not-allowed", sequence,
                      {"it was not allowed here: %1", {sentence(judged.error())}});
    apply(*job, *std::move(judged));
  }
  if (hex(job->head) != file.head)
    problem(out, "wrong-head", "head", "the head is not the hash of the last entry",
            "entries at the end are missing or added");
  if (!job->finished)
    problem(out, "not-finished", "entries", "the job was never finished", "entries at the end are missing");
}

/// Where an addendum is to stand.
struct AddendumLinks {
  std::string_view record;
  std::optional<std::string_view>
      previous;  ///< the addendum before it, or the record; nothing if it is not there
  int number;
};

void checkLinks(Verification& out, std::string_view bytes, const Json& json, const AddendumLinks& links) {
  const auto read = readAddendum(bytes);
  if (!read) return problem(out, "unreadable", "", {"it cannot be read: %1", {sentence(read.error())}});
  const auto names = [&](std::string_view field, std::string_view file) {
    const Json* value = json.find(field);
    return value != nullptr && value->string() != nullptr && *value->string() == hex(sha256(file));
  };
  if (!names("record", links.record))
    problem(out, "other-record", "", "it does not belong to this record",
            "it was moved here from another, or the record was altered");
  else if (read->number != links.number || (links.previous && !names("previous", *links.previous)))
    problem(out, "broken-addenda", "", "it does not follow from the record and the addendum before it",
            "one was altered, removed or moved");
}

void checkAddendum(Verification& out, std::string_view bytes, const AddendumLinks& links,
                   const PublicKey& key) {
  Verification own;
  if (const auto json = checkEnvelope(own, bytes, kAddendumTag, key)) checkLinks(own, bytes, *json, links);
  out.keyId = own.keyId;
  if (!own.good() && !out.firstBadAddendum) out.firstBadAddendum = links.number;
  for (Finding& each : own.problems) {
    each.place = fmt::format("addendum {}{}{}", links.number, each.place.empty() ? "" : ", ", each.place);
    out.problems.push_back(std::move(each));
  }
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
  out.trial = file->version == 1;
  if (file->sealedBy)
    if (const auto may = maySeal(*file->sealedBy); !may)
      problem(out, "sealed-by", "sealed_by", may.error().problem, may.error().expected);
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
  for (const RecordFile::Row& row : file.rows) {
    const std::string place = fmt::format("entry {}", out.job.count() + 1);
    CW_TRY(entry, entryFromJson(row.entry, place));
    auto judged = judge(out.job, std::move(entry), From::Chain);
    if (!judged) {
      Error error = within(place, judged.error());
      error.code = ErrorCode::Corrupt;
      return fail(std::move(error));
    }
    apply(out.job, *std::move(judged));
  }
  out.shopName = file.shopName, out.program = file.program, out.sealed = file.sealed;
  out.sealedBy = file.sealedBy;
  out.people = file.version == 1 ? std::move(file.people) : peopleIn(out.job);
  out.keyId = file.keyId, out.signature = file.signature;
  return out;
}

std::vector<Person> peopleIn(const Job& job) {
  std::map<std::string, Person> out;
  for (const Kept& kept : job.entries)
    for (const Voucher& each : kept.entry.vouchers)
      out[each.person] = {each.person, each.name, each.roles, each.apprentice, true, {}};
  std::vector<Person> people;
  for (auto& [sign, person] : out) people.push_back(std::move(person));
  return people;
}

Message trialNotice() {
  return "Sealed by a trial version; its rules are not checked.";
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
  for (const std::string& bytes : addenda) {
    checkAddendum(out, bytes, {record, previous, ++out.count}, key);
    previous = bytes;
  }
  return out;
}

Verification verifyAddendum(std::string_view record, std::string_view addendum, const PublicKey& key) {
  Verification out;
  const auto read = readAddendum(addendum);
  out.count = read ? read->number : 1;
  const auto previous = out.count == 1 ? std::optional(record) : std::nullopt;
  checkAddendum(out, addendum, {record, previous, out.count}, key);
  return out;
}

Verification verifySealed(std::string_view record, const std::vector<std::string>& addenda,
                          const PublicKey& key) {
  Verification out = verifyRecord(record, key);
  Verification added = verifyAddenda(record, addenda, key);
  out.firstBadAddendum = added.firstBadAddendum;
  std::move(added.problems.begin(), added.problems.end(), std::back_inserter(out.problems));
  return out;
}

const Finding& firstFault(const Verification& found) {
  if (found.firstBadEntry)
    for (const Finding& each : found.problems)
      if (each.place == entryPlace(*found.firstBadEntry)) return each;
  return found.problems.front();
}

}  // namespace cw

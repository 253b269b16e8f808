#include "core/record/record_file.h"

#include <fmt/format.h>

#include "core/shop/shop_json.h"

namespace cw {
namespace {

Result<Id> readId(JsonReader& reader, std::string_view key) {
  CW_TRY(text, reader.text(key));
  auto id = Id::parse(text);
  if (!id) return fail(within(reader.placeOf(key), id.error()));
  return id;
}

Result<int> readVersion(JsonReader& reader) {
  CW_TRY(format, reader.text("format"));
  if (format != "clampwright.record")
    return fail(ErrorCode::InvalidInput, "record.format", format,
                {"“%1” is not a torque record", {shown(format)}}, "give a file of format clampwright.record");
  CW_TRY(version, reader.integer("version", 1, 1'000'000));
  if (version > kRecordVersion)
    return fail(ErrorCode::NewerVersion, "record.version", std::to_string(version),
                {"version %1 was written by a newer program", {std::to_string(version)}}, "use that program");
  return static_cast<int>(version);
}

Result<void> readShop(JsonReader& reader, RecordFile& out) {
  CW_TRY(shop, reader.object("shop"));
  CW_TRY(id, readId(shop, "id"));
  CW_TRY(name, shop.text("name"));
  out.shop = id, out.shopName = name;
  return {};
}

Result<void> readRows(JsonReader& reader, RecordFile& out) {
  CW_TRY(entries, reader.list("entries"));
  for (const Json& element : *entries) {
    const std::string place = fmt::format("entry {}", out.rows.size() + 1);
    CW_TRY(row, JsonReader::of(element, place));
    const Json* entry = row.optional("entry");
    CW_TRY(hash, row.text("hash"));
    if (entry == nullptr || !row.rest().empty())
      return fail(ErrorCode::InvalidInput, place, "", "it is not an entry with its hash",
                  "write entry and hash only");
    out.rows.push_back({*entry, hash});
  }
  return {};
}

/// Version 1 only: the people named, and tools whose pages stand in the entries too.
Result<void> readTrialLists(JsonReader& reader, RecordFile& out) {
  CW_TRY(people, reader.list("people"));
  for (const Json& element : *people) {
    CW_TRY(person, personFromJson(element, reader.placeOf("people")));
    out.people.push_back(std::move(person));
  }
  CW_TRY(tools, reader.list("tools"));
  for (const Json& element : *tools) CW_CHECK(toolFromJson(element, reader.placeOf("tools")));
  return {};
}

Result<void> readSealedBy(JsonReader& reader, RecordFile& out) {
  const Json* by = reader.optional("sealed_by");
  if (by == nullptr)
    return fail(ErrorCode::InvalidInput, reader.placeOf("sealed_by"), "", "it is not said who sealed",
                "take the untouched file");
  CW_TRY(voucher, voucherFromJson(*by, reader.placeOf("sealed_by")));
  out.sealedBy = std::move(voucher);
  return {};
}

}  // namespace

Result<RecordFile> readRecordFile(const Json& json) {
  CW_TRY(reader, JsonReader::of(json, "record"));
  RecordFile out;
  CW_TRY(version, readVersion(reader));
  out.version = version;
  CW_CHECK(readShop(reader, out));
  CW_CHECK(readRows(reader, out));
  CW_TRY(job, readId(reader, "job"));
  CW_TRY(program, reader.text("program"));
  CW_TRY(sealed, reader.text("sealed"));
  CW_TRY(moment, parseRfc3339(sealed));
  CW_TRY(sheet, reader.text("sheet"));
  CW_TRY(head, reader.text("head"));
  CW_TRY(count, reader.integer("count", 0, 1'000'000'000));
  CW_CHECK(out.version == 1 ? readTrialLists(reader, out) : readSealedBy(reader, out));
  CW_TRY(keyId, reader.text("key"));
  CW_TRY(signature, reader.text("signature"));
  for (const auto& [key, value] : reader.rest())
    return fail(ErrorCode::InvalidInput, reader.placeOf(key), key, "this member is not known here",
                "leave it out");
  out.job = job, out.program = program, out.sealed = moment, out.sheet = sheet, out.head = head;
  out.count = static_cast<int>(count);
  out.keyId = keyId, out.signature = signature;
  return out;
}

}  // namespace cw

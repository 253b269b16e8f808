#include "core/record/seal.h"

#include "core/record/record_file.h"

namespace cw {
namespace {

Json entriesOf(const Job& job) {
  Json::Array out;
  for (const Kept& kept : job.entries) {
    Json one;
    one.set("entry", entryToJson(kept.entry)).set("hash", hex(kept.hash));
    out.push_back(std::move(one));
  }
  return out;
}

std::string withSignature(Json sealed, std::string_view tag, const SecretKey& key) {
  sealed.set("key", keyId(publicOf(key)));
  sealed.set("signature", hex(sign(std::string(tag) + canonical(sealed), key)));
  return canonical(sealed);
}

}  // namespace

std::string signedPart(const Json& sealed) {
  Json::Object members = *sealed.object();
  members.erase("signature");
  return canonical(Json(std::move(members)));
}

Result<void> maySeal(const Voucher& by) {
  if (!by.here())
    return fail(ErrorCode::WrongPin, "sealed_by", by.person, {"%1 has not given the PIN", {by.name}},
                "enter name and PIN");
  const bool may = by.may(Role::Technician) || by.may(Role::ShopLead) || by.may(Role::Inspector) ||
                   by.may(Role::ServiceWriter);
  if (may && !by.apprentice) return {};
  return fail(ErrorCode::NotPermitted, "sealed_by", by.person, {"%1 may not seal a record", {by.name}},
              "let a technician who is no apprentice, a service writer, an inspector or a lead seal");
}

Result<std::string> sealRecord(const Job& job, const SealContext& context, const SecretKey& key) {
  const std::string place = "job " + job.id.text();
  if (!job.finished)
    return fail(ErrorCode::OutOfTurn, place, "", "the job is not finished", "finish it, then seal");
  if (job.isTrial())
    return fail(ErrorCode::NotPermitted, place, "",
                "it was begun by a trial version, whose rules are not judged any more",
                "export it as it stands, and do the work as a new job");
  CW_CHECK(maySeal(context.by));
  Json shop;
  shop.set("id", job.shop.text()).set("name", context.shopName);
  Json out;
  out.set("format", "clampwright.record").set("version", kRecordVersion).set("program", context.program);
  out.set("shop", std::move(shop)).set("job", job.id.text()).set("sealed", rfc3339(context.now));
  out.set("sealed_by", toJson(context.by)).set("sheet", job.sheetBytes).set("entries", entriesOf(job));
  out.set("head", hex(job.head)).set("count", job.count());
  return withSignature(std::move(out), kRecordTag, key);
}

std::string sealAddendum(const Addendum& addendum, std::string_view record, std::string_view previous,
                         const Id& job, const SecretKey& key) {
  Json by;
  by.set("sign", addendum.by).set("name", addendum.name);
  Json out;
  out.set("format", "clampwright.addendum")
      .set("version", 1)
      .set("job", job.text())
      .set("number", addendum.number);
  out.set("record", hex(sha256(record))).set("previous", hex(sha256(previous))).set("by", std::move(by));
  out.set("time", rfc3339(addendum.time)).set("text", addendum.text);
  return withSignature(std::move(out), kAddendumTag, key);
}

}  // namespace cw

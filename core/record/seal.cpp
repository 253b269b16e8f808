#include "core/record/seal.h"

#include <set>

#include "core/shop/shop_json.h"

namespace cw {
namespace {

/// Signs of everybody, and ids of every tool, that the entries name.
struct Named {
  std::set<std::string> people, tools;
};

Named namedIn(const Job& job) {
  Named out;
  for (const Kept& kept : job.entries) {
    out.people.insert(kept.entry.enteredBy);
    if (!kept.entry.supervisor.empty()) out.people.insert(kept.entry.supervisor);
    for (const Doer& doer : kept.entry.by) {
      out.people.insert(doer.person);
      if (!doer.tool.empty()) out.tools.insert(doer.tool);
    }
    if (const auto* set = std::get_if<ToolSet>(&kept.entry.body)) {
      out.tools.insert(set->tool);
      if (!set->allowedBy.empty()) out.people.insert(set->allowedBy);
    }
    if (const auto* started = std::get_if<JobStarted>(&kept.entry.body);
        started && !started->guardAllowedBy.empty())
      out.people.insert(started->guardAllowedBy);
    if (const auto* deviated = std::get_if<Deviated>(&kept.entry.body))
      out.people.insert(deviated->allowedBy);
    if (const auto* witnessed = std::get_if<Witnessed>(&kept.entry.body);
        witnessed && !witnessed->tool.empty())
      out.tools.insert(witnessed->tool);
  }
  return out;
}

/// Whoever left the shop since was active when they signed.
Person asAtWork(Person person) {
  person.active = true;
  return person;
}

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

Result<std::string> sealRecord(const Job& job, const SealContext& context, const SecretKey& key) {
  if (!job.finished)
    return fail(ErrorCode::OutOfTurn, "job " + job.id.text(), "", "the job is not finished",
                "finish it, then seal");
  const Named named = namedIn(job);
  Json::Array people, tools;
  for (const Person& person : context.people)
    if (named.people.contains(person.sign)) people.push_back(personToJson(asAtWork(person)));
  for (const TorqueTool& tool : context.tools)
    if (named.tools.contains(tool.id)) tools.push_back(toolToJson(tool));
  Json shop;
  shop.set("id", job.shop.text()).set("name", context.shopName);
  Json out;
  out.set("format", "clampwright.record").set("version", 1).set("program", context.program);
  out.set("shop", std::move(shop)).set("job", job.id.text()).set("sealed", rfc3339(context.now));
  out.set("sheet", job.sheetBytes).set("entries", entriesOf(job)).set("people", std::move(people));
  out.set("tools", std::move(tools)).set("head", hex(job.head)).set("count", job.count());
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

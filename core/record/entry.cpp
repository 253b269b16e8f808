#include "core/record/entry.h"

namespace cw {
namespace {

Result<std::vector<Doer>> readDoers(JsonReader& reader) {
  CW_TRY(list, reader.list("by"));
  std::vector<Doer> out;
  for (const Json& element : *list) {
    CW_TRY(doer, JsonReader::of(element, reader.placeOf("by")));
    CW_TRY(person, doer.nonEmpty("person"));
    CW_TRY(tool, doer.textOr("tool", ""));
    out.push_back({person, tool});
  }
  if (out.empty())
    return fail(ErrorCode::InvalidInput, reader.placeOf("by"), "", "nobody did it",
                "name at least one person");
  return out;
}

Result<Moment> readMoment(JsonReader& reader, std::string_view key) {
  CW_TRY(text, reader.text(key));
  auto moment = parseRfc3339(text);
  if (!moment) return fail(within(reader.placeOf(key), moment.error()));
  return moment;
}

}  // namespace

Json entryToJson(const Entry& entry) {
  Json::Array by;
  for (const Doer& doer : entry.by) {
    Json one;
    one.set("person", doer.person);
    if (!doer.tool.empty()) one.set("tool", doer.tool);
    by.push_back(std::move(one));
  }
  Json out;
  out.set("v", kEntryVersion)
      .set("seq", entry.sequence)
      .set("id", entry.id.text())
      .set("time", rfc3339(entry.time));
  if (entry.done) out.set("done", rfc3339(*entry.done));
  out.set("entered_by", entry.enteredBy).set("by", std::move(by));
  if (!entry.supervisor.empty()) out.set("supervisor", entry.supervisor);
  return out.set("kind", kindOf(entry.body)).set("body", bodyToJson(entry.body));
}

Result<Entry> entryFromJson(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  CW_TRY(version, reader.integer("v", 1, 1'000'000));
  if (version > kEntryVersion)
    return fail(ErrorCode::NewerVersion, place, std::to_string(version),
                {"this entry has version %1, made by a newer program", {std::to_string(version)}},
                "use that program");
  Entry entry;
  CW_TRY(sequence, reader.integer("seq", 1, 1'000'000'000));
  entry.sequence = static_cast<int>(sequence);
  CW_TRY(idText, reader.text("id"));
  CW_TRY(id, Id::parse(idText));
  entry.id = id;
  CW_TRY(time, readMoment(reader, "time"));
  entry.time = time;
  if (reader.has("done")) {
    CW_TRY(done, readMoment(reader, "done"));
    entry.done = done;
  }
  CW_TRY(enteredBy, reader.nonEmpty("entered_by"));
  entry.enteredBy = enteredBy;
  CW_TRY(by, readDoers(reader));
  entry.by = by;
  CW_TRY(supervisor, reader.textOr("supervisor", ""));
  entry.supervisor = supervisor;
  CW_TRY(kind, reader.text("kind"));
  const Json* bodyJson = reader.optional("body");
  CW_TRY(body,
         bodyFromJson(kind, bodyJson == nullptr ? Json(Json::Object{}) : *bodyJson, reader.placeOf("body")));
  entry.body = std::move(body);
  for (const auto& [key, value] : reader.rest())
    return fail(ErrorCode::InvalidInput, reader.placeOf(key), key, "this field is not known here",
                "leave it out");
  return entry;
}

Digest genesis(const Id& shop, const Id& job, const Digest& sheet) {
  Json about;
  about.set("job", job.text()).set("sheet", hex(sheet)).set("shop", shop.text());
  return sha256("clampwright.job.v1\n" + canonical(about));
}

Digest entryHash(const Digest& previous, std::string_view canonicalEntry) {
  std::string text = "clampwright.entry.v1\n";
  text.append(bytesOf(previous)).append(canonicalEntry);
  return sha256(text);
}

}  // namespace cw

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
    CW_CHECK(doer.nothingElse());
    out.push_back({person, tool});
  }
  if (out.empty())
    return fail(ErrorCode::InvalidInput, reader.placeOf("by"), "", "nobody did it",
                "name at least one person");
  return out;
}

Result<std::vector<Voucher>> readVouchers(JsonReader& reader) {
  CW_TRY(list, reader.list("vouched"));
  std::vector<Voucher> out;
  for (const Json& element : *list) {
    CW_TRY(voucher, voucherFromJson(element, reader.placeOf("vouched")));
    out.push_back(std::move(voucher));
  }
  return out;
}

/// The people and tools among the fields.
struct NamesOf {
  Named& out;

  void operator()(std::string_view, const PersonSign& person) {
    if (!person.empty()) out.people.insert(person);
  }
  void operator()(std::string_view, const ToolId& tool) {
    if (!tool.empty()) out.tools.insert(tool);
  }
  template <class T>
  void operator()(std::string_view key, const Derived<T>& field) {
    (*this)(key, field.value);
  }
  template <class T>
  void operator()(std::string_view key, const AsAtUse<T>& field) {
    (*this)(key, field.value);
  }
  void operator()(std::string_view, const StepId&) {}
  void operator()(std::string_view, const PositionLabel&) {}
  template <Plain T>
  void operator()(std::string_view, const T&) {}
};

Result<Moment> readMoment(JsonReader& reader, std::string_view key) {
  CW_TRY(text, reader.text(key));
  auto moment = parseRfc3339(text);
  if (!moment) return fail(within(reader.placeOf(key), moment.error()));
  return moment;
}

}  // namespace

const Voucher* Entry::voucher(std::string_view sign) const {
  for (const Voucher& each : vouchers)
    if (each.person == sign) return &each;
  return nullptr;
}

Named namedIn(const Body& body) {
  Named out;
  std::visit(
      [&]<class T>(const T& b) {
        NamesOf names{out};
        T::fields(b, names);
      },
      body);
  return out;
}

Named namedIn(const Entry& entry) {
  Named out = namedIn(entry.body);
  NamesOf names{out};
  names("entered_by", entry.enteredBy), names("supervisor", entry.supervisor);
  for (const Doer& doer : entry.by) names("person", doer.person), names("tool", doer.tool);
  return out;
}

Json entryToJson(const Entry& entry) {
  Json::Array by;
  for (const Doer& doer : entry.by) {
    Json one;
    one.set("person", doer.person.text);
    if (!doer.tool.empty()) one.set("tool", doer.tool.text);
    by.push_back(std::move(one));
  }
  Json out;
  out.set("v", entry.version)
      .set("seq", entry.sequence)
      .set("id", entry.id.text())
      .set("time", rfc3339(entry.time));
  if (entry.done) out.set("done", rfc3339(*entry.done));
  out.set("entered_by", entry.enteredBy.text).set("by", std::move(by));
  if (!entry.supervisor.empty()) out.set("supervisor", entry.supervisor.text);
  if (entry.version > kTrialVersion) {
    Json::Array vouched;
    for (const Voucher& each : entry.vouchers) vouched.push_back(toJson(each));
    out.set("vouched", std::move(vouched));
  }
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
  entry.version = static_cast<int>(version);
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
  if (entry.version > kTrialVersion) {
    CW_TRY(vouchers, readVouchers(reader));
    entry.vouchers = std::move(vouchers);
  }
  CW_TRY(kind, reader.text("kind"));
  const Json* bodyJson = reader.optional("body");
  CW_TRY(body,
         bodyFromJson(kind, bodyJson == nullptr ? Json(Json::Object{}) : *bodyJson, reader.placeOf("body"), From::Chain));
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

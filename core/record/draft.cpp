#include "core/record/draft.h"

#include <fmt/format.h>

#include "core/record/next.h"
#include "core/shop/shop_json.h"
#include "core/units/stated_json.h"

namespace cw {
namespace {

bool pulls(const Body& body) {
  return std::holds_alternative<PassCounted>(body) || std::holds_alternative<Tightened>(body) ||
         std::holds_alternative<CheckPassMade>(body);
}

/// The tool that a person did it with: the one that the body sets, or the one in their hand.
std::string toolFor(const Job& job, const Body& body, const std::string& person) {
  if (const auto* set = std::get_if<ToolSet>(&body)) return set->tool;
  const std::size_t step = stepMeant(job, body);
  if (!pulls(body) || step >= job.steps.size()) return {};
  const ToolSet* set = job.steps[step].tightening.heldBy(person);
  return set == nullptr ? std::string() : set->tool.text;
}

/// The step whose turn it is, where a body speaks of one and names none.
void nameStep(const Job& job, Body& body) {
  const Next due = next(job);
  if (due.step >= job.steps.size() || job.paused) return;
  std::visit(
      [&]<class T>(T& b) {
        if constexpr (requires { b.step; })
          if (b.step.empty()) b.step = job.sheet.steps[due.step].id;
      },
      body);
}

/// A session vouches for what somebody enters or supervises, never for a word that others ask of them.
Vouch howOf(const Job& job, const Draft& draft, const Present& present, const std::string& sign,
            bool givesItsWord) {
  const bool atWork = sign == draft.enteredBy || sign == draft.supervisor;
  if (present.withPin.contains(sign)) return Vouch::Pin;
  if (atWork && present.signedIn.contains(sign) && job.signedIn.contains(sign)) return Vouch::Session;
  return draft.byPhone && givesItsWord ? Vouch::Phone : Vouch::Written;
}

/// Where in the entry somebody is named, for what is said of an unknown sign.
std::string placeOf(const Entry& entry, const std::string& sign) {
  if (entry.enteredBy == sign) return "entered_by";
  if (entry.supervisor == sign) return "supervisor";
  for (const Doer& doer : entry.by)
    if (doer.person == sign) return "by";
  return "allowed_by";
}

Result<Voucher> voucherFor(const Entry& entry, const std::string& sign, const ShopFloor& floor, Vouch how) {
  const Person* person = floor.person(sign);
  if (person == nullptr)
    return fail(ErrorCode::NotFound, placeOf(entry, sign), sign, {"nobody here signs as “%1”", {shown(sign)}},
                "write the sign of a person of this shop");
  if (!person->active)
    return fail(ErrorCode::NotPermitted, placeOf(entry, sign), sign,
                {"%1 no longer works here", {person->name}}, "let somebody who does sign");
  return Voucher{person->sign, person->name, person->roles, person->apprentice, how};
}

/// Makes {"value","unit"} of a quantity that was written as text.
template <class Tag>
Result<void> readText(Json& written, const std::string& place) {
  if (written.string() == nullptr) return {};
  auto stated = parse<Tag>(*written.string());
  if (!stated) return fail(within(place, stated.error()));
  written = toJson(*stated);
  return {};
}

Result<void> readQuantityTexts(Json::Object& fields, const std::string& place) {
  for (const auto key : {"setting", "reading", "target", "low", "aim", "high"}) {
    const auto found = fields.find(key);
    if (found != fields.end()) CW_CHECK(readText<TorqueTag>(found->second, place + "." + key));
  }
  const auto gaps = fields.find("gaps");
  if (gaps == fields.end() || gaps->second.array() == nullptr) return {};
  Json::Array lengths = *gaps->second.array();
  for (Json& length : lengths) CW_CHECK(readText<LengthTag>(length, place + ".gaps"));
  gaps->second = std::move(lengths);
  return {};
}

/// So do the corrected values of a correction.
Result<void> readCorrectedTexts(Json::Object& fields, const std::string& place) {
  const auto now = fields.find("now");
  if (now == fields.end() || now->second.object() == nullptr) return {};
  Json::Object corrected = *now->second.object();
  CW_CHECK(readQuantityTexts(corrected, place + ".now"));
  now->second = Json(std::move(corrected));
  return {};
}

Result<std::vector<Doer>> readBy(const Json* by, const std::string& place) {
  std::vector<Doer> out;
  if (by == nullptr) return out;
  if (const auto* sign = by->string()) return std::vector<Doer>{{*sign, {}}};
  const auto* list = by->array();
  if (list == nullptr)
    return fail(ErrorCode::InvalidInput, place + ".by", canonical(*by), "this names nobody",
                R"(write "by":"mira")");
  for (const Json& element : *list) {
    CW_TRY(reader, JsonReader::of(element, place + ".by"));
    CW_TRY(person, reader.nonEmpty("person"));
    CW_TRY(tool, reader.textOr("tool", ""));
    CW_CHECK(reader.nothingElse());
    out.push_back({person, tool});
  }
  return out;
}

/// A version 8 UUID (RFC 9562: made by the application's own rule) from what identifies the line.
Id lineId(const Id& job, int number, std::string_view line) {
  std::string text =
      hex(sha256(fmt::format("clampwright.line.v1\n{}\n{}\n{}", job.text(), number, line))).substr(0, 32);
  text[12] = '8';
  text[16] = "89ab"[static_cast<unsigned char>(text[16]) % 4];
  for (const std::size_t at : {20U, 16U, 12U, 8U}) text.insert(at, "-");
  return *Id::parse(text);
}

Result<void> readWho(JsonReader& reader, const std::string& place, Draft& draft) {
  CW_TRY(by, readBy(reader.optional("by"), place));
  draft.by = by;
  CW_TRY(enteredBy, reader.textOr("entered_by", by.empty() ? std::string() : by.front().person.text));
  if (enteredBy.empty())
    return fail(ErrorCode::InvalidInput, place + ".by", "", "nobody signs this line", R"(write "by":"mira")");
  draft.enteredBy = enteredBy;
  CW_TRY(supervisor, reader.textOr("supervisor", ""));
  draft.supervisor = supervisor;
  return {};
}

Result<void> readWhen(JsonReader& reader, Draft& draft) {
  CW_TRY(done, reader.textOr("done", ""));
  if (done.empty()) return {};
  auto moment = parseRfc3339(done);
  if (!moment) return fail(within(reader.placeOf("done"), moment.error()));
  draft.done = *moment;
  return {};
}

/// What the program notes of itself is not for people to state.
Result<void> checkStated(const Body& body, const std::string& place) {
  if (!std::holds_alternative<ToolStopped>(body) && !std::holds_alternative<ClockWentBack>(body)) return {};
  return fail(ErrorCode::NotPermitted, place + ".kind", kindOf(body),
              {"an entry of kind “%1” is the program's own", {std::string(kindOf(body))}},
              "leave the line out");
}

/// The PINs of a line by their fields, before it is known whose they are.
Result<Pins> readPins(JsonReader& reader) {
  Pins out;
  for (const char* field : {"pin", "supervisor_pin", "allowed_pin"}) {
    if (!reader.has(field)) continue;
    CW_TRY(pin, reader.text(field));
    out.emplace(field, pin);
  }
  return out;
}

/// Whose PIN a field of a line is; empty if the line names nobody there.
std::string ownerOf(std::string_view field, const Draft& draft) {
  if (field == "pin") return draft.enteredBy;
  if (field == "supervisor_pin") return draft.supervisor;
  const Named named = namedIn(draft.body);
  return named.people.empty() ? std::string() : *named.people.begin();
}

Result<Pins> pinsBySign(const Pins& stated, const Draft& draft, const std::string& place) {
  Pins out;
  for (const auto& [field, pin] : stated) {
    const std::string owner = ownerOf(field, draft);
    if (owner.empty())
      return fail(ErrorCode::InvalidInput, place + "." + field, "",
                  {"“%1” is given, and the line names nobody whose PIN it is", {field}},
                  field == "supervisor_pin" ? Message("name the supervisor, or leave it out")
                                            : Message("name the lead whose word it is, or leave it out"));
    const auto known = out.emplace(owner, pin);
    if (!known.second && known.first->second != pin)
      return fail(ErrorCode::InvalidInput, place + "." + field, "",
                  {"two PINs are given for “%1”", {shown(owner)}}, "give each person's once");
  }
  return out;
}

}  // namespace

Result<Entry> compose(const Job& job, const Draft& draft, const ShopFloor& floor, const Present& present,
                      const Moment& now) {
  Entry entry;
  entry.sequence = job.count() + 1;
  entry.id = draft.id;
  entry.time = now;
  entry.done = draft.done;
  entry.enteredBy = draft.enteredBy;
  entry.supervisor = draft.supervisor;
  entry.body = draft.body;
  nameStep(job, entry.body);
  if (auto* set = std::get_if<ToolSet>(&entry.body)) {
    const TorqueTool* tool = floor.tool(set->tool.text);
    set->asUsed.value = tool != nullptr ? toolToJson(*tool) : Json();
  }
  entry.by = draft.by.empty() ? std::vector<Doer>{{draft.enteredBy, {}}} : draft.by;
  for (Doer& doer : entry.by)
    if (doer.tool.empty()) doer.tool = toolFor(job, entry.body, doer.person);
  const Named givesItsWord = namedIn(entry.body);
  for (const std::string& sign : namedIn(entry).people) {
    const Vouch how = howOf(job, draft, present, sign, givesItsWord.people.contains(sign));
    CW_TRY(voucher, voucherFor(entry, sign, floor, how));
    entry.vouchers.push_back(std::move(voucher));
  }
  return entry;
}

std::optional<ToolStopped> stoppedTool(const Job& job, const ShopFloor& floor) {
  for (const StepProgress& progress : job.steps)
    for (const InHand& each : progress.tightening.inHand) {
      const TorqueTool* tool = floor.tool(each.set.tool.text);
      if (tool == nullptr || checkUndoubted(*tool)) continue;
      // A lead may have allowed one that was doubted before it was taken.
      const auto asUsed = toolFromJson(each.set.asUsed, "as_used");
      if (!asUsed || (tool->status == asUsed->status && tool->dueNow == asUsed->dueNow)) continue;
      ToolStopped out;
      out.tool = each.set.tool;
      out.why.value = tool->status == ToolStatus::Quarantined ? Stop::Quarantined
                      : tool->status == ToolStatus::Retired   ? Stop::Retired
                                                              : Stop::Dropped;
      if (tool->dueNow) out.since.value = isoDate(*tool->dueNow);
      return out;
    }
  return std::nullopt;
}

Result<DraftLine> readDraftLine(std::string_view line, int number, const Id& job) {
  const std::string place = fmt::format("line {}", number);
  auto json = parseJson(line, {1u << 20, 16, 10'000});
  if (!json) return fail(within(place, json.error()));
  CW_TRY(reader, JsonReader::of(*json, place));
  DraftLine out;
  CW_TRY(kind, reader.nonEmpty("kind"));
  CW_CHECK(readWho(reader, place, out.draft));
  CW_CHECK(readWhen(reader, out.draft));
  CW_TRY(idText, reader.textOr("id", lineId(job, number, line).text()));
  auto id = Id::parse(idText);
  if (!id) return fail(within(place + ".id", id.error()));
  out.draft.id = *id;
  CW_TRY(stated, readPins(reader));
  CW_TRY(byPhone, reader.booleanOr("by_phone", false));
  out.draft.byPhone = byPhone;
  Json::Object fields = reader.rest();
  CW_CHECK(readQuantityTexts(fields, place));
  CW_CHECK(readCorrectedTexts(fields, place));
  CW_TRY(body, bodyFromJson(kind, Json(std::move(fields)), place, From::Line));
  out.draft.body = std::move(body);
  CW_CHECK(checkStated(out.draft.body, place));
  CW_TRY(pins, pinsBySign(stated, out.draft, place));
  out.pins = std::move(pins);
  return out;
}

}  // namespace cw

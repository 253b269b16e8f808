#include "core/record/draft.h"

#include <fmt/format.h>

#include <algorithm>

#include "core/shop/shop_json.h"
#include "core/units/stated_json.h"

namespace cw {
namespace {

/// Fills the fields of a body that the job knows.
class Completion {
 public:
  Completion(const Job& job, const ShopFloor& floor) : m_job(job), m_floor(floor), m_next(next(job)) {}

  template <class T>
  void operator()(T& body) {
    if constexpr (requires { body.step; })
      if (body.step.empty() && m_next.step < m_job.steps.size() && !m_job.paused)
        body.step = m_job.sheet.steps[m_next.step].id;
    fill(body);
  }

 private:
  template <class T>
  void fill(T&) {}
  void fill(ToolSet& body) {
    if (const TorqueTool* tool = m_floor.tool(body.tool)) body.asUsed = toolToJson(*tool);
    if (const auto index = m_job.stepIndex(body.step); index && body.pass == 0)
      body.pass = m_job.steps[*index].tightening.pass;
  }
  void fill(PassCounted& body) {
    if (const auto index = m_job.stepIndex(body.step); index && body.pass == 0)
      body.pass = m_job.steps[*index].tightening.pass;
  }
  void fill(CheckPassMade& body) {
    if (const auto index = m_job.stepIndex(body.step); index && body.round == 0)
      body.round = m_job.steps[*index].tightening.rounds + 1;
  }
  void fill(Tightened& body) {
    const auto index = m_job.stepIndex(body.step);
    if (!index || m_job.sheet.steps[*index].kind != StepKind::Tighten) return;
    const Tightening& now = m_job.steps[*index].tightening;
    const auto& order = orderOf(m_job, m_job.sheet.steps[*index]);
    if (std::find(order.begin(), order.end(), body.position) == order.end()) return;
    const JobTorque torque = torqueAt(m_job, *index, body.position);
    if (body.pass == 0) body.pass = now.pass;
    if (body.target.empty()) body.target = torque.aim;
    if (body.setting.empty() && now.set) body.setting = now.set->setting;
    const StatedTorque& reached = body.reading ? *body.reading : body.setting;
    body.within = !reached.empty() && within(reached, torque);
  }
  void fill(GapsRead& body) {
    const auto index = m_job.stepIndex(body.step);
    if (!index || m_job.sheet.steps[*index].kind != StepKind::Tighten) return;
    const auto& wanted = m_job.sheet.joint(m_job.sheet.steps[*index].joint)->passes.gaps;
    if (body.pass == 0) body.pass = m_job.steps[*index].tightening.pass - 1;
    body.within = wanted && even(body.gaps, *wanted);
  }
  void fill(Witnessed& body) {
    const auto index = m_job.stepIndex(body.step);
    if (!index) return;
    const auto& set = m_job.steps[*index].tightening.set;
    body.agrees = !set || !body.setting || (body.tool == set->tool && *body.setting == set->setting);
  }
  void fill(ClockWentBack& body) {
    if (body.before.empty() && m_job.last() != nullptr) body.before = rfc3339(m_job.last()->time);
  }

  const Job& m_job;
  const ShopFloor& m_floor;
  Next m_next;
};

/// The tool that a body was done with: the one it sets, or the one in hand for its step.
std::string toolFor(const Job& job, const Body& body) {
  if (const auto* set = std::get_if<ToolSet>(&body)) return set->tool;
  const bool pulls = std::holds_alternative<PassCounted>(body) || std::holds_alternative<Tightened>(body) ||
                     std::holds_alternative<CheckPassMade>(body);
  const auto index = job.stepIndex(stepOf(body));
  if (!pulls || !index) return {};
  const auto& set = job.steps[*index].tightening.set;
  return set ? set->tool : std::string();
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

Result<std::vector<Doer>> readBy(const Json* by, const std::string& place) {
  std::vector<Doer> out;
  if (by == nullptr) return out;
  if (const auto* sign = by->string()) return std::vector<Doer>{{*sign, ""}};
  const auto* list = by->array();
  if (list == nullptr)
    return fail(ErrorCode::InvalidInput, place + ".by", canonical(*by), "this names nobody",
                R"(write "by":"mira")");
  for (const Json& element : *list) {
    CW_TRY(reader, JsonReader::of(element, place + ".by"));
    CW_TRY(person, reader.nonEmpty("person"));
    CW_TRY(tool, reader.textOr("tool", ""));
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
  CW_TRY(enteredBy, reader.textOr("entered_by", by.empty() ? "" : by.front().person));
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

}  // namespace

Entry compose(const Job& job, const Draft& draft, const ShopFloor& floor, const Moment& now) {
  Entry entry;
  entry.sequence = job.count() + 1;
  entry.id = draft.id;
  entry.time = now;
  entry.done = draft.done;
  entry.enteredBy = draft.enteredBy;
  entry.supervisor = draft.supervisor;
  entry.body = draft.body;
  std::visit(Completion(job, floor), entry.body);
  entry.by = draft.by.empty() ? std::vector<Doer>{{draft.enteredBy, ""}} : draft.by;
  for (Doer& doer : entry.by)
    if (doer.tool.empty()) doer.tool = toolFor(job, entry.body);
  return entry;
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
  if (reader.has("pin")) {
    CW_TRY(pin, reader.text("pin"));
    out.pin = pin;
  }
  Json::Object fields = reader.rest();
  CW_CHECK(readQuantityTexts(fields, place));
  CW_TRY(body, bodyFromJson(kind, Json(std::move(fields)), place));
  out.draft.body = std::move(body);
  return out;
}

}  // namespace cw

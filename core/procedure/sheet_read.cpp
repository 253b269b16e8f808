#include <fmt/format.h>

#include "core/base/clock.h"
#include "core/base/file_format.h"
#include "core/base/json.h"
#include "core/pattern/layout_json.h"
#include "core/pattern/passes_json.h"
#include "core/procedure/serials.h"
#include "core/procedure/sheet_check.h"
#include "core/procedure/sheet_file.h"
#include "core/procedure/words.h"
#include "core/units/stated_json.h"

namespace cw {
namespace {

constexpr std::int64_t kMostCount = 10'000;

/// Moves what was read into its field, or passes the error on.
template <class T, class U>
Result<void> into(T& field, Result<U> read) {
  CW_TRY(value, std::move(read));
  field = std::move(value);
  return {};
}

template <class Enum>
Result<Enum> readWord(JsonReader& reader, std::string_view key) {
  CW_TRY(text, reader.text(key));
  auto value = fromWord<Enum>(text);
  if (!value) return fail(within(reader.placeOf(key), value.error()));
  return value;
}

template <class Enum>
Result<Enum> readWordOr(JsonReader& reader, std::string_view key, Enum otherwise) {
  return reader.has(key) ? readWord<Enum>(reader, key) : otherwise;
}

Result<void> checkMost(std::size_t count, std::size_t most, const std::string& place) {
  if (count <= most) return {};
  return fail(ErrorCode::OutOfRange, place, std::to_string(count),
              {"%1 are too many", {std::to_string(count)}},
              {"a sheet holds at most %1", {std::to_string(most)}});
}

/// Each object of the list `key` (absent: none) through `readOne`.
template <class T>
Result<std::vector<T>> readList(JsonReader& reader, std::string_view key,
                                Result<T> (*readOne)(JsonReader& reader), std::size_t most = kMostListed) {
  CW_TRY(items, reader.listOrEmpty(key));
  CW_CHECK(checkMost(items->size(), most, reader.placeOf(key)));
  std::vector<T> out;
  for (std::size_t i = 0; i < items->size(); ++i) {
    CW_TRY(item, JsonReader::of((*items)[i], fmt::format("{}[{}]", reader.placeOf(key), i)));
    CW_TRY(value, readOne(item));
    out.push_back(std::move(value));
  }
  return out;
}

Result<SerialRange> readSerialRange(JsonReader& reader) {
  SerialRange out;
  CW_CHECK(into(out.from, reader.textOr("from", "")));
  CW_CHECK(into(out.to, reader.textOr("to", "")));
  CW_CHECK(reader.nothingElse());
  if (auto sound = checkSerialRange(out); !sound) return fail(within(reader.place(), sound.error()));
  return out;
}

Result<Source> readSource(JsonReader& reader) {
  Source out;
  CW_CHECK(into(out.id, reader.nonEmpty("id")));
  CW_CHECK(into(out.document, reader.nonEmpty("document")));
  CW_CHECK(into(out.page, reader.textOr("page", "")));
  CW_CHECK(into(out.revision, reader.textOr("revision", "")));
  CW_CHECK(into(out.date, reader.textOr("date", "")));
  if (const auto date = parseDate(out.date); !out.date.empty() && !date)
    return fail(within(reader.placeOf("date"), date.error()));
  if (const Json* picture = reader.optional("photograph"))
    CW_CHECK(into(out.photograph, photographFromJson(*picture, reader.placeOf("photograph"))));
  out.rest = reader.rest();
  return out;
}

Result<Part> readPart(JsonReader& reader) {
  Part out;
  CW_CHECK(into(out.id, reader.nonEmpty("id")));
  CW_CHECK(into(out.name, reader.nonEmpty("name")));
  if (reader.has("count")) {
    CW_TRY(count, reader.integer("count", 1, kMostCount));
    out.count = static_cast<int>(count);
  }
  CW_CHECK(into(out.singleUse, reader.booleanOr("single_use", false)));
  CW_CHECK(into(out.batchWanted, reader.booleanOr("batch_wanted", false)));
  out.rest = reader.rest();
  return out;
}

Result<Fastener> readFastener(JsonReader& reader) {
  Fastener out;
  CW_CHECK(into(out.id, reader.nonEmpty("id")));
  CW_CHECK(into(out.kind, readWord<FastenerKind>(reader, "kind")));
  CW_CHECK(into(out.thread, reader.nonEmpty("thread")));
  CW_CHECK(into(out.grade, reader.textOr("grade", "")));
  CW_CHECK(into(out.length, readOptionalStated<LengthTag>(reader, "length")));
  CW_CHECK(into(out.tapped, reader.textOr("tapped", "")));
  CW_CHECK(into(out.engagement, readOptionalStated<LengthTag>(reader, "engagement")));
  CW_CHECK(into(out.grip, readOptionalStated<LengthTag>(reader, "grip")));
  CW_CHECK(into(out.depth, readOptionalStated<LengthTag>(reader, "depth")));
  if (reader.has("ungrounded")) CW_CHECK(into(out.ungrounded, readWord<Ungrounded>(reader, "ungrounded")));
  out.rest = reader.rest();
  return out;
}

Result<Specification> readSpecification(JsonReader& reader) {
  Specification out;
  CW_CHECK(into(out.id, reader.nonEmpty("id")));
  CW_CHECK(into(out.printed, reader.nonEmpty("printed")));
  CW_CHECK(into(out.printedSecond, reader.textOr("printed_second", "")));
  CW_CHECK(into(out.source, reader.textOr("source", "")));
  CW_CHECK(into(out.reading, readWord<Reading>(reader, "reading")));
  CW_CHECK(into(out.low, readOptionalStated<TorqueTag>(reader, "low")));
  CW_CHECK(into(out.high, readOptionalStated<TorqueTag>(reader, "high")));
  CW_CHECK(into(out.aim, readOptionalStated<TorqueTag>(reader, "aim")));
  CW_CHECK(into(out.toleranceStated, reader.booleanOr("tolerance_stated", false)));
  CW_CHECK(into(out.condition, reader.textOr("condition", "")));
  CW_CHECK(into(out.method, readWordOr(reader, "method", Method::TorqueOnly)));
  CW_CHECK(into(out.angle, readOptionalStated<AngleTag>(reader, "angle")));
  CW_CHECK(into(out.interpretedBy, reader.textOr("interpreted_by", "")));
  CW_CHECK(into(out.why, reader.textOr("why", "")));
  out.rest = reader.rest();
  return out;
}

Result<PositionDetail> readPosition(JsonReader& reader) {
  PositionDetail out;
  CW_CHECK(into(out.fastener, reader.textOr("fastener", "")));
  CW_CHECK(into(out.specification, reader.textOr("specification", "")));
  out.rest = reader.rest();
  return out;
}

Result<std::map<std::string, PositionDetail>> readPositions(JsonReader& joint) {
  std::map<std::string, PositionDetail> out;
  const Json* details = joint.optional("positions");
  if (details == nullptr) return out;
  CW_CHECK(JsonReader::of(*details, joint.placeOf("positions")));
  for (const auto& [label, detail] : *details->object()) {
    CW_TRY(reader, JsonReader::of(detail, fmt::format("{}[{}]", joint.placeOf("positions"), shown(label))));
    CW_TRY(position, readPosition(reader));
    out.emplace(label, std::move(position));
  }
  return out;
}

Result<void> readLayoutOf(JsonReader& reader, Joint& joint) {
  CW_TRY(layout, reader.object("layout"));
  CW_CHECK(into(joint.layout, readLayout(layout)));
  joint.layoutRest = layout.rest();
  return {};
}

Result<void> readPassesOf(JsonReader& reader, Joint& joint) {
  CW_TRY(passes, reader.object("passes"));
  CW_CHECK(into(joint.passes, readPasses(passes)));
  joint.passesRest = passes.rest();
  return {};
}

Result<std::vector<NoSecondTurn>> readBars(JsonReader& joint) {
  CW_TRY(words, joint.textsOrEmpty("no_second_turn"));
  std::vector<NoSecondTurn> out;
  for (const std::string& word : words) {
    auto bar = fromWord<NoSecondTurn>(word);
    if (!bar) return fail(within(joint.placeOf("no_second_turn"), bar.error()));
    out.push_back(*bar);
  }
  return out;
}

Result<Joint> readJoint(JsonReader& reader) {
  Joint out;
  CW_CHECK(into(out.id, reader.nonEmpty("id")));
  CW_CHECK(into(out.name, reader.nonEmpty("name")));
  CW_CHECK(readLayoutOf(reader, out));
  CW_CHECK(into(out.fastener, reader.textOr("fastener", "")));
  CW_CHECK(into(out.specification, reader.textOr("specification", "")));
  CW_CHECK(into(out.positions, readPositions(reader)));
  CW_CHECK(into(out.rule, reader.textOr("rule", "")));
  CW_CHECK(into(out.order, reader.textsOrEmpty("order")));
  CW_CHECK(readPassesOf(reader, out));
  CW_CHECK(into(out.noSecondTurn, readBars(reader)));
  CW_CHECK(into(out.ifItLetsGo, readWordOr(reader, "if_it_lets_go", IfItLetsGo::Leak)));
  out.rest = reader.rest();
  return out;
}

/// Gives each joint that names a rule the order it leaves out. Orders cost time that grows faster than the
/// positions, so these are counted first.
Result<void> fillOrders(std::vector<Joint>& joints) {
  std::size_t count = 0;
  for (const Joint& joint : joints) {
    CW_TRY(placed, places(joint.layout));
    count += placed.size();
  }
  CW_CHECK(checkMost(count, kMostListed, "joints.layout"));
  for (std::size_t i = 0; i < joints.size(); ++i) {
    if (joints[i].rule.empty() || !joints[i].order.empty()) continue;
    auto order = orderByRule(joints[i]);
    if (!order) return fail(within(fmt::format("joints[{}]", i), order.error()));
    joints[i].order = std::move(*order);
  }
  return {};
}

Result<std::optional<HoldDemand>> readHold(JsonReader& step) {
  const Json* value = step.optional("hold");
  if (value == nullptr) return std::optional<HoldDemand>();
  CW_TRY(reader, JsonReader::of(*value, step.placeOf("hold")));
  HoldDemand out;
  CW_CHECK(into(out.witness, readWord<Witness>(reader, "witness")));
  CW_CHECK(into(out.what, reader.textsOrEmpty("what")));
  out.rest = reader.rest();
  return std::optional<HoldDemand>(std::move(out));
}

Result<Step> readStep(JsonReader& reader) {
  Step out;
  CW_CHECK(into(out.id, reader.nonEmpty("id")));
  CW_CHECK(into(out.kind, readWord<StepKind>(reader, "kind")));
  CW_CHECK(into(out.text, reader.nonEmpty("text")));
  CW_CHECK(into(out.warnings, reader.textsOrEmpty("warnings")));
  CW_CHECK(into(out.cautions, reader.textsOrEmpty("cautions")));
  CW_CHECK(into(out.notes, reader.textsOrEmpty("notes")));
  CW_CHECK(into(out.joint, reader.textOr("joint", "")));
  CW_CHECK(into(out.part, reader.textOr("part", "")));
  CW_CHECK(into(out.unit, reader.textOr("unit", "")));
  CW_CHECK(into(out.low, reader.textOr("low", "")));
  CW_CHECK(into(out.high, reader.textOr("high", "")));
  CW_CHECK(into(out.hold, readHold(reader)));
  out.rest = reader.rest();
  return out;
}

Result<Id> readId(JsonReader& reader) {
  CW_TRY(text, reader.text("id"));
  auto id = Id::parse(text);
  if (!id) return fail(within(reader.placeOf("id"), id.error()));
  return id;
}

}  // namespace

Result<Sheet> readSheet(std::string_view bytes) {
  CW_TRY(json, parseJson(bytes));
  CW_TRY(reader, JsonReader::of(json, ""));
  CW_CHECK(checkFormat(reader, kSheetFormat, kSheetVersion));
  Sheet out;
  CW_CHECK(into(out.id, readId(reader)));
  CW_CHECK(into(out.title, reader.nonEmpty("title")));
  CW_CHECK(into(out.revision, reader.nonEmpty("revision")));
  CW_CHECK(into(out.model, reader.textOr("model", "")));
  CW_CHECK(into(out.serials, reader.textOr("serials", "")));
  CW_CHECK(into(out.serialRanges, readList(reader, "serial_ranges", readSerialRange)));
  CW_CHECK(into(out.notice, reader.textOr("notice", "")));
  CW_CHECK(into(out.author, reader.textOr("author", "")));
  CW_CHECK(into(out.sources, readList(reader, "sources", readSource)));
  CW_CHECK(into(out.parts, readList(reader, "parts", readPart)));
  CW_CHECK(into(out.fasteners, readList(reader, "fasteners", readFastener)));
  CW_CHECK(into(out.specifications, readList(reader, "specifications", readSpecification)));
  CW_CHECK(into(out.joints, readList(reader, "joints", readJoint, kMostJoints)));
  CW_CHECK(fillOrders(out.joints));
  CW_CHECK(reader.list("steps"));
  CW_CHECK(into(out.steps, readList(reader, "steps", readStep)));
  out.rest = reader.rest();
  CW_CHECK(checkSheet(out));
  return out;
}

}  // namespace cw

#include "core/base/json.h"
#include "core/pattern/layout_json.h"
#include "core/pattern/passes_json.h"
#include "core/procedure/sheet_file.h"
#include "core/procedure/words.h"
#include "core/units/stated_json.h"

namespace cw {
namespace {

/// Sets members of one object and leaves out those that say nothing.
class ObjectWriter {
 public:
  explicit ObjectWriter(Json::Object rest) : m_out(std::move(rest)) {}

  ObjectWriter& text(std::string key, std::string_view value) {
    if (!value.empty()) m_out.set(std::move(key), value);
    return *this;
  }
  ObjectWriter& texts(std::string key, const std::vector<std::string>& values) {
    if (!values.empty()) m_out.set(std::move(key), Json::Array(values.begin(), values.end()));
    return *this;
  }
  ObjectWriter& flag(std::string key, bool value) {
    if (value) m_out.set(std::move(key), true);
    return *this;
  }
  template <class Tag>
  ObjectWriter& stated(std::string key, const std::optional<Stated<Tag>>& value) {
    if (value) m_out.set(std::move(key), toJson(*value));
    return *this;
  }
  ObjectWriter& value(std::string key, Json value) {
    m_out.set(std::move(key), std::move(value));
    return *this;
  }
  template <class Item>
  ObjectWriter& list(std::string key, const std::vector<Item>& items, Json (*write)(const Item& item)) {
    Json::Array out;
    for (const Item& item : items) out.push_back(write(item));
    return value(std::move(key), std::move(out));
  }

  Json take() { return std::move(m_out); }

 private:
  Json m_out;
};

Json serialRangeJson(const SerialRange& range) {
  return ObjectWriter(Json::Object()).text("from", range.from).text("to", range.to).take();
}

Json sourceJson(const Source& source) {
  ObjectWriter out(source.rest);
  out.text("id", source.id)
      .text("document", source.document)
      .text("page", source.page)
      .text("revision", source.revision)
      .text("date", source.date);
  if (source.photograph) out.value("photograph", photographToJson(*source.photograph));
  return out.take();
}

Json partJson(const Part& part) {
  return ObjectWriter(part.rest)
      .text("id", part.id)
      .text("name", part.name)
      .value("count", part.count)
      .flag("single_use", part.singleUse)
      .flag("batch_wanted", part.batchWanted)
      .take();
}

Json fastenerJson(const Fastener& fastener) {
  return ObjectWriter(fastener.rest)
      .text("id", fastener.id)
      .text("kind", wordOf(fastener.kind))
      .text("thread", fastener.thread)
      .text("grade", fastener.grade)
      .stated("length", fastener.length)
      .text("tapped", fastener.tapped)
      .stated("engagement", fastener.engagement)
      .stated("grip", fastener.grip)
      .stated("depth", fastener.depth)
      .text("ungrounded", fastener.ungrounded ? wordOf(*fastener.ungrounded) : "")
      .take();
}

Json specificationJson(const Specification& specification) {
  return ObjectWriter(specification.rest)
      .text("id", specification.id)
      .text("printed", specification.printed)
      .text("printed_second", specification.printedSecond)
      .text("source", specification.source)
      .text("reading", wordOf(specification.reading))
      .stated("low", specification.low)
      .stated("high", specification.high)
      .stated("aim", specification.aim)
      .flag("tolerance_stated", specification.toleranceStated)
      .text("condition", specification.condition)
      .text("method", wordOf(specification.method))
      .stated("angle", specification.angle)
      .text("interpreted_by", specification.interpretedBy)
      .text("why", specification.why)
      .take();
}

Json positionsJson(const std::map<std::string, PositionDetail>& positions) {
  Json::Object out;
  for (const auto& [label, detail] : positions)
    out.emplace(label, ObjectWriter(detail.rest)
                           .text("fastener", detail.fastener)
                           .text("specification", detail.specification)
                           .take());
  return out;
}

/// `known` with the members that the program did not know.
Json joined(Json known, const Json::Object& rest) {
  known.object()->insert(rest.begin(), rest.end());
  return known;
}

Json jointJson(const Joint& joint) {
  ObjectWriter out(joint.rest);
  out.text("id", joint.id)
      .text("name", joint.name)
      .value("layout", joined(toJson(joint.layout), joint.layoutRest))
      .text("fastener", joint.fastener)
      .text("specification", joint.specification)
      .text("rule", joint.rule)
      .texts("order", joint.order)
      .value("passes", joined(toJson(joint.passes), joint.passesRest));
  Json::Array bars;
  for (const NoSecondTurn bar : joint.noSecondTurn) bars.push_back(wordOf(bar));
  if (!bars.empty()) out.value("no_second_turn", std::move(bars));
  if (joint.ifItLetsGo != IfItLetsGo::Leak) out.text("if_it_lets_go", wordOf(joint.ifItLetsGo));
  if (!joint.positions.empty()) out.value("positions", positionsJson(joint.positions));
  return out.take();
}

Json holdJson(const HoldDemand& hold) {
  return ObjectWriter(hold.rest).text("witness", wordOf(hold.witness)).texts("what", hold.what).take();
}

Json stepJson(const Step& step) {
  ObjectWriter out(step.rest);
  out.text("id", step.id)
      .text("kind", wordOf(step.kind))
      .text("text", step.text)
      .texts("warnings", step.warnings)
      .texts("cautions", step.cautions)
      .texts("notes", step.notes)
      .text("joint", step.joint)
      .text("part", step.part)
      .text("unit", step.unit)
      .text("low", step.low)
      .text("high", step.high);
  if (step.hold) out.value("hold", holdJson(*step.hold));
  return out.take();
}

}  // namespace

Json toJson(const Sheet& sheet) {
  ObjectWriter out(sheet.rest);
  out.text("format", kSheetFormat)
      .value("version", kSheetVersion)
      .text("id", sheet.id.text())
      .text("title", sheet.title)
      .text("revision", sheet.revision)
      .text("model", sheet.model)
      .text("serials", sheet.serials)
      .text("notice", sheet.notice)
      .text("author", sheet.author)
      .list("sources", sheet.sources, sourceJson)
      .list("parts", sheet.parts, partJson)
      .list("fasteners", sheet.fasteners, fastenerJson)
      .list("specifications", sheet.specifications, specificationJson)
      .list("joints", sheet.joints, jointJson)
      .list("steps", sheet.steps, stepJson);
  if (!sheet.serialRanges.empty()) out.list("serial_ranges", sheet.serialRanges, serialRangeJson);
  return out.take();
}

std::string writeSheet(const Sheet& sheet) {
  return pretty(toJson(sheet));
}

}  // namespace cw

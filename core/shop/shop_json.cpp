#include "core/shop/shop_json.h"

#include <algorithm>

#include "core/base/clock.h"
#include "core/units/format.h"
#include "core/units/stated_json.h"

namespace cw {
namespace {

Json fraction(double value) {
  return significant(value, 6);
}

Result<double> readFraction(JsonReader& reader, std::string_view key) {
  CW_TRY(text, reader.text(key));
  auto digits = parseNumber(text);
  if (!digits) return fail(within(reader.placeOf(key), digits.error()));
  return numberOf(*digits);
}

Result<std::chrono::year_month_day> readDate(JsonReader& reader, std::string_view key) {
  CW_TRY(text, reader.text(key));
  auto date = parseDate(text);
  if (!date) return fail(within(reader.placeOf(key), date.error()));
  return date;
}

Json scaleToJson(const Scale& scale) {
  Json out;
  return out.set("low", toJson(scale.low))
      .set("high", toJson(scale.high))
      .set("graduation", toJson(scale.graduation));
}

Result<Scale> scaleFromJson(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  CW_TRY(low, readStated<TorqueTag>(reader, "low"));
  CW_TRY(high, readStated<TorqueTag>(reader, "high"));
  CW_TRY(graduation, readStated<TorqueTag>(reader, "graduation"));
  return Scale{low, high, graduation};
}

Json calibrationToJson(const Calibration& calibration) {
  Json::Array points;
  for (const CalibrationPoint& point : calibration.points) {
    Json one;
    one.set("setting", toJson(point.setting))
        .set("found", toJson(point.found))
        .set("left", toJson(point.left));
    points.push_back(std::move(one));
  }
  Json out;
  out.set("date", isoDate(calibration.date)).set("due", isoDate(calibration.due));
  out.set("certificate", calibration.certificate).set("uncertainty", fraction(calibration.uncertainty));
  return out.set("points", std::move(points));
}

Result<CalibrationPoint> pointFromJson(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  CW_TRY(setting, readStated<TorqueTag>(reader, "setting"));
  CW_TRY(found, readStated<TorqueTag>(reader, "found"));
  CW_TRY(left, readStated<TorqueTag>(reader, "left"));
  return CalibrationPoint{setting, found, left};
}

Result<Calibration> calibrationFromJson(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  Calibration out;
  CW_TRY(date, readDate(reader, "date"));
  CW_TRY(due, readDate(reader, "due"));
  CW_TRY(certificate, reader.textOr("certificate", ""));
  CW_TRY(uncertainty, readFraction(reader, "uncertainty"));
  CW_TRY(points, reader.listOrEmpty("points"));
  out.date = date, out.due = due, out.certificate = certificate, out.uncertainty = uncertainty;
  for (const Json& element : *points) {
    CW_TRY(point, pointFromJson(element, reader.placeOf("points")));
    out.points.push_back(std::move(point));
  }
  return out;
}

constexpr std::pair<ToolStatus, const char*> kStatusWords[] = {{ToolStatus::InUse, "in-use"},
                                                               {ToolStatus::Quarantined, "quarantined"},
                                                               {ToolStatus::Retired, "retired"}};

Result<ToolStatus> readStatus(JsonReader& reader) {
  CW_TRY(text, reader.textOr("status", "in-use"));
  for (const auto& [status, word] : kStatusWords)
    if (text == word) return status;
  return fail(ErrorCode::InvalidInput, reader.placeOf("status"), text,
              {"“%1” is no status of a tool", {shown(text)}}, "write in-use, quarantined or retired");
}

Result<void> readLists(JsonReader& reader, TorqueTool& tool) {
  CW_TRY(scales, reader.list("scales"));
  for (const Json& element : *scales) {
    CW_TRY(scale, scaleFromJson(element, reader.placeOf("scales")));
    tool.scales.push_back(std::move(scale));
  }
  CW_TRY(calibrations, reader.listOrEmpty("calibrations"));
  for (const Json& element : *calibrations) {
    CW_TRY(calibration, calibrationFromJson(element, reader.placeOf("calibrations")));
    tool.calibrations.push_back(std::move(calibration));
  }
  return {};
}

}  // namespace

Json personToJson(const Person& person) {
  Json::Array roles;
  for (const Role role : person.roles) roles.emplace_back(wordOf(role));
  Json out;
  out.set("sign", person.sign).set("name", person.name).set("roles", std::move(roles));
  if (person.apprentice) out.set("apprentice", true);
  if (!person.active) out.set("active", false);
  return out;
}

Result<Person> personFromJson(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  Person out;
  CW_TRY(sign, reader.nonEmpty("sign"));
  CW_TRY(name, reader.nonEmpty("name"));
  CW_TRY(roles, reader.list("roles"));
  CW_TRY(apprentice, reader.booleanOr("apprentice", false));
  CW_TRY(active, reader.booleanOr("active", true));
  CW_CHECK(checkSign(sign));
  out.sign = sign, out.name = name, out.apprentice = apprentice, out.active = active;
  for (const Json& element : *roles) {
    CW_TRY(role, fromWord<Role>(element.string() == nullptr ? canonical(element) : *element.string()));
    out.roles.insert(role);
  }
  return out;
}

Json toolToJson(const TorqueTool& tool) {
  Json::Array scales, calibrations;
  for (const Scale& scale : tool.scales) scales.push_back(scaleToJson(scale));
  for (const Calibration& calibration : tool.calibrations)
    calibrations.push_back(calibrationToJson(calibration));
  const auto status = std::find_if(std::begin(kStatusWords), std::end(kStatusWords),
                                   [&](const auto& s) { return s.first == tool.status; });
  Json out;
  out.set("id", tool.id)
      .set("kind", tool.kind)
      .set("type", tool.type == ToolType::Setting ? "setting" : "indicating");
  out.set("class", tool.isoClass).set("serial", tool.serial).set("deviation", fraction(tool.deviation));
  out.set("left_hand", tool.leftHand)
      .set("status", status->second)
      .set("cycles", tool.cycles)
      .set("cycles_due", tool.cyclesDue);
  if (tool.dueNow) out.set("due_now", isoDate(*tool.dueNow));
  return out.set("scales", std::move(scales)).set("calibrations", std::move(calibrations));
}

Result<TorqueTool> toolFromJson(const Json& json, const std::string& place) {
  CW_TRY(reader, JsonReader::of(json, place));
  TorqueTool out;
  CW_TRY(id, reader.nonEmpty("id"));
  CW_TRY(kind, reader.textOr("kind", ""));
  CW_TRY(type, reader.textOr("type", "setting"));
  CW_TRY(isoClass, reader.textOr("class", ""));
  CW_TRY(serial, reader.textOr("serial", ""));
  CW_TRY(deviation, readFraction(reader, "deviation"));
  CW_TRY(leftHand, reader.booleanOr("left_hand", false));
  CW_TRY(status, readStatus(reader));
  if (type != "setting" && type != "indicating")
    return fail(ErrorCode::InvalidInput, reader.placeOf("type"), type,
                {"“%1” is no type of torque tool", {shown(type)}}, "write setting or indicating");
  out.id = id, out.kind = kind, out.isoClass = isoClass, out.serial = serial, out.deviation = deviation;
  out.type = type == "setting" ? ToolType::Setting : ToolType::Indicating;
  out.leftHand = leftHand, out.status = status;
  for (const auto& [key, count] : {std::pair("cycles", &out.cycles), std::pair("cycles_due", &out.cyclesDue)})
    if (reader.has(key)) {
      CW_TRY(number, reader.integer(key, 0, 100'000'000));
      *count = static_cast<int>(number);
    }
  if (reader.optional("due_now") != nullptr) {
    CW_TRY(day, readDate(reader, "due_now"));
    out.dueNow = day;
  }
  CW_CHECK(readLists(reader, out));
  CW_CHECK(check(out));
  return out;
}

}  // namespace cw

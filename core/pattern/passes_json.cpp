#include "core/pattern/passes_json.h"

#include <fmt/format.h>

#include "core/pattern/numeral_json.h"
#include "core/units/decimal.h"
#include "core/units/stated_json.h"

namespace cw {
namespace {

/// A share as digits of per cent, and back, by moving the point: 33.3 % is the number written 0.333.
std::string percentText(double share) {
  Decimal percent = decimalOf(share);
  percent.exponent += 2;
  return plainText(percent);
}

Result<double> percentFrom(const std::string& text, const std::string& place) {
  auto digits = parseNumber(text);
  if (!digits) return fail(within(place, digits.error()));
  Decimal share = decimalOf(*digits);
  share.exponent -= 2;
  return numberOf(plainText(share));
}

template <class Tag>
Json statedIn(const Unit<Tag>& unit, Quantity<Tag> value) {
  return toJson(Stated<Tag>{numeral(value, unit), &unit});
}

Json gapsJson(const GapReadings& gaps) {
  Json out;
  out.set("places", gaps.places);
  out.set("after_passes", Json::Array(gaps.afterPasses.begin(), gaps.afterPasses.end()));
  return out.set("most_difference", toJson(gaps.mostDifference));
}

Result<std::vector<double>> readShares(JsonReader& reader) {
  CW_TRY(texts, reader.textsOrEmpty("shares_percent"));
  std::vector<double> out;
  for (std::size_t i = 0; i < texts.size(); ++i) {
    CW_TRY(share, percentFrom(texts[i], fmt::format("{}[{}]", reader.placeOf("shares_percent"), i)));
    out.push_back(share);
  }
  return out;
}

Result<std::optional<double>> readSnug(JsonReader& reader) {
  CW_TRY(text, reader.textOr("snug_percent", ""));
  if (text.empty()) return std::optional<double>();
  CW_TRY(share, percentFrom(text, reader.placeOf("snug_percent")));
  return std::optional(share);
}

Result<CheckPass> readCheck(JsonReader& reader) {
  CW_TRY(limit, reader.integer("limit", 1, 100));
  return CheckPass{static_cast<std::size_t>(limit)};
}

Result<Retorque> readRetorque(JsonReader& reader) {
  CW_TRY(wait, readStated<DurationTag>(reader, "wait"));
  return Retorque{wait.value()};
}

Result<GapReadings> readGaps(JsonReader& reader) {
  GapReadings out;
  CW_TRY(places, reader.integer("places", 4, 1000));
  CW_TRY(passes, reader.integers("after_passes", 1, 100));
  CW_TRY(most, readStated<LengthTag>(reader, "most_difference"));
  out.places = static_cast<std::size_t>(places);
  out.afterPasses.assign(passes.begin(), passes.end());
  out.mostDifference = most;
  return out;
}

/// The plan's "shares[1]" and "snug" as the file names them.
std::string fieldOf(std::string place) {
  for (const std::string_view share : {"shares", "snug"})
    if (place.starts_with(share)) place.insert(share.size(), "_percent");
  return place;
}

/// The object `key` read by `read`, or nothing where it is absent.
template <class Part>
Result<std::optional<Part>> readPart(JsonReader& reader, std::string_view key,
                                     Result<Part> (*read)(JsonReader&)) {
  if (reader.optional(key) == nullptr) return std::optional<Part>();
  CW_TRY(members, reader.object(key));
  CW_TRY(part, read(members));
  CW_CHECK(members.nothingElse());
  return std::optional<Part>(std::move(part));
}

}  // namespace

Json toJson(const PassPlan& plan) {
  Json::Array shares;
  for (const double share : plan.shares) shares.push_back(percentText(share));
  Json out;
  out.set("by_hand", plan.byHand).set("shares_percent", std::move(shares));
  if (plan.snug) out.set("snug_percent", percentText(*plan.snug));
  if (plan.check) out.set("check", Json().set("limit", plan.check->limit));
  if (plan.retorque) out.set("retorque", Json().set("wait", statedIn(kHour, plan.retorque->wait)));
  if (plan.gaps) out.set("gaps", gapsJson(*plan.gaps));
  return out;
}

Result<PassPlan> readPasses(JsonReader& reader) {
  PassPlan out;
  CW_TRY(byHand, reader.booleanOr("by_hand", true));
  CW_TRY(shares, readShares(reader));
  CW_TRY(snug, readSnug(reader));
  CW_TRY(check, readPart(reader, "check", readCheck));
  CW_TRY(retorque, readPart(reader, "retorque", readRetorque));
  CW_TRY(gaps, readPart(reader, "gaps", readGaps));
  out = {byHand, snug, std::move(shares), check, retorque, std::move(gaps)};
  for (const Finding& finding : reviewPasses(out))
    if (finding.severity == Severity::Blocking)
      return fail(within(reader.place(),
                         {ErrorCode::OutOfRange, fieldOf(finding.place), "", finding.problem, finding.cure}));
  return out;
}

}  // namespace cw

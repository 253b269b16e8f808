#include "tests/rules_walk/forge.h"

#include <set>

#include "tests/rules_walk/torque_now.h"

namespace cw::test {
namespace {

Json altered(const Json& value, Dice& dice) {
  if (const bool* yes = value.boolean()) return !*yes;
  if (value.number() != nullptr) return dice.between(0, 9);
  if (value.string() != nullptr)
    return dice.of(std::vector<std::string>{"", "T-08", "65", "mira", "lena", "pin", "session", "phone",
                                            "written", "yes", "no", "1", "s1",
                                            "2026-03-04T08:00:00.000+01:00"});
  if (const auto* list = value.array()) {
    Json::Array out = *list;
    if (out.empty() || dice.inHundred(30)) {
      out.push_back(dice.inHundred(50) ? Json("1") : Json("shop-lead"));
    } else if (dice.inHundred(30)) {
      out.pop_back();
    } else {
      Json& one = out[dice.below(out.size())];
      one = altered(one, dice);
    }
    return out;
  }
  if (const auto* members = value.object()) {
    Json::Object out = *members;
    if (out.empty()) return value;
    auto at = out.begin();
    std::advance(at, static_cast<long>(dice.below(out.size())));
    if (dice.inHundred(15))
      out.erase(at);
    else
      at->second = altered(at->second, dice);
    return out;
  }
  return value;
}

}  // namespace

std::optional<Entry> forgedEntry(const Entry& entry, Dice& dice) {
  const Json honest = entryToJson(entry);
  Json::Object out = *honest.object();
  const std::string key = dice.inHundred(55)   ? "body"
                          : dice.inHundred(60) ? "vouched"
                          : dice.inHundred(50) ? "by"
                                               : "";
  Json forged;
  if (key.empty()) {
    forged = altered(honest, dice);
  } else {
    out[key] = altered(out[key], dice);
    // What the program works out and an honest entry leaves unsaid.
    if (key == "body" && dice.inHundred(20))
      out[key].set(dice.of(std::vector<std::string>{"within", "agrees", "registered", "alone"}), true);
    forged = Json(std::move(out));
  }
  auto read = entryFromJson(forged, "entry");
  if (!read) return std::nullopt;
  return *std::move(read);
}

Entry asIfStated(const Job& job, Entry entry) {
  auto* corrected = std::get_if<Corrected>(&entry.body);
  if (corrected == nullptr || corrected->of < 1 || corrected->of > job.count()) return entry;
  static const std::set<std::string> kNotStated{"step",    "position", "pass",  "target",
                                                "setting", "within",   "round", "allowed_by"};
  Json::Object stated;
  if (corrected->now.object() == nullptr) return entry;
  for (const auto& [field, value] : *corrected->now.object())
    if (!kNotStated.contains(field)) stated.emplace(field, value);
  // What held before and is gone is taken out by saying so.
  const Json before = bodyToJson(job.kept(corrected->of).body());
  for (const auto& [field, value] : *before.object()) {
    if (kNotStated.contains(field) || stated.contains(field)) continue;
    if (value.array() != nullptr) stated.emplace(field, Json(Json::Array{}));
    if (value.boolean() != nullptr) stated.emplace(field, false);
    if (value.string() != nullptr) stated.emplace(field, "");
    if (value.object() != nullptr) stated.emplace(field, Json());
    if (value.number() != nullptr) stated.emplace(field, 0);
  }
  corrected->now = Json(std::move(stated));
  return entry;
}

}  // namespace cw::test

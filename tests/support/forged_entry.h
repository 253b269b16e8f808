#pragma once
#include <string>
#include <vector>

#include "core/record/job.h"
#include "tests/support/raw_sqlite.h"

namespace cw::test {

/// Writes `entry` behind the last of `job` as somebody with a database shell can, chained as it must be.
inline void insertForged(const std::filesystem::path& file, const Job& job, const Json& entry) {
  const std::string text = canonical(entry);
  std::string quoted;
  for (const char c : text) quoted += c == '\'' ? std::string("''") : std::string(1, c);
  const auto member = [&](const char* key) { return *entry.find(key)->string(); };
  sqlite(file, "INSERT INTO entry(job, sequence, id, kind, text, previous, hash) VALUES ('" + job.id.text() +
                   "', " + std::to_string(job.count() + 1) + ", '" + member("id") + "', '" + member("kind") +
                   "', '" + quoted + "', '" + hex(job.head) + "', '" + hex(entryHash(job.head, text)) + "')");
}

/// The last entry of `job` said again as its next, with another kind and body; both as JSON.
inline Json forgedAfter(const Job& job, const std::string& kind, const std::string& body) {
  Json out = entryToJson(*job.last());
  const std::string id = job.last()->id.text();
  out.set("seq", job.count() + 1).set("id", "0f" + id.substr(2)).set("kind", kind);
  return out.set("body", parseJson(body).value());
}

/// What nobody could have entered, and what later code would look up without asking.
inline const std::vector<std::pair<std::string, std::string>>& impossibleBodies() {
  static const std::vector<std::pair<std::string, std::string>> kAll{
      {"done", R"({"step":"nope"})"},
      {"done", R"({})"},
      {"checked", R"({"answer":"yes","step":"s5"})"},
      {"corrected", R"({"now":{"step":"s1"},"of":900000,"reason":"x"})"},
      {"corrected", R"({"now":{"step":"nope"},"of":2,"reason":"x"})"},
      {"corrected", R"({"now":"s1","of":1,"reason":"x"})"},
      {"confirmed", R"({"of":[900000]})"},
      {"reopened", R"({"position":"77","reason":"x","step":"s5"})"},
      {"reopened", R"({"reason":"x","step":"nope"})"},
      {"taken-apart", R"({"reason":"x","step":"nope"})"},
      {"set-aside", R"({"reason":"x","step":"nope"})"},
      {"left-blank", R"({"absence":"not-recorded","reason":"x","step":"nope"})"},
      {"deviated", R"({"reason":"x","step":"nope","what":"y"})"},
      {"tightened", R"({"known":"clicked","pass":2,"position":"77","step":"s5","within":true})"},
      {"tightened", R"({"known":"clicked","pass":2,"position":"1","step":"s1","within":true})"},
      {"tool-set", R"({"pass":900000,"setting":{"unit":"lbf.in","value":"65"},"step":"s5","tool":"T-07"})"},
      {"counted", R"({"count":4,"pass":1,"positions":["77"],"step":"s1"})"},
      {"gaps-read", R"({"gaps":[],"pass":1,"step":"s5"})"},
      {"witnessed", R"({"manner":"watched","step":"nope","agrees":true})"},
      {"repaired", R"({"joint":"nope","position":"1","reason":"x","what":"y"})"},
      {"tool-stopped", R"({"positions":["77"],"tool":"T-99","why":"dropped"})"},
      {"started", R"({"machine":"P-1","work_order":"WO 1"})"},
      {"resumed", R"({})"},
      {"finished", R"({})"},
      {"painted", R"({"step":"s1"})"}};
  return kAll;
}

}  // namespace cw::test

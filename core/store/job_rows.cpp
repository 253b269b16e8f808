#include "core/store/job_rows.h"

#include <fmt/format.h>

#include <set>

namespace cw {
namespace {

struct EntryRow {
  int sequence = 0;
  std::string id, kind, text, previous, hash;
};

EntryRow entryRow(const SqlRows& row) {
  return {static_cast<int>(row.integer(0)), row.text(1), row.text(2), row.text(3), row.text(4), row.text(5)};
}

tl::unexpected<Error> broken(const std::string& place, Message why) {
  return fail(ErrorCode::Corrupt, place, "", std::move(why), "put back a backup");
}

/// One more link: the row must follow from the job as it is, and say in its columns what its text says.
Result<void> takeIn(Job& job, const EntryRow& row) {
  const int wanted = job.count() + 1;
  const std::string place = fmt::format("job {}, entry {}", job.id.text(), wanted);
  if (row.sequence != wanted) return broken(place, "this entry is missing");
  const Digest hash = entryHash(job.head, row.text);
  if (row.previous != hex(job.head) || row.hash != hex(hash))
    return broken(place, "its hash does not follow from the entry before it");
  auto json = parseJson(row.text);
  if (!json) return broken(place, {"it cannot be read: %1", {sentence(json.error())}});
  auto entry = entryFromJson(*json, place);
  if (!entry && entry.error().code == ErrorCode::NewerVersion) return fail(entry.error());
  if (!entry) return broken(place, {"it cannot be read: %1", {sentence(entry.error())}});
  if (canonical(entryToJson(*entry)) != row.text || entry->sequence != row.sequence ||
      entry->id.text() != row.id || kindOf(entry->body) != row.kind)
    return broken(place, "it is not written as the program writes entries");
  apply(job, *std::move(entry));
  return {};
}

Result<void> checkNotDisposed(Connection& connection, const Id& job) {
  CW_TRY(gone, first(connection, "SELECT at, by FROM disposal WHERE job = ?", {job.text()},
                     [](const SqlRows& row) { return std::pair(row.text(0), row.text(1)); }));
  if (!gone) return {};
  return fail(ErrorCode::NotFound, "job", job.text(),
              {"this job was disposed of by %1 on %2", {gone->second, gone->first.substr(0, 10)}},
              "its entries are gone for good");
}

/// Everybody and every tool that an entry names.
std::set<std::pair<std::string_view, std::string>> mentionsOf(const Entry& entry) {
  std::set<std::pair<std::string_view, std::string>> out{{"person", entry.enteredBy}};
  if (!entry.supervisor.empty()) out.emplace("person", entry.supervisor);
  for (const Doer& doer : entry.by) {
    out.emplace("person", doer.person);
    if (!doer.tool.empty()) out.emplace("tool", doer.tool);
  }
  if (const auto* set = std::get_if<ToolSet>(&entry.body)) out.emplace("tool", set->tool);
  if (const auto* started = std::get_if<JobStarted>(&entry.body); started && !started->guardAllowedBy.empty())
    out.emplace("person", started->guardAllowedBy);
  return out;
}

}  // namespace

Result<Job> loadJob(Connection& connection, const Id& shop, const Id& id) {
  CW_TRY(bytes, first(connection, "SELECT bytes FROM job JOIN sheet_text USING (digest) WHERE id = ?",
                      {id.text()}, [](const SqlRows& row) { return row.bytes(0); }));
  if (!bytes)
    return fail(ErrorCode::NotFound, "job", id.text(), {"there is no job %1", {id.text()}},
                "write the id of a job of this shop");
  CW_TRY(job, emptyJob(shop, id, *std::move(bytes)));
  CW_CHECK(catchUp(connection, job));
  return std::move(job);
}

Result<void> catchUp(Connection& connection, Job& job) {
  CW_CHECK(checkNotDisposed(connection, job.id));
  CW_TRY(rows, collect(connection,
                       "SELECT sequence, id, kind, text, previous, hash FROM entry"
                       " WHERE job = ? AND sequence > ? ORDER BY sequence",
                       {job.id.text(), job.count()}, entryRow));
  for (const EntryRow& row : rows) CW_CHECK(takeIn(job, row));
  CW_TRY(head, headOf(connection, job.id));
  if (job.entries.empty() ? head.empty() : head == hex(job.head)) return {};
  return broken(fmt::format("job {}", job.id.text()), "entries that were there are gone or altered");
}

Result<std::string> headOf(Connection& connection, const Id& job) {
  CW_TRY(head, first(connection, "SELECT hash FROM entry WHERE job = ? ORDER BY sequence DESC LIMIT 1",
                     {job.text()}, [](const SqlRows& row) { return row.text(0); }));
  return head.value_or("");
}

Result<void> insertEntry(Connection& connection, const Id& job, const Entry& entry, const Digest& previous) {
  const std::string text = canonical(entryToJson(entry));
  CW_CHECK(connection.run(
      "INSERT INTO entry(job, sequence, id, kind, text, previous, hash) VALUES (?, ?, ?, ?, ?, ?, ?)",
      {job.text(), entry.sequence, entry.id.text(), kindOf(entry.body), text, hex(previous),
       hex(entryHash(previous, text))}));
  for (const auto& [what, name] : mentionsOf(entry))
    CW_CHECK(connection.run("INSERT INTO mention(what, name, job) VALUES (?, ?, ?) ON CONFLICT DO NOTHING",
                            {what, name, job.text()}));
  return {};
}

Result<std::optional<StoredEntry>> storedEntry(Connection& connection, const Id& entry) {
  return first(connection, "SELECT job, sequence, kind, text, hash FROM entry WHERE id = ?", {entry.text()},
               [](const SqlRows& row) {
                 return StoredEntry{*Id::parse(row.text(0)), static_cast<int>(row.integer(1)), row.text(2),
                                    row.text(3), row.text(4)};
               });
}

}  // namespace cw

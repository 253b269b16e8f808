#include "core/store/job_rows.h"

#include <fmt/format.h>

namespace cw {
namespace {

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
  if (entry->id.text() != row.id || kindOf(entry->body) != row.kind)
    return broken(place, "its row says something else than its text");
  auto judged = judge(job, *std::move(entry), From::Chain);
  if (!judged) return broken(place, {"nobody could have made it: %1", {sentence(judged.error())}});
  if (judged->text() != row.text) return broken(place, "it is not written as the program writes entries");
  apply(job, *std::move(judged));
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

}  // namespace

Result<Job> loadJob(Connection& connection, const Id& shop, const Id& id) {
  const Snapshot moment(connection);
  CW_CHECK(moment.begun());
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
  const Snapshot moment(connection);
  CW_CHECK(moment.begun());
  CW_CHECK(checkNotDisposed(connection, job.id));
  CW_TRY(rows, entryRows(connection, job.id, job.count()));
  for (const EntryRow& row : rows) CW_CHECK(takeIn(job, row));
  CW_TRY(head, headOf(connection, job.id));
  if (job.entries.empty() ? head.empty() : head == hex(job.head)) return {};
  return broken(fmt::format("job {}", job.id.text()), "entries that were there are gone or altered");
}

Result<std::vector<EntryRow>> entryRows(Connection& connection, const Id& job, int after) {
  return collect(connection,
                 "SELECT sequence, id, kind, CAST(text AS BLOB), previous, hash FROM entry"
                 " WHERE job = ? AND sequence > ? ORDER BY sequence",
                 {job.text(), after}, [](const SqlRows& row) {
                   return EntryRow{row.integer(0), row.text(1), row.text(2),
                                   row.bytes(3),   row.text(4), row.text(5)};
                 });
}

Result<std::string> headOf(Connection& connection, const Id& job) {
  CW_TRY(head, first(connection, "SELECT hash FROM entry WHERE job = ? ORDER BY sequence DESC LIMIT 1",
                     {job.text()}, [](const SqlRows& row) { return row.text(0); }));
  return head.value_or("");
}

namespace {

/// Names that the job's earlier entries do not hold; those stand in the list since those entries were
/// written.
Result<void> listNames(Connection& connection, const Job& job, std::string_view what,
                       const std::set<std::string>& names, const std::set<std::string>& listed) {
  for (const std::string& name : names)
    if (!listed.contains(name))
      CW_CHECK(connection.run("INSERT INTO mention(what, name, job) VALUES (?, ?, ?) ON CONFLICT DO NOTHING",
                              {what, name, job.id.text()}));
  return {};
}

}  // namespace

Result<void> insertEntry(Connection& connection, const Job& job, const Judged& judged,
                         const Digest& previous) {
  const Entry& entry = judged.entry();
  CW_CHECK(connection.run(
      "INSERT INTO entry(job, sequence, id, kind, text, previous, hash) VALUES (?, ?, ?, ?, ?, ?, ?)",
      {job.id.text(), entry.sequence, entry.id.text(), kindOf(entry.body), judged.text(), hex(previous),
       hex(judged.hash())}));
  const Named named = namedIn(entry);
  CW_CHECK(listNames(connection, job, "person", named.people, job.named.people));
  return listNames(connection, job, "tool", named.tools, job.named.tools);
}

Result<std::optional<StoredEntry>> storedEntry(Connection& connection, const Id& entry) {
  CW_TRY(row, first(connection, "SELECT job, sequence, kind, text, hash FROM entry WHERE id = ?",
                    {entry.text()}, [](const SqlRows& each) {
                      return std::pair(each.text(0), StoredEntry{Id(), static_cast<int>(each.integer(1)),
                                                                 each.text(2), each.text(3), each.text(4)});
                    }));
  if (!row) return std::optional<StoredEntry>();
  const auto job = Id::parse(row->first);
  if (!job) return broken("entry " + entry.text(), {"it names the job “%1”", {shown(row->first)}});
  row->second.job = *job;
  return std::optional(std::move(row->second));
}

}  // namespace cw

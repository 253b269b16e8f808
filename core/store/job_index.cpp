#include "core/store/job_index.h"

#include <algorithm>

#include "core/store/connection.h"
#include "core/store/database.h"
#include "core/store/typed_words.h"

namespace cw {
namespace {

// The states as the tables tell them; a sealed or disposed job counts as that only.
constexpr std::string_view kState =
    "CASE WHEN EXISTS (SELECT 1 FROM disposal WHERE job = j.id) THEN 'disposed'"
    " WHEN EXISTS (SELECT 1 FROM record WHERE job = j.id) THEN 'sealed'"
    " WHEN EXISTS (SELECT 1 FROM entry WHERE job = j.id AND kind = 'finished') THEN 'finished'"
    " WHEN EXISTS (SELECT 1 FROM entry WHERE job = j.id AND kind = 'called-off') THEN 'called-off'"
    " ELSE 'open' END";

const std::string kJobColumns =
    "SELECT j.id, j.work_order, j.machine, j.model, j.serial, j.sheet, j.revision, j.title, j.started, " +
    std::string(kState) +
    ", (SELECT max(sequence) FROM entry WHERE job = j.id)"
    ", (SELECT hash FROM entry WHERE job = j.id ORDER BY sequence DESC LIMIT 1)"
    ", (SELECT sealed FROM record WHERE job = j.id)"
    ", (SELECT count(*) FROM addendum WHERE job = j.id)"
    ", coalesce((SELECT json_extract(text, '$.body.quick') FROM entry WHERE job = j.id AND sequence = 1), 0)";

/// A WHERE clause in the making, with what stands for its question marks.
class Conditions {
 public:
  void add(std::string_view condition, std::string value) {
    m_text += (m_text.empty() ? " WHERE " : " AND ") + std::string(condition);
    m_values.push_back(std::move(value));
  }
  void addIfGiven(std::string_view condition, const std::string& value) {
    if (!value.empty()) add(condition, value);
  }
  void addOneOf(std::string_view what, const std::vector<JobState>& states) {
    std::string places;
    for (std::size_t i = 0; i < states.size(); ++i) places += i == 0 ? "?" : ", ?";
    if (states.empty()) return;
    add(std::string(what) + " IN (" + places + ")", std::string(wordOf(states.front())));
    for (std::size_t i = 1; i < states.size(); ++i) m_values.emplace_back(wordOf(states[i]));
  }
  const std::string& text() const { return m_text; }
  SqlValues values() const { return {m_values.begin(), m_values.end()}; }

 private:
  std::string m_text;
  std::vector<std::string> m_values;
};

std::string utc(const Moment& moment) {
  return rfc3339({moment.utc, std::chrono::minutes{0}});
}

Conditions conditionsOf(const JobQuery& query) {
  Conditions out;
  out.addIfGiven("job_words MATCH ?", everyBeginning(query.words));
  out.addIfGiven("j.work_order = ?", query.workOrder);
  out.addIfGiven("j.machine = ?", query.machine);
  out.addIfGiven("j.serial = ?", query.serial);
  out.addIfGiven("j.id IN (SELECT job FROM mention WHERE what = 'person' AND name = ?)", query.person);
  out.addIfGiven("j.id IN (SELECT job FROM mention WHERE what = 'tool' AND name = ?)", query.tool);
  if (query.job) out.add("j.id = ?", query.job->text());
  if (query.sheet) out.add("j.sheet = ?", query.sheet->text());
  if (query.from) out.add("j.started >= ?", utc(*query.from));
  if (query.to) out.add("j.started < ?", utc(*query.to));
  out.addOneOf(kState, query.states);
  return out;
}

JobState stateOf(std::string_view text) {
  for (const auto& [state, known] : Words<JobState>::kAll)
    if (known == text) return state;
  return JobState::Open;
}

/// Id and time stand in columns that take any text; what is none of them was not written by the program.
Result<JobRow> rowOf(const SqlRows& row) {
  const auto job = Id::parse(row.text(0)), sheet = Id::parse(row.text(5));
  const auto started = parseRfc3339(row.text(8));
  const auto sealed = parseRfc3339(row.isNull(12) ? row.text(8) : row.text(12));
  if (!job || !sheet || !started || !sealed)
    return fail(ErrorCode::Corrupt, "job " + row.text(0), "", "its row in the list of jobs cannot be read",
                "put back a backup");
  JobRow out;
  out.job = *job, out.sheet = *sheet, out.started = *started;
  out.workOrder = row.text(1), out.machine = row.text(2), out.model = row.text(3), out.serial = row.text(4);
  out.revision = row.text(6), out.title = row.text(7);
  out.state = stateOf(row.text(9));
  out.entries = static_cast<int>(row.integer(10));
  out.head = row.text(11);
  if (!row.isNull(12)) out.sealed = *sealed;
  out.addenda = static_cast<int>(row.integer(13));
  out.quick = row.integer(14) != 0;
  return out;
}

}  // namespace

Result<Listed<JobRow>> findJobs(Database& database, const JobQuery& query) {
  const Conditions conditions = conditionsOf(query);
  // The word index is in the order of starting, and can be walked from its end without sorting.
  const bool byWords = conditions.text().find("MATCH") != std::string::npos;
  const std::string which =
      (byWords ? " FROM job_words w JOIN job j ON j.id = w.job" : " FROM job j") + conditions.text();
  SqlValues values = conditions.values();
  values.emplace_back(query.most);
  Connection& connection = database.connection();
  const Snapshot moment(connection);
  CW_CHECK(moment.begun());
  CW_TRY(rows, collect(connection,
                       kJobColumns + which +
                           (byWords ? " ORDER BY w.rowid DESC" : " ORDER BY j.started DESC, j.id DESC") +
                           " LIMIT ?",
                       values, rowOf));
  Listed<JobRow> out{std::move(rows), 0};
  out.total = out.rows.size();
  if (out.total < static_cast<std::size_t>(std::max(query.most, 0))) return out;
  CW_TRY(total, first(connection, "SELECT count(*)" + which, conditions.values(),
                      [](const SqlRows& row) { return static_cast<std::size_t>(row.integer(0)); }));
  out.total = total.value_or(out.total);
  return out;
}

}  // namespace cw

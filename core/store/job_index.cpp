#include "core/store/job_index.h"

#include <array>
#include <utility>

#include "core/store/connection.h"
#include "core/store/database.h"
#include "core/store/typed_words.h"

namespace cw {
namespace {

constexpr std::array<std::pair<JobState, std::string_view>, 4> kWords{{{JobState::Open, "open"},
                                                                       {JobState::Finished, "finished"},
                                                                       {JobState::Sealed, "sealed"},
                                                                       {JobState::Disposed, "disposed"}}};

// The states as the tables tell them; a sealed or disposed job counts as that only.
constexpr std::string_view kState =
    "CASE WHEN EXISTS (SELECT 1 FROM disposal WHERE job = j.id) THEN 'disposed'"
    " WHEN EXISTS (SELECT 1 FROM record WHERE job = j.id) THEN 'sealed'"
    " WHEN EXISTS (SELECT 1 FROM entry WHERE job = j.id AND kind = 'finished') THEN 'finished' ELSE 'open' "
    "END";

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
  if (query.sheet) out.add("j.sheet = ?", query.sheet->text());
  if (query.from) out.add("j.started >= ?", utc(*query.from));
  if (query.to) out.add("j.started < ?", utc(*query.to));
  if (query.state) out.add(std::string(kState) + " = ?", std::string(word(*query.state)));
  return out;
}

JobState stateOf(std::string_view text) {
  for (const auto& [state, known] : kWords)
    if (known == text) return state;
  return JobState::Open;
}

std::optional<Moment> momentOf(const SqlRows& row, int column) {
  const auto moment = parseRfc3339(row.text(column));
  return moment ? std::optional(*moment) : std::nullopt;
}

JobRow rowOf(const SqlRows& row) {
  JobRow out;
  out.job = Id::parse(row.text(0)).value_or(Id());
  out.workOrder = row.text(1), out.machine = row.text(2), out.model = row.text(3), out.serial = row.text(4);
  out.sheet = Id::parse(row.text(5)).value_or(Id());
  out.revision = row.text(6), out.title = row.text(7);
  out.started = momentOf(row, 8).value_or(Moment{});
  out.state = stateOf(row.text(9));
  out.entries = static_cast<int>(row.integer(10));
  out.head = row.text(11);
  out.sealed = momentOf(row, 12);
  out.addenda = static_cast<int>(row.integer(13));
  out.quick = row.integer(14) != 0;
  return out;
}

}  // namespace

std::string_view word(JobState state) {
  for (const auto& [known, text] : kWords)
    if (known == state) return text;
  return {};
}

Result<std::vector<JobRow>> findJobs(Database& database, const JobQuery& query) {
  const Conditions conditions = conditionsOf(query);
  // The word index is in the order of starting, and can be walked from its end without sorting.
  const bool byWords = conditions.text().find("MATCH") != std::string::npos;
  const std::string from = byWords ? " FROM job_words w JOIN job j ON j.id = w.job" : " FROM job j";
  SqlValues values = conditions.values();
  values.emplace_back(query.most);
  return collect(
      database.connection(),
      "SELECT j.id, j.work_order, j.machine, j.model, j.serial, j.sheet, j.revision, j.title, j.started, " +
          std::string(kState) +
          ", (SELECT max(sequence) FROM entry WHERE job = j.id)"
          ", (SELECT hash FROM entry WHERE job = j.id ORDER BY sequence DESC LIMIT 1)"
          ", (SELECT sealed FROM record WHERE job = j.id)"
          ", (SELECT count(*) FROM addendum WHERE job = j.id)"
          ", coalesce((SELECT json_extract(text, '$.body.quick') FROM entry WHERE job = j.id AND sequence = "
          "1), "
          "0)" +
          from + conditions.text() +
          (byWords ? " ORDER BY w.rowid DESC" : " ORDER BY j.started DESC, j.id DESC") + " LIMIT ?",
      values, rowOf);
}

}  // namespace cw

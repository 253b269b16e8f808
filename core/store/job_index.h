#pragma once
#include <optional>
#include <string>
#include <vector>

#include "core/base/clock.h"
#include "core/base/id.h"
#include "core/base/words.h"
#include "core/store/listed.h"

namespace cw {

class Database;

enum class JobState { Open, Finished, CalledOff, Sealed, Disposed };

template <>
struct Words<JobState> {
  static constexpr std::array<std::pair<JobState, std::string_view>, 5> kAll{
      {{JobState::Open, "open"},
       {JobState::Finished, "finished"},
       {JobState::CalledOff, "called-off"},
       {JobState::Sealed, "sealed"},
       {JobState::Disposed, "disposed"}}};
};

/// A job as a list shows it.
struct JobRow {
  Id job;
  std::string workOrder, machine, model, serial;
  Id sheet;
  std::string revision, title;
  bool quick = false;  ///< a quick joint: no issued sheet
  Moment started;
  JobState state = JobState::Open;
  int entries = 0;
  std::string head;  ///< hash of the last entry; empty once disposed of
  std::optional<Moment> sealed;
  int addenda = 0;

  bool operator==(const JobRow&) const = default;
};

/// What to look for. All that is given must hold; texts are whole and exact, `words` are beginnings of words
/// of work order, machine, model, serial and title.
struct JobQuery {
  std::string words, workOrder, machine, serial;
  std::string person, tool;  ///< named in any entry
  std::optional<Id> job, sheet;
  std::optional<Moment> from, to;  ///< started in [from, to)
  std::vector<JobState> states;    ///< one of these; empty: any
  int most = 1000;
};

/// The jobs that fit, the latest first, `most` of them. Corrupt naming a row that cannot be read.
Result<Listed<JobRow>> findJobs(Database& database, const JobQuery& query);

}  // namespace cw

#pragma once
#include "core/record/job.h"

namespace cw {

/// An entry that was judged, with its canonical text and its link in the chain. Only `judge` makes one, and
/// only of an entry that may be the next of the job it was judged for.
class Judged {
 public:
  const Entry& entry() const { return m_entry; }
  const std::string& text() const { return m_text; }
  const Digest& hash() const { return m_hash; }

 private:
  Judged(Entry entry, const Digest& previous);
  friend Result<Judged> judge(const Job& job, Entry entry, From from);
  friend void apply(Job& job, Judged judged);
  Entry m_entry;
  std::string m_text;
  Digest m_hash{};
};

/// The one door into a chain: may this entry be the next of the job, and if not, why not? What the program
/// works out is filled in where the entry comes from a line, and compared where it comes from a chain. Pure,
/// and the same at the bench, on the command line, when a job is loaded and when a record is verified; nothing
/// but job and entry is asked. OutOfTurn, NotPermitted, NotFound, OutOfRange, AlreadyDone or InvalidInput,
/// with the place and what is to be done instead. Of a trial version's entries only that they follow from each
/// other and speak of what the sheet has; nothing but a calling-off is appended to them.
Result<Judged> judge(const Job& job, Entry entry, From from);

/// Takes a judged entry in.
void apply(Job& job, Judged judged);

}  // namespace cw

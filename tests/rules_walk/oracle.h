#pragma once
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/record/job.h"

namespace cw::test {

/// What must hold of a job whatever was tried, worked out anew from the texts of the entries and the sheet
/// alone. Each function answers what does not hold, or nothing.
class Oracle {
 public:
  explicit Oracle(const Job& empty) : m_previous(empty.head) {}

  /// After an entry was taken in.
  std::string afterEntry(const Job& job);
  /// Of a finished job of which the program says that nothing is missing.
  std::string complete(const Job& job) const;
  /// What holds of entry `sequence` now, as its text or its last correction says it.
  Json bodyNow(int sequence) const;

 private:
  std::string people(const Job& job, const Json& entry);
  std::string leadsWord(const Job& job, const Json& entry) const;
  std::string fates(const Job& job, const Json& entry);
  std::string pull(const Job& job, const Json& entry) const;
  std::string position(const Job& job, const Step& step, const std::string& label) const;
  std::string looked(const Job& job, std::size_t step, int before) const;
  std::set<std::string> hands(const Job& job, std::size_t step, int before) const;
  bool holds(const Job& job, int sequence) const;
  const Json& entry(int sequence) const { return m_entries[static_cast<std::size_t>(sequence - 1)]; }

  std::vector<Json> m_entries;
  std::vector<std::string> m_texts;
  std::vector<bool> m_overtaken;
  std::map<int, Json> m_corrected;  ///< what the last correction of an entry says
  std::set<std::string> m_signedIn;
  Digest m_previous;
};

}  // namespace cw::test

#pragma once
#include <string>
#include <vector>

#include "core/report/content.h"
#include "core/report/document.h"

namespace cw {

// How the record's document writes small things.

/// "3, 7, 12".
std::string numberList(const std::vector<int>& numbers);

/// "65 in·lbf", or nothing where none is stated.
std::string torqueText(const StatedTorque& torque);

/// "60–70 in·lbf"; one value where both ends are the same; nothing where an end is missing.
std::string rangeText(const StatedTorque& low, const StatedTorque& high);

/// What the record is not: stands on its summary and at its end.
Message deference();

/// How a reading or an entry is shown that may no longer hold.
template <class Line>
Ink inkOf(const Line& line) {
  if (line.correctedBy) return Ink::Struck;
  return line.overtaken ? Ink::Pale : Ink::Full;
}

/// Facts with something to say.
class FactList {
 public:
  explicit FactList(const Wording& wording) : m_wording(wording) {}

  /// Leaves out what is empty.
  void add(const Message& label, std::string value) {
    if (!value.empty()) m_facts.rows.push_back({label.empty() ? "" : m_wording(label), std::move(value)});
  }
  Facts take() { return std::move(m_facts); }

 private:
  const Wording& m_wording;
  Facts m_facts;
};

}  // namespace cw

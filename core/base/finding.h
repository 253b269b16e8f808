#pragma once
#include <string>
#include <vector>

#include "core/base/message.h"
#include "core/base/words.h"

namespace cw {

enum class Severity { Note, Warning, Blocking };
template <>
struct Words<Severity> {
  static constexpr std::array<std::pair<Severity, std::string_view>, 3> kAll{
      {{Severity::Note, "note"}, {Severity::Warning, "warning"}, {Severity::Blocking, "blocking"}}};
};

/// One remark of a review. Reviews return all of them; a Blocking one stops what was asked for.
struct Finding {
  Severity severity = Severity::Warning;
  std::string code;   ///< stable word for tests and filters, e.g. "order-gap"
  std::string place;  ///< as in Error
  Message problem;
  Message cure;  ///< what would be right

  bool operator==(const Finding&) const = default;
};

using Findings = std::vector<Finding>;

/// A Blocking finding.
Finding blocking(std::string code, std::string place, Message problem, Message cure = {});

bool hasBlocking(const Findings& findings);
std::string sentence(const Finding& finding);

}  // namespace cw

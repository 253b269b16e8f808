#include "core/base/finding.h"

#include <algorithm>

namespace cw {

bool hasBlocking(const Findings& findings) {
  return std::any_of(findings.begin(), findings.end(),
                     [](const Finding& finding) { return finding.severity == Severity::Blocking; });
}

std::string sentence(const Finding& finding) {
  return sentence(finding.place, finding.problem, finding.cure);
}

}  // namespace cw

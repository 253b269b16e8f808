#include "core/base/finding.h"

#include <algorithm>
#include <utility>

namespace cw {

Finding blocking(std::string code, std::string place, Message problem, Message cure) {
  return {Severity::Blocking, std::move(code), std::move(place), std::move(problem), std::move(cure)};
}

bool hasBlocking(const Findings& findings) {
  return std::any_of(findings.begin(), findings.end(),
                     [](const Finding& finding) { return finding.severity == Severity::Blocking; });
}

std::string sentence(const Finding& finding) {
  return sentence(finding.place, finding.problem, finding.cure);
}

}  // namespace cw

#include "core/base/finding.h"

#include <algorithm>

namespace cw {

bool hasBlocking(const Findings& findings) {
  return std::any_of(findings.begin(), findings.end(),
                     [](const Finding& finding) { return finding.severity == Severity::Blocking; });
}

std::string sentence(const Finding& finding) {
  std::string out = finding.place.empty() ? std::string() : finding.place + ": ";
  out += plain(finding.problem);
  if (!finding.cure.empty()) out += "; " + plain(finding.cure);
  return out + ".";
}

}  // namespace cw

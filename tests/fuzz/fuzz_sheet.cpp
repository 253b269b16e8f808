// Sheet files: whatever the bytes, the answer is a sheet that survives writing and reading, or one sentence.
#include "core/procedure/review.h"
#include "core/procedure/sheet_file.h"
#include "core/procedure/targets.h"
#include "tests/fuzz/fuzz.h"
#include "tests/fuzz/refusal.h"

namespace cw {
namespace {

using fuzz::checkRefusal;
using fuzz::require;

/// Lengths beyond what fits nine places are rounded once, so the second writing is what must hold still.
void checkRoundTrip(const Sheet& sheet) {
  const std::string written = writeSheet(sheet);
  const auto again = readSheet(written);
  require(again.has_value(), "what is written is read");
  require(writeSheet(*again) == written, "a second writing changes nothing");
}

void checkTargets(const Sheet& sheet) {
  const StatedTorque marks{"0.5", &kNewtonMetre};
  for (const Joint& joint : sheet.joints)
    for (const Pass& pass : passesOf(joint.passes))
      for (const std::string& label : joint.order)
        if (const auto target = targetAt(sheet, joint, label, pass, marks); !target)
          checkRefusal(target.error());
}

}  // namespace
}  // namespace cw

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace cw;
  const auto sheet = readSheet(fuzz::text(data, size));
  if (!sheet) {
    checkRefusal(sheet.error());
    return 0;
  }
  checkRoundTrip(*sheet);
  checkTargets(*sheet);
  for (const Finding& finding : review(*sheet, {shippedCatalogue(), std::nullopt, "jon", false}))
    fuzz::require(!finding.code.empty() && !finding.cure.empty(), "a finding has a code and a cure");
  return 0;
}

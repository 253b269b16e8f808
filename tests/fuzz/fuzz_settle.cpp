// Settle files: whatever the bytes, the answer is a joint whose loads are numbers, or one sentence.
#include <cmath>

#include "core/settling/settling_course.h"
#include "core/settling/settling_file.h"
#include "tests/fuzz/fuzz.h"
#include "tests/fuzz/refusal.h"

namespace cw {
namespace {

/// Big joints are right and slow; what they add over small ones is time.
bool isQuick(const SettlingCase& given) {
  const auto* part = std::get_if<FlexiblePart>(&given.joint.body);
  const bool linear = part == nullptr || (!part->answer.liftsOff && part->answer.unloadingRatio == 1);
  return linear && boltCount(given.joint) <= 8 && given.tightening.passes.size() <= 4;
}

void checkLoads(const SettlingCase& given) {
  const auto model = settlingModel(given.joint);
  if (!model) return fuzz::checkRefusal(model.error());
  const auto course = settle(*model, given.tightening);
  if (!course) return fuzz::checkRefusal(course.error());
  fuzz::require(course->passes.size() == given.tightening.passes.size(), "every pass is answered");
  for (const SettlingSummary& pass : course->passes)
    for (const Force load : pass.loads) fuzz::require(std::isfinite(load.si()), "a load is a number");
}

}  // namespace
}  // namespace cw

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace cw;
  const auto given = readSettlingFile(fuzz::text(data, size));
  if (!given)
    fuzz::checkRefusal(given.error());
  else if (isQuick(*given))
    checkLoads(*given);
  return 0;
}

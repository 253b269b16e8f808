#include "core/procedure/guard_subject.h"

namespace cw {
namespace {

Result<std::optional<TappedHole>> tappedHole(const Fastener& fastener, const Catalogue& catalogue) {
  if (fastener.tapped.empty() || !fastener.engagement) return std::optional<TappedHole>();
  CW_TRY(material, catalogue.material(fastener.tapped));
  TappedHole hole{material, fastener.engagement->value(), std::nullopt, std::nullopt};
  if (fastener.depth) hole.threadLength = fastener.depth->value();
  return std::optional(hole);
}

}  // namespace

Result<GuardSubject> guardSubject(const Fastener& fastener, const Specification& specification,
                                  const Catalogue& catalogue) {
  GuardSubject out;
  CW_TRY(thread, catalogue.thread(fastener.thread));
  out.thread = thread;
  if (!fastener.grade.empty()) {
    CW_TRY(grade, catalogue.grade(fastener.grade, thread));
    out.grade = grade;
  }
  if (!specification.condition.empty()) {
    CW_TRY(condition, catalogue.condition(specification.condition));
    out.condition = condition;
  }
  CW_TRY(hole, tappedHole(fastener, catalogue));
  out.hole = hole;
  out.ungrounded = fastener.ungrounded;
  return out;
}

}  // namespace cw

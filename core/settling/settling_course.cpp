#include "core/settling/settling_course.h"

#include <algorithm>
#include <cmath>
#include <span>

#include "core/settling/settling_steps.h"
#include "core/settling/settling_tilt.h"

namespace cw {
namespace {

double deviationOf(const std::vector<Force>& loads, Force mean) {
  if (loads.size() < 2) return 0;
  double squares = 0;
  for (const Force load : loads) squares += std::pow(load / mean - 1, 2);
  return std::sqrt(squares / static_cast<double>(loads.size() - 1));
}

SettlingSummary summaryOf(double share, std::span<const SettlingStep> steps) {
  SettlingSummary out;
  out.share = share;
  out.loads = steps.back().loads;
  for (const Force load : out.loads) out.mean += load / static_cast<double>(out.loads.size());
  const auto [least, most] = std::minmax_element(out.loads.begin(), out.loads.end());
  out.least = *least;
  out.most = *most;
  out.spread = (out.most - out.least) / out.mean;
  out.deviation = deviationOf(out.loads, out.mean);
  for (const SettlingStep& step : steps) {
    out.worstTilt = std::max(out.worstTilt, step.tilt);
    out.worstGapDifference = std::max(out.worstGapDifference, step.gapDifference);
  }
  return out;
}

}  // namespace

Result<SettlingCourse> settle(const SettlingModel& model, const TighteningPlan& tightening) {
  SettlingSprings springs(model);
  const FaceFit faces(model.places);
  const std::size_t perPass = model.bolts.size();
  SettlingCourse course;
  CW_CHECK(tighten(springs, tightening, [&](int pass, int bolt, bool moved) {
    const FaceState face = faces.of(springs);
    course.steps.push_back({pass, bolt, moved, springs.loads(), face.gapDifference, face.tilt});
    if (course.steps.size() % perPass == 0)
      course.passes.push_back(summaryOf(tightening.passes[static_cast<std::size_t>(pass - 1)].share,
                                        std::span(course.steps).last(perPass)));
    return true;
  }));
  return course;
}

}  // namespace cw
